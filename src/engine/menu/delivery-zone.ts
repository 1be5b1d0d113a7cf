import type Fraction from 'fraction.js';

/** Where the kitchen delivers to at one price. */
export interface DeliveryZone {
  readonly id: string;
  readonly name: string;
  /** How far from the kitchen it reaches, in meters, exact; left out for one that is only chosen by its name. */
  readonly meters?: Fraction;
  /** What delivery there costs the client, money text. */
  readonly price: string;
  /** The least that the food of an order there comes to, money text; left out for none. */
  readonly minimum?: string;
}

/** The nearest zone that reaches so far; undefined where none does. */
export function zoneAt(zones: Iterable<DeliveryZone>, meters: Fraction): DeliveryZone | undefined {
  return [...zones]
    .filter((zone) => zone.meters?.gte(meters))
    .sort((a, b) => (a.meters && b.meters ? a.meters.compare(b.meters) : 0))[0];
}
