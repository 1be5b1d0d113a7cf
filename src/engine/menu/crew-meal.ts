import type Fraction from 'fraction.js';
import type { Recipe } from '../food/recipe.ts';
import type { Quantity } from '../measure/quantity.ts';

/** What the people who work at an event eat there. */
export type CrewMeal =
  /** They bring their own, or eat elsewhere. */
  | { readonly kind: 'none' }
  /** The dishes of the guests' menu, of each this share of a guest's amount. */
  | { readonly kind: 'menu'; readonly share: Fraction }
  /** Dishes of their own, each with the amount for one person. */
  | {
      readonly kind: 'dishes';
      readonly dishes: readonly { readonly recipe: Recipe; readonly each: Quantity }[];
    };
