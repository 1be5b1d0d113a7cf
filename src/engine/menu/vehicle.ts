import type Fraction from 'fraction.js';
import type { BoxSize } from '../measure/box-size.ts';

/** What food travels to events in, by kind. */
export interface Vehicle {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  /** The most that one may carry, in grams; left out where it is not stated. */
  readonly payloadGrams?: Fraction;
  /** What there is to load on and how high, in millimetres; left out where that is not stated. */
  readonly space?: BoxSize;
}
