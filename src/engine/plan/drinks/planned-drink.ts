import type Fraction from 'fraction.js';
import type { DrinkService } from '../../drinks/drink.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { Said } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';

/** One kind of drink of an event, or its plain water. */
export interface PlannedDrink {
  /** Undefined for plain water. */
  readonly dish: EventDish | undefined;
  readonly drink: DrinkService;
  /** Drinks that guests take, a hot day in it, no overage; exact, may be a fraction. */
  readonly drinks: Fraction;
  /** What is carried for them. */
  readonly carried: Quantity;
  /** Ice in the glasses and to cool what is carried, before any melts; exact, in pounds. */
  readonly iceInGlasses: Fraction;
  readonly iceInTubs: Fraction;
  readonly why: readonly Said[];
}

/** An amount of ice. */
export function pounds(amount: Fraction): Quantity {
  return { amount, unit: 'lb' };
}
