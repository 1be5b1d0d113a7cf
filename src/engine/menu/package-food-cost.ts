import Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import { roundBatches } from '../food/batches.ts';
import { costOfNeeds, type FoodCost } from '../food/cost.ts';
import type { Kitchen } from '../kitchen/kitchen.ts';
import { Decimal } from '../money/decimal.ts';
import { servingsOf } from '../plan/servings.ts';
import type { PriceList } from '../purchase/price-list.ts';
import type { Course, Dish, Package } from './package.ts';

/** What a package's food costs by the head, and what keeps that from being known. */
export interface PackageFoodCost {
  readonly perHead: Decimal;
  /** Ids of food without a price; while there is any, `perHead` is too low. */
  readonly unpriced: readonly string[];
}

/**
 * The food of a package for so many adults, by the head: portions with overage, recipes in whole or half batches
 * as they say, packs at their rate without rounding up to whole ones, since what is left over serves the next event.
 * Where the client chooses, the costliest dishes are taken, so that no choice costs more than was reckoned with.
 */
export function packageFoodCost(
  chosen: Package,
  guests: number,
  kitchen: Pick<Kitchen, 'overage' | 'measures'>,
  prices: PriceList,
  day: Day,
): PackageFoodCost {
  const party = { adults: guests, children: 0, vendors: 0, staff: 0 };
  const needOf = (dish: Dish) => {
    const overage = dish.overage ?? kitchen.overage.get(chosen.style) ?? new Fraction(0n);
    const { need } = servingsOf({ ...dish, overage, chosenBy: undefined }, party, kitchen.measures);
    return { recipe: dish.recipe, need, by: dish.recipe.name };
  };
  const costOf = (dish: Dish) => costOfNeeds([needOf(dish)], prices, day).amount;
  const served = chosen.courses.flatMap((course) => costliest(course, costOf));
  const cost: FoodCost = costOfNeeds(served.map(needOf), prices, day, roundBatches);
  return { perHead: cost.amount.div(new Decimal(guests)), unpriced: cost.unpriced };
}

function costliest(course: Course, costOf: (dish: Dish) => Decimal): readonly Dish[] {
  const served = course.eachGuest ? 1 : course.choose;
  if (served === null) return course.dishes;
  return [...course.dishes].sort((a, b) => costOf(b).cmp(costOf(a))).slice(0, served);
}
