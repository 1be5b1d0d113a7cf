import type Fraction from 'fraction.js';
import { definedFactor, type MeasureSystem } from '../../engine/measure/units.ts';
import { amountText } from '../words/amount-text.ts';

const UNIT = { us: 'lb', metric: 'kg' } as const;

/** A weight up to the next pound or kilogram, or to the next part of one: what is lifted and loaded needs no ounces. */
export function poundsUp(grams: Fraction, system: MeasureSystem, parts = 1n): string {
  const unit = UNIT[system];
  const whole = grams
    .mul(definedFactor('g', unit) as Fraction)
    .mul(parts)
    .ceil();
  return amountText({ amount: whole.div(parts), unit }, system, 'at-least').printed;
}
