import Fraction from 'fraction.js';
import type { BatchRule } from './recipe.ts';

const TWO = new Fraction(2n);

/** Batches to cook for an exact number of them: as it is, or up to the next half or whole batch. */
export function roundBatches(exact: Fraction, rule: BatchRule): Fraction {
  if (rule === 'whole') return exact.ceil();
  if (rule === 'half') return exact.mul(TWO).ceil().div(TWO);
  return exact;
}
