import type Fraction from 'fraction.js';
import { stepTextFor } from '../../engine/food/step-text.ts';
import { kitchenAmount } from '../../engine/measure/kitchen-amount.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';

/** A step, or how to finish a dish, with the amounts in its braces for the batches cooked. */
export function stepWords(text: string, batches: Fraction, system: MeasureSystem): string {
  return stepTextFor(text, batches, (amount) => kitchenAmount(amount, system, 'line'));
}
