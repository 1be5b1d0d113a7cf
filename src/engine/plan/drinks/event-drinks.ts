import type Fraction from 'fraction.js';
import type { Water } from '../../drinks/drink.ts';
import type { DrinksHabits } from '../../drinks/drinks-habits.ts';
import type { Ingredient } from '../../food/ingredient.ts';
import type { Temperature } from '../../measure/temperature.ts';

/** A day so hot that guests drink more of everything cold. */
export interface HotDay {
  /** The expected high. */
  readonly high: Temperature;
  /** Share by which they drink more. */
  readonly more: Fraction;
}

/** Plain water as an event serves it. */
export interface EventWater extends Water {
  /** Share over the amount for each guest, resolved. */
  readonly overage: Fraction;
}

/** How an event's drinks are planned. */
export interface EventDrinks {
  readonly habits: DrinksHabits;
  /** The day's expected high; undefined where it is not stated. */
  readonly high?: Temperature;
  /** Set where that makes the day hot. */
  readonly hotDay?: HotDay;
  readonly waters: readonly EventWater[];
  /** What ice and plain water are bought as; undefined where the kitchen buys none. */
  readonly ice?: Ingredient;
  readonly water?: Ingredient;
}
