import Fraction from 'fraction.js';
import { Decimal } from '../money/decimal.ts';

/** A price as an exact fraction, so that it can be set against exact amounts. */
export function fractionOfPrice(price: Decimal): Fraction {
  return new Fraction(price.toFixed());
}

/** A sum of money from an exact fraction: exact where it ends within 40 digits, else half-up at the fortieth. */
export function decimalOfFraction(sum: Fraction): Decimal {
  return new Decimal(`${sum.s * sum.n}`).div(`${sum.d}`);
}
