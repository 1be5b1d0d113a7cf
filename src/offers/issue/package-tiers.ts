import Fraction from 'fraction.js';
import type { Book } from '../../book/book.ts';
import { addDays, type Day } from '../../engine/calendar/day.ts';
import type { Package } from '../../engine/menu/package.ts';
import { Decimal } from '../../engine/money/decimal.ts';
import { money, moneyText } from '../../engine/money/money.ts';
import { rateOf } from '../../engine/money/rate.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { packageCostPerHead } from '../../engine/plan/money/package-cost.ts';
import { perHeadFromFoodCost } from '../../engine/quote/from-food-cost.ts';
import type { PriceTier } from '../../engine/quote/tiers.ts';

/**
 * A package's price tiers for an event on a day: as stated, or made from its food-cost target, each tier at the
 * food cost of its first count and the prices of the event's buying day. Fails where food of it has no price.
 */
export function packageTiers(
  chosen: Package,
  eventDate: Day,
  book: Pick<Book, 'kitchen' | 'prices'>,
): Parsed<readonly PriceTier[]> {
  const { price } = chosen;
  if (price.kind === 'tiers') return parsed(price.tiers);
  const { kitchen } = book;
  const buyingDay = addDays(eventDate, -kitchen.buying);
  const overage = kitchen.overage.get(chosen.style) ?? new Fraction(0n);
  const tiers: PriceTier[] = [];
  for (const [index, from] of price.from.entries()) {
    const cost = packageCostPerHead(chosen, from, overage, book.prices, buyingDay);
    if (cost.unpriced.length > 0)
      return notParsed(
        `${chosen.name} is priced from its food cost, but there is no price on ${buyingDay} for ${cost.unpriced.join(', ')}`,
        'add one to a price list, or state the package’s price by guest count',
      );
    const perHead = perHeadFromFoodCost(cost.amount, rateOf(price.target), new Decimal(price.step));
    const next = price.from[index + 1];
    tiers.push({
      from,
      to: next === undefined ? null : next - 1,
      perHead: moneyText(money(perHead, kitchen.currency)),
    });
  }
  return parsed(tiers);
}
