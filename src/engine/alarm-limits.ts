import Fraction from 'fraction.js';

/*
 * From where on a buyer would not sign without a second look. All of it is common practice, no source: wide enough that
 * a small jar beside a sack, or a market that doubles, says nothing.
 */

/** So many times what the food's other packs, or the same pack before, cost for the same amount. */
export const PRICE_TIMES_OFF = new Fraction(5n);

/** So many times what the middle pack of all lists costs: no food comes in such a pack. */
export const PRICE_BEYOND_SENSE = new Fraction(250n);

/** Fewer packs on all lists than this have no middle to speak of. */
export const PACKS_FOR_A_MIDDLE = 10;

/** More packs than this in one line of an order. */
export const MOST_PACKS_IN_A_LINE = 60;

/** More left over than so many times what is used. */
export const LEFT_TIMES_USED = new Fraction(2n);

/** What another choice of packs may cost more, as a share of the line, to count as a few cents. */
export const FEW_CENTS = new Fraction(3n, 100n);

/** More of one dish than this for one guest, by weight in pounds. */
export const MOST_POUNDS_PER_GUEST = new Fraction(3n);

/** More of one dish or drink than this for one guest, by volume in gallons. */
export const MOST_GALLONS_PER_GUEST = new Fraction(2n);

/** More pieces of one dish than this for one guest. */
export const MOST_PIECES_PER_GUEST = new Fraction(50n);

/** More drinks than this for one guest in an hour, over the whole event: most crowds take two in the first and one after. */
export const MOST_DRINKS_AN_HOUR = new Fraction(3n);

/** Fewer drinks than this for one guest in an hour. */
export const FEWEST_DRINKS_AN_HOUR = new Fraction(1n, 2n);

/** Minutes at an event's place beyond which a crew has to eat there: common practice, no source. */
export const LONG_AT_THE_PLACE = 5 * 60;
