import type Fraction from 'fraction.js';
import type { Quantity } from '../measure/quantity.ts';
import type { ReturnFacts } from './return-facts.ts';

/** A pan, tub, bowl, bag or tray: what it holds, and how full a cook fills it. */
export interface Container {
  readonly id: string;
  readonly name: string;
  /** Capacity by volume, weight or count. */
  readonly holds: Quantity;
  /** Working fill as a share of `holds`: pans are not filled to the brim. */
  readonly fill: Fraction;
  /** How much more than that, as a share of one container, goes in before another is begun; undefined = 1/20. */
  readonly over?: Fraction | undefined;
  /** Inside depth in inches; undefined where not stated. */
  readonly depthInches?: Fraction | undefined;
  /** What one weighs empty, in grams; left out where it is not stated. */
  readonly grams?: Fraction | undefined;
  /** True: it travels as it is, in no carrier, as an urn or a rack on wheels does. */
  readonly onItsOwn?: boolean | undefined;
  /** The only food it is for; undefined = any. */
  readonly for?: 'hot' | 'cold' | undefined;
  /** What is known of its way back. */
  readonly back?: ReturnFacts;
}
