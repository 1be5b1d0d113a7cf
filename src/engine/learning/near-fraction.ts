import Fraction from 'fraction.js';

const MILLION = 1_000_000n;

/** Parts that kitchens measure by. */
const PARTS = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16];

/**
 * An estimate, which is a floating-point number of zero or above, as a fraction that can be printed: the third or
 * sixth, say, that it is to a millionth, else the nearest millionth.
 */
export function nearFraction(estimate: number): Fraction {
  for (const part of PARTS) {
    const count = Math.round(estimate * part);
    if (Math.abs(estimate - count / part) < 1e-6) return new Fraction(BigInt(count), BigInt(part));
  }
  return new Fraction(BigInt(Math.round(estimate * 1e6)), MILLION);
}

/** The same as the next millionth up; a ten-thousandth of one beyond a millionth is taken for the error of reckoning. */
export function fractionAbove(estimate: number): Fraction {
  return new Fraction(BigInt(Math.ceil(estimate * 1e6 - 1e-4)), MILLION);
}
