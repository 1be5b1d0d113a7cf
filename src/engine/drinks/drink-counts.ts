import Fraction from 'fraction.js';

/** How many drinks are served, exact: in all, and in each of the rentals that drinks name. */
export interface DrinkCounts {
  readonly all: Fraction;
  readonly servedIn: ReadonlyMap<string, Fraction>;
}

/** The drinks of an event without any. */
export const NO_DRINKS: DrinkCounts = { all: new Fraction(0n), servedIn: new Map() };
