import type Fraction from 'fraction.js';
import { kitchenAmount } from '../engine/measure/kitchen-amount.ts';
import type { Quantity } from '../engine/measure/quantity.ts';
import type { MeasureSystem } from '../engine/measure/units.ts';

/** What each of so many guests has of an amount, as a kitchen measures it: `⅞ piece`; a dash for no guests. */
export function eachText({ amount, unit }: Quantity, guests: Fraction, system: MeasureSystem): string {
  return guests.n === 0n ? '–' : kitchenAmount({ amount: amount.div(guests), unit }, system, 'line');
}
