import type Fraction from 'fraction.js';

/** A share as whole percent, half-up: `75 %`. */
export function percentText(share: Fraction): string {
  return `${share.mul(100n).add('1/2').floor().toString()} %`;
}
