import type Fraction from 'fraction.js';
import type { Quantity } from '../measure/quantity.ts';
import type { FilledContainer } from './came-back.ts';

/** A dish of an event as its plan sent it out. */
export interface CarriedDish {
  readonly course: string;
  readonly recipe: string;
  readonly name: string;
  /** As the plan printed it: `1 piece per guest`. */
  readonly perGuest: string;
  /** Guests it was planned for, each by their weight. */
  readonly counted: Fraction;
  /** What they were planned to eat: guests × the amount for each, without overage. */
  readonly planned: Quantity;
  /** What went out, with overage and what rounding to batches added. */
  readonly carried: Quantity;
  /** The containers it went out in, stage by stage, in the order of the stages. */
  readonly containers: readonly FilledContainer[];
}
