import type Fraction from 'fraction.js';

/** Length, width and height in millimetres, exact. */
export interface BoxSize {
  readonly length: Fraction;
  readonly width: Fraction;
  readonly height: Fraction;
}
