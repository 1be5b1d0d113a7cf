import type Fraction from 'fraction.js';
import { unitAfter } from '../../engine/measure/find-unit.ts';
import type { Quantity } from '../../engine/measure/quantity.ts';

/**
 * What each of so many guests has of an amount: `0.88 pieces`, `2.67 oz`; a dash for no guests. A figure to compare, not
 * to measure by, so in the amount's own unit with two decimals, half up; one from ten on, three below a tenth, four below a
 * hundredth: `0.045 bowls`.
 */
export function eachText({ amount, unit }: Quantity, guests: Fraction): string {
  return guests.n === 0n ? '–' : decimalAmountText({ amount: amount.div(guests), unit });
}

/** How many guests, who need not count whole: `83`, `82.9`; one decimal, half up. */
export function guestsCountedText(guests: Fraction): string {
  const tenths = guests.mul(10n).add('1/2').floor().n;
  return tenths % 10n === 0n ? `${tenths / 10n}` : `${tenths / 10n}.${tenths % 10n}`;
}

/** The same for an amount that is each guest's already. */
export function decimalAmountText({ amount, unit }: Quantity): string {
  const places = placesFor(amount);
  const scale = 10n ** BigInt(places);
  const rounded = (amount.n * scale * 2n + amount.d) / (amount.d * 2n);
  const digits = `${rounded}`.padStart(places + 1, '0');
  const text = `${digits.slice(0, -places)}.${digits.slice(-places)}`.replace(/\.?0+$/, '');
  return `${text} ${unitAfter(text, unit, amount)}`;
}

function placesFor(amount: Fraction): number {
  if (amount.gte(10n)) return 1;
  if (amount.n === 0n || amount.gte('1/10')) return 2;
  return amount.gte('1/100') ? 3 : 4;
}
