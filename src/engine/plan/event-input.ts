import type Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import type { Recipe } from '../food/recipe.ts';
import type { PerGuest } from '../measure/per-guest.ts';
import type { ServiceStyle } from '../menu/package.ts';
import type { Counts, Guests } from '../quote/counts.ts';

/** A dish that will be served: the accepted terms joined to the live recipe. */
export interface EventDish {
  readonly course: string;
  readonly name: string;
  readonly recipe: Recipe;
  readonly perGuest: PerGuest;
  readonly counts: Counts;
  /** Share over the per-guest amount, resolved: the dish's own or the kitchen's for the style. */
  readonly overage: Fraction;
  /** Guests who chose it where every guest takes one of a course; undefined = all that `counts` counts. */
  readonly chosenBy: number | undefined;
}

/** All that planning one event needs besides the kitchen and the price list. */
export interface EventInput {
  readonly id: string;
  readonly occasion: string;
  readonly client: string;
  readonly date: Day;
  /** HH:MM in the kitchen's time zone. */
  readonly serveAt: string;
  readonly placeName: string;
  readonly venue: ReadonlyMap<string, string>;
  readonly style: ServiceStyle;
  readonly packageName: string;
  readonly guests: Guests;
  /** Guests by dietary need or allergy, as the client said. */
  readonly needs: ReadonlyMap<string, number>;
  readonly dishes: readonly EventDish[];
  readonly lines: number;
  /** The day whose prices count. */
  readonly buyingDay: Day;
}
