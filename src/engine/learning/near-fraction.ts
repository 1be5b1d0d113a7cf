import Fraction from 'fraction.js';

const MILLION = 1_000_000n;

/** An estimate, which is a floating-point number of zero or above, as the nearest millionth, so that it can be printed. */
export function nearFraction(estimate: number): Fraction {
  return new Fraction(BigInt(Math.round(estimate * 1e6)), MILLION);
}

/** The same as the next millionth up; a tenth of one beyond a millionth is taken for the error of the estimate's search. */
export function fractionAbove(estimate: number): Fraction {
  return new Fraction(BigInt(Math.ceil(estimate * 1e6 - 0.1)), MILLION);
}
