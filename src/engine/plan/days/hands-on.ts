import Fraction from 'fraction.js';
import type { RecipeStep } from '../../food/recipe.ts';

/** The least share of a batch's time that a smaller one takes: bench and tools are set up for a few portions too. Common practice, no source. */
const LEAST_SHARE = new Fraction(1n, 4n);

/**
 * Whole minutes at work on a step for the batches cooked, which the recipe's batch rule has rounded already. What
 * counts for a batch is in proportion to them, up to the next minute: 2.03 batches of 1 h 30 take 3 h 3 min. Less than
 * a quarter batch takes as long as a quarter; none takes none.
 */
export function handsOnMinutes(
  { handsOn, handsOnPerBatch }: Pick<RecipeStep, 'handsOn' | 'handsOnPerBatch'>,
  batches: Fraction,
): number {
  if (!handsOnPerBatch) return handsOn;
  const share = batches.n !== 0n && batches.lt(LEAST_SHARE) ? LEAST_SHARE : batches;
  return Number(share.mul(handsOn).ceil().n);
}
