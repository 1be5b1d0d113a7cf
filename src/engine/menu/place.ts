import type { PlaceTerms } from '../quote/terms.ts';

/** Where events take place, as far as tax and delivery differ by it. */
export interface Place extends PlaceTerms {
  /** Delivery there as money text, null where it is free. */
  readonly delivery: string | null;
  /** The least that the food of an order there comes to, money text; left out for none. */
  readonly minimum?: string;
  /** What delivery there costs the kitchen itself, money text; left out where not stated. */
  readonly deliveryCost?: string;
}
