import type { Ingredient } from './ingredient.ts';
import type { Origin } from './origin.ts';
import { type PreparedLine, yieldOf } from './yield.ts';

/** Raw food of these is rarely used to the last ounce: skin, bone, fat and sinew come off. Common practice, no source. */
const TRIMMED_ORIGINS: ReadonlySet<Origin> = new Set(['fish', 'beef', 'pork', 'lamb', 'poultry', 'game']);

/** Preparations that take weight away, by any of their words. Common practice, no source. */
const TRIMMING =
  /\b(?:boned|cleaned|cored|drained|filleted|hulled|husked|juiced|peeled|picked|pitted|rinded|seeded|shelled|shucked|skinned|stemmed|trimmed|zested)\b/;

/**
 * Whether a recipe line weighs or measures a food made ready, and nothing is bought for what is lost, since the food
 * states no yield at all: a preparation that takes weight away, or raw meat and fish in whole pieces. A stated 100 %
 * says that nothing is lost.
 */
export function trimUnstated(ingredient: Ingredient, line: PreparedLine): boolean {
  if (yieldOf(ingredient, line).basis !== 'ready to use') return false;
  if (TRIMMING.test(line.preparation ?? '')) return true;
  return ingredient.soldAs === undefined && (ingredient.from ?? []).some((each) => TRIMMED_ORIGINS.has(each));
}
