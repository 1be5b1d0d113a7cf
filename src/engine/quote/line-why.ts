import type { Counts, GuestGroup, Guests } from './counts.ts';
import type { LineClass } from './line-class.ts';
import type { PriceTier } from './tiers.ts';

/**
 * How a line's quantity and price came about, as plain JSON: sums as exact money text, rates and weights as terms have
 * them. Words come in where it is shown.
 */
export type LineWhy =
  /** So many meals at a price; `tier` is the step that gives it, null where the price has no steps. */
  | {
      readonly of: 'meals';
      readonly group: Exclude<GuestGroup, 'staff'>;
      readonly tier: Pick<PriceTier, 'from' | 'to'> | null;
    }
  /** Meals of nobody, up to the menu's minimum. */
  | { readonly of: 'minimum guests'; readonly minimum: number }
  /** What is missing to the sum that a smaller party would pay. */
  | { readonly of: 'smaller party'; readonly sum: string }
  | { readonly of: 'supplement' }
  | { readonly of: 'flat price' }
  | { readonly of: 'hours' }
  | { readonly of: 'guests'; readonly guests: Guests; readonly counts: Counts }
  /** A price for each begun group of `size` guests. */
  | {
      readonly of: 'groups';
      readonly guests: Guests;
      readonly counts: Counts;
      readonly size: number;
    }
  /** People who serve: `one` for every `per` guests counted, for so many hours each. */
  | {
      readonly of: 'service';
      readonly one: number;
      readonly per: number;
      readonly guests: Guests;
      readonly counts: Counts;
      readonly atLeast: number;
      readonly people: number;
      readonly hours: string;
    }
  | { readonly of: 'delivery'; readonly place: string }
  | {
      readonly of: 'minimum spend';
      readonly least: string;
      readonly base: readonly LineClass[];
      readonly sum: string;
    }
  /** Money off; `rate` is null where it is a sum of its own. */
  | {
      readonly of: 'discount';
      readonly rate: string | null;
      readonly base: readonly LineClass[];
      readonly sum: string;
    }
  | {
      readonly of: 'service charge';
      readonly rate: string;
      readonly base: readonly LineClass[];
      readonly sum: string;
      readonly afterDiscount: boolean;
    }
  /** Charged after the event, so many at a price. */
  | { readonly of: 'charge' }
  /** Tax that prices hold, taken out for a client who pays none. */
  | { readonly of: 'exemption' };
