import type Fraction from 'fraction.js';

/** What of each dish is kept back at the place, out of what is planned. */
export interface KeepBack {
  /** For second helpings: share of the portions; undefined where none are kept. */
  readonly share?: Fraction;
  /** True: that share is cooked on top of what is planned. */
  readonly inAddition?: true;
  /** Guests who come late, counted already, and until when food is kept for them; undefined where none do. */
  readonly late?: {
    readonly guests: number;
    /** HH:MM on the event's day, or after midnight where that is earlier than serving. */
    readonly until: string;
  };
}
