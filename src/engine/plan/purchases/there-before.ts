import { addDays, type Day, daysBetween } from '../../calendar/day.ts';
import type { Recipe } from '../../food/recipe.ts';
import { orderDays } from '../../purchase/order-days.ts';
import { packsOn } from '../../purchase/packs-on.ts';
import type { PriceList, Supplier } from '../../purchase/price-list.ts';
import type { EventInput } from '../event-input.ts';

/** Where food comes from. */
export interface FoodSources {
  readonly prices: PriceList;
  readonly suppliers: ReadonlyMap<string, Supplier>;
}

/** As an order assumes of a supplier that is not described. */
const NOT_DESCRIBED = { leadDays: 1, deliveryDays: [] } as const;

/**
 * Whether all that a recipe is made of is in the kitchen so many days before the event without anything else changing:
 * the day is not before the one on which the event buys, and whoever supplies a food brings it by then as it is, or can
 * still be asked to by someone who plans this `since` a day, and the food keeps from then until the event. Every supplier that offers a food counts, since which one
 * it is bought from is decided later.
 */
export function thereBefore(
  { lines }: Recipe,
  { date, buyingDay }: Pick<EventInput, 'date' | 'buyingDay'>,
  since: Day,
  { prices, suppliers }: FoodSources,
  days: number,
): boolean {
  const earlier = addDays(date, -days);
  if (earlier < buyingDay) return false;
  return lines.every(({ item }) => {
    if (item.kind === 'recipe') return true;
    const { id, keepsDays } = item.ingredient;
    const offered = packsOn(prices.get(id) ?? [], buyingDay);
    return [...new Set(offered.map(({ supplier }) => supplier))].every((name) => {
      const supplier = suppliers.get(name) ?? NOT_DESCRIBED;
      const early = orderDays(supplier, earlier);
      if (early.deliverOn === orderDays(supplier, date).deliverOn) return true;
      const keeps = keepsDays === undefined || daysBetween(early.deliverOn, date) <= keepsDays;
      return early.orderBy >= since && keeps;
    });
  });
}
