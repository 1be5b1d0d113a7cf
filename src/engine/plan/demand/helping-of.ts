import Fraction from 'fraction.js';
import { convertFinishedFood } from '../../food/finished-food.ts';
import { type Quantity, timesQuantity } from '../../measure/quantity.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';

/** One helping of a dish in the unit of its amount; undefined where that is not reached. */
export function helpingOf({ recipe, perGuest, takeRate }: EventDish): Quantity | undefined {
  if (takeRate?.helping) return convertFinishedFood(recipe, takeRate.helping, perGuest.amount.unit);
  return timesQuantity(perGuest.amount, new Fraction(1n, perGuest.guests));
}

/** Said where a dish counts guests as a part of one, so that its odds are not reckoned. */
export function guestsInParts({ name, recipe }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: `${name} counts some guests as part of one, but only whole guests take helpings; it keeps its per-guest amount`,
    wayOut: 'count each guest as one and lower the appetite instead, or leave the appetite out',
  };
}

/** Said where a helping is in a unit that the accepted amount does not reach. */
export function helpingUnknown({ name, recipe, perGuest }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: `a helping of ${name} cannot be turned into ${perGuest.amount.unit}, which is how its offer counts it; it keeps its per-guest amount`,
    wayOut: `add to its recipe’s makes what a batch is in ${perGuest.amount.unit}`,
  };
}
