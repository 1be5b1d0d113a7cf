/** Who washes a thing after an event. */
export const WASHERS = ['kitchen', 'hirer', 'place'] as const;
export type Washer = (typeof WASHERS)[number];

/** What is known of a thing once an event is over; each left out where it is not stated. */
export interface ReturnFacts {
  /** Whom it is hired from; left out for the kitchen's own. */
  readonly hiredFrom?: string;
  /** Days after the event by which it is back with them: 0 is the same day. */
  readonly backWithin?: number;
  readonly washed?: Washer;
  /** What the client is charged for one that is broken or missing, money text. */
  readonly replacement?: string;
}

/** Who washes it: as stated, else whoever hires it out, else the kitchen. Common practice, no source. */
export function washedBy({ washed, hiredFrom }: ReturnFacts): Washer {
  return washed ?? (hiredFrom === undefined ? 'kitchen' : 'hirer');
}
