import Fraction from 'fraction.js';
import { type Minutes, minutes } from '../measure/duration.ts';
import type { Quantity } from '../measure/quantity.ts';
import { convertFinishedFood } from './finished-food.ts';
import type { Recipe } from './recipe.ts';

/** What of a container tells how fast food cools in it. */
export interface ChillContainer {
  readonly holds: Quantity;
  /** Working fill as a share of `holds`. */
  readonly fill: Fraction;
  /** Inside depth in inches; undefined where not stated. */
  readonly depthInches?: Fraction | undefined;
}

/** Up to so much → hours. Deeper or heavier food takes as long as codes allow at most. */
const BY_INCHES: readonly (readonly [most: bigint, hours: number])[] = [
  [2n, 2],
  [3n, 3],
  [4n, 4],
];
const BY_POUNDS: readonly (readonly [most: bigint, hours: number])[] = [
  [5n, 2],
  [10n, 3],
  [20n, 4],
];
const LONGEST_HOURS = 6;

/**
 * From the end of cooking to cold, where a recipe states no `chill`: by how deep its food stands in the container it is
 * chilled in (up to 2 in 2 h, 3 in 3 h, 4 in 4 h, deeper 6 h); where the container's depth is not stated, by what one of
 * them weighs (up to 5 lb 2 h, 10 lb 3 h, 20 lb 4 h, more 6 h); where neither is known 6 h. Undefined where it is
 * chilled in none of these containers. Common practice, no source: a thermometer and the food code decide.
 */
export function usualChill(
  recipe: Pick<Recipe, 'makes' | 'pack'>,
  containers: ReadonlyMap<string, ChillContainer>,
): Minutes | undefined {
  const rule = recipe.pack.chill;
  const container = rule && containers.get(rule.container);
  if (!container) return undefined;
  const { depthInches, fill, holds } = container;
  const asMade = (q: Quantity, unit: string) => convertFinishedFood(recipe, q, unit);
  const each = rule.each && asMade(rule.each, holds.unit);
  const share = each ? each.amount.div(holds.amount) : fill;
  const filled = { amount: holds.amount.mul(fill), unit: holds.unit };
  if (depthInches) return hoursFor(depthInches.mul(share), BY_INCHES);
  return hoursFor(asMade(rule.each ?? filled, 'lb')?.amount, BY_POUNDS);
}

function hoursFor(amount: Fraction | undefined, table: typeof BY_INCHES): Minutes {
  const [, hours] = table.find(([most]) => amount?.lte(new Fraction(most))) ?? [0n, LONGEST_HOURS];
  return minutes(hours * 60);
}
