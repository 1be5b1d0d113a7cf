import type { DrinksTaken } from '../../engine/drinks/drink.ts';
import { type CountedPortion, countedPortion, type DrinkPortion } from '../../engine/drinks/drink-portion.ts';
import type { DrinkShare } from '../../engine/drinks/drink-shares.ts';
import type { Quantity } from '../../engine/measure/quantity.ts';
import type { Counts } from '../../engine/quote/counts.ts';
import type { Path } from '../files/place-of.ts';
import type { Reading } from './reading.ts';

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

/** A portion as menus have it, with a finding where that cannot be; undefined also where nobody takes any. */
export function countedIn(
  reading: Reading,
  path: Path,
  portion: DrinkPortion,
  counts: Counts,
): CountedPortion | undefined {
  const counted = countedPortion(portion, counts);
  if (counted.ok) return counted.value;
  reading.say('drink-shares', path, counted.what, counted.wayOut, 'key');
  return undefined;
}
