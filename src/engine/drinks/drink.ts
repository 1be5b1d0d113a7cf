import type Fraction from 'fraction.js';
import { dietsOf } from '../food/diets-of.ts';
import type { Recipe } from '../food/recipe.ts';
import type { PerGuest } from '../measure/per-guest.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { Counts } from '../quote/counts.ts';

/** How a drink or plain water is served. The kitchen's own planning: never part of an offer. */
export interface DrinkService {
  /** One drink: a glass, a cup, a bottle; in a unit that its recipe makes or converts to. */
  readonly glass: Quantity;
  /** True: ice goes into each glass. */
  readonly iceInGlass: boolean;
  /** True: it stands in a tub of ice, which cools it from the day's warmth. */
  readonly iceInTub: boolean;
  /** Id of the rental it is served in; left out where none is named. */
  readonly servedIn?: string;
}

/** A kind of drink on a menu. */
export interface Drink extends DrinkService {
  /** True where it holds alcohol, or nobody has stated that it does not. */
  readonly alcohol: boolean;
  /** Drinks of all kinds together that one guest takes, for the odds of running short. */
  readonly taken: DrinksTaken;
}

/** Drinks that one adult and one child take over the whole event; exact. */
export interface DrinksTaken {
  readonly adult: Fraction;
  readonly child: Fraction;
}

/** Plain water among the drinks: it is carried, iced and poured, and on no menu. */
export interface Water extends DrinkService {
  readonly perGuest: PerGuest;
  readonly counts: Counts;
}

/** Whether a drink must be taken for one with alcohol: unless every ingredient down to the bottom states that it is not. */
export function mayHoldAlcohol(recipe: Recipe): boolean {
  return !dietsOf(recipe).some(({ diet, suits }) => diet === 'no alcohol' && suits === 'yes');
}
