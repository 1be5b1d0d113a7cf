import type Fraction from 'fraction.js';
import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import { parseQuantity } from '../../engine/measure/parse-quantity.ts';

/** Batches as a cook says them: `1½`, and `about 0.89` where the exact share is nothing to measure by. */
export function batchesText(batches: Fraction): string {
  const printed = kitchenAmount({ amount: batches, unit: 'batch' }, 'us', 'line');
  const read = parseQuantity(printed);
  const number = printed.replace(/ [a-z]+$/, '');
  return read.ok && read.value.amount.equals(batches) ? number : `about ${number}`;
}
