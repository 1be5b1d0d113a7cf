import type { PlaceTerms } from '../quote/terms.ts';

/** Where events take place, as far as tax and delivery differ by it. */
export interface Place extends PlaceTerms {
  /** Delivery there as money text, null where it is free. */
  readonly delivery: string | null;
  /** What delivery there costs the kitchen itself, money text; left out where not stated. */
  readonly deliveryCost?: string;
}
