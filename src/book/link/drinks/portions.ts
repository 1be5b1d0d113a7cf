import type { DrinksTaken } from '../../../engine/drinks/drink.ts';
import type { DrinkPortion } from '../../../engine/drinks/drink-portion.ts';
import type { DrinkShare } from '../../../engine/drinks/drink-shares.ts';
import type { Quantity } from '../../../engine/measure/quantity.ts';

/** What an adult and a child take of something of which one drink takes so much. */
export function portionOf(
  one: Quantity,
  takes: DrinksTaken,
  share: DrinkShare,
  forWorkers: boolean,
): DrinkPortion {
  return {
    unit: one.unit,
    adult: one.amount.mul(takes.adult).mul(share.adult),
    child: one.amount.mul(takes.child).mul(share.child),
    forWorkers,
  };
}
