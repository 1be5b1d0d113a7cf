import type Fraction from 'fraction.js';
import type { Hold } from '../food/recipe.ts';
import type { BoxSize } from '../measure/box-size.ts';
import type { ReturnFacts } from './return-facts.ts';

/** What containers travel in: a hot box, a cool box, a crate, an urn. */
export interface Carrier {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  /** What food it is for, by how that travels. */
  readonly for: readonly Hold[];
  /** What one holds, one kind of container or another. */
  readonly holds: readonly { readonly count: number; readonly container: string }[];
  /** Its outside in millimetres; left out where it is not stated. */
  readonly size?: BoxSize;
  /** What one weighs empty, in grams; left out where it is not stated. */
  readonly grams?: Fraction;
  /** A trial with hot water; left out where none is stated. */
  readonly trial?: HeatTrial;
  /** What one of its ice packs weighs, in grams; left out where loose ice goes in. */
  readonly icePackGrams?: Fraction;
  /** What is known of its way back. */
  readonly back?: ReturnFacts;
}

/** Hot water that stood in a closed carrier: temperatures in degrees Celsius, exact. */
export interface HeatTrial {
  readonly grams: Fraction;
  readonly from: Fraction;
  readonly to: Fraction;
  readonly hours: Fraction;
  readonly around: Fraction;
}
