import Fraction from 'fraction.js';
import type { ServiceStyle } from '../../course/service-style.ts';
import type { DrinkCounts } from '../../drinks/drink-counts.ts';
import type { Kitchen, Rental } from '../../kitchen/kitchen.ts';
import { forGuests } from '../../measure/per-guest.ts';
import type { Quantity } from '../../measure/quantity.ts';
import { type Counts, countGuests, type Guests } from '../../quote/counts.ts';
import { statement } from '../../text/statement.ts';
import type { Why } from '../event-plan.ts';
import { comesTo, guestsSaid, percent, plainAmount, plainNumber } from '../figure-text.ts';

/** Rented pieces that go to the event. */
export interface PackedRental {
  readonly rental: Rental;
  /** Whole pieces, spares included. */
  readonly count: Quantity;
  readonly why: Why;
}

/**
 * The rentals that go with a service style: the amount for each guest that the rental counts, where it states none that
 * the kitchen does, or for each drink; the spare share on top, up to whole pieces. What is for drinks is left out where
 * there are none.
 */
export function rentalsFor(
  { rentals, counts }: Pick<Kitchen, 'rentals' | 'counts'>,
  style: ServiceStyle,
  guests: Guests,
  drinks: DrinkCounts,
): PackedRental[] {
  return [...rentals.values()]
    .filter(({ styles }) => styles.length === 0 || styles.includes(style))
    .flatMap((rental) => {
      const served = rental.perDrink ? drinksIn(rental, drinks) : guestsOf(rental.counts ?? counts, guests);
      if (rental.perDrink && served.n === 0n) return [];
      const needed = forGuests(rental.amount, served);
      const spared = { ...needed, amount: needed.amount.mul(rental.spare.add(1n)) };
      const count = { ...needed, amount: spared.amount.ceil() };
      return [{ rental, count, why: whyOf(rental, served, { needed, spared, count }) }];
    });
}

/** The guests or drinks it is for, the spares, and what that is rounded up to. */
function whyOf(
  { amount: { amount, guests: shared }, perDrink, spare }: Rental,
  served: Fraction,
  { needed, spared, count }: Readonly<Record<'needed' | 'spared' | 'count', Quantity>>,
): Why {
  const each = { amount: plainAmount(amount), shared: String(shared), result: comesTo(needed) };
  return [
    perDrink
      ? statement('why.per-drink', { n: plainNumber(served), ...each })
      : statement(shared === 1n ? 'why.per-guest' : 'why.per-guest-shared', {
          guests: guestsSaid(served),
          ...each,
        }),
    ...(spare.n === 0n
      ? []
      : [
          statement('why.spare', {
            amount: plainAmount(needed),
            share: percent(spare),
            result: comesTo(spared),
          }),
        ]),
    ...(spared.amount.equals(count.amount)
      ? []
      : [statement('why.up-to-whole', { amount: plainAmount(spared), whole: plainAmount(count) })]),
  ];
}

/** The drinks that a rental is for: those served in it, or all where no drink names it. */
function drinksIn({ id }: Rental, { all, servedIn }: DrinkCounts): Fraction {
  return servedIn.get(id) ?? all;
}

function guestsOf(counts: Counts, guests: Guests): Fraction {
  const { over, under } = countGuests(guests, counts);
  return new Fraction(over, under);
}
