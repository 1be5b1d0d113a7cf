import Fraction from 'fraction.js';
import type { Quantity } from '../measure/quantity.ts';
import { degreesIn, type Temperature } from '../measure/temperature.ts';

/** What a hot day changes. */
export interface HotDayHabits {
  /** A day is hot whose expected high is this or more. */
  readonly from: Temperature;
  /** Share by which guests drink more of everything cold. */
  readonly more: Fraction;
  /** Share of the ice that melts unused. */
  readonly melt: Fraction;
}

/** How a kitchen plans its drinks. */
export interface DrinksHabits {
  /** Id of the food that ice is bought as; left out where the kitchen makes its own. */
  readonly ice?: string;
  /** Id of the food that plain water is bought as; left out where it comes from the tap. */
  readonly water?: string;
  /** Ice in one glass, by weight. */
  readonly perGlass: Quantity;
  /** Share of the ice that melts unused on any other day. */
  readonly melt: Fraction;
  /** How warm drinks are that are put on ice, unless the day is warmer. */
  readonly storedAt: Temperature;
  readonly hotDay: HotDayHabits;
}

/** What is planned where a kitchen states nothing of its own: common practice, no source. */
export const USUAL_HABITS: DrinksHabits = {
  perGlass: { amount: new Fraction(4n), unit: 'oz' },
  melt: new Fraction(1n, 4n),
  storedAt: { degrees: new Fraction(72n), scale: 'F' },
  hotDay: {
    from: { degrees: new Fraction(85n), scale: 'F' },
    more: new Fraction(1n, 4n),
    melt: new Fraction(1n, 2n),
  },
};

/** Whether a day with this expected high is hot; one of which nothing is stated is not. */
export function isHotDay(high: Temperature | undefined, { hotDay }: DrinksHabits): high is Temperature {
  return high !== undefined && degreesIn('F', high).gte(degreesIn('F', hotDay.from));
}

/** How warm drinks are that are put on ice: as they are stored, or as the day where that is warmer. */
export function warmthOf(high: Temperature | undefined, { storedAt }: DrinksHabits): Temperature {
  return high && degreesIn('F', high).gt(degreesIn('F', storedAt)) ? high : storedAt;
}
