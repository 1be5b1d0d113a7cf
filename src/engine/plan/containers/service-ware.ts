import Fraction from 'fraction.js';
import type { ServiceStyle } from '../../course/service-style.ts';
import type { Kitchen, Rental } from '../../kitchen/kitchen.ts';
import { forGuests } from '../../measure/per-guest.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { countGuests, type Guests } from '../../quote/counts.ts';

/** Rented pieces that go to the event. */
export interface PackedRental {
  readonly rental: Rental;
  /** Whole pieces, spares included. */
  readonly count: Quantity;
}

/**
 * The rentals that go with a service style: the amount for each guest that the rental counts, where it states none that
 * the kitchen does; the spare share on top, up to whole pieces.
 */
export function rentalsFor(
  { rentals, counts }: Pick<Kitchen, 'rentals' | 'counts'>,
  style: ServiceStyle,
  guests: Guests,
): PackedRental[] {
  return [...rentals.values()]
    .filter(({ styles }) => styles.length === 0 || styles.includes(style))
    .map((rental) => {
      const { over, under } = countGuests(guests, rental.counts ?? counts);
      const { unit, amount } = forGuests(rental.amount, new Fraction(over, under));
      return { rental, count: { unit, amount: amount.mul(rental.spare.add(1n)).ceil() } };
    });
}
