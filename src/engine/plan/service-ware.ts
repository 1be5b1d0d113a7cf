import Fraction from 'fraction.js';
import type { Rental } from '../kitchen/kitchen.ts';
import { forGuests } from '../measure/per-guest.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { ServiceStyle } from '../menu/package.ts';
import type { Guests } from '../quote/counts.ts';

/** Rented pieces that go to the event. */
export interface PackedRental {
  readonly rental: Rental;
  /** Whole pieces, spares included. */
  readonly count: Quantity;
}

/**
 * The rentals that go with a service style: amount by the head for everybody who eats at the table or is fed, the
 * spare share on top, up to whole pieces.
 */
export function rentalsFor(rentals: Iterable<Rental>, style: ServiceStyle, guests: Guests): PackedRental[] {
  const fed = new Fraction(BigInt(guests.adults + guests.children + guests.vendors));
  return [...rentals]
    .filter(({ styles }) => styles.length === 0 || styles.includes(style))
    .map((rental) => {
      const { unit, amount } = forGuests(rental.amount, fed);
      return { rental, count: { unit, amount: amount.mul(rental.spare.add(1n)).ceil() } };
    });
}
