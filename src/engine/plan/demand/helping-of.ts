import Fraction from 'fraction.js';
import { convertFinishedFood } from '../../food/finished-food.ts';
import { type Quantity, timesQuantity } from '../../measure/quantity.ts';
import { statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';

/** One helping of a dish in the unit of its amount; undefined where that is not reached. */
export function helpingOf({ recipe, perGuest, takeRate }: EventDish): Quantity | undefined {
  if (takeRate?.helping) return convertFinishedFood(recipe, takeRate.helping, perGuest.amount.unit);
  return timesQuantity(perGuest.amount, new Fraction(1n, perGuest.guests));
}

/** Said where a dish counts guests as a part of one, so that its odds are not calculated. */
export function guestsInParts({ name, recipe }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: statement('found.guests-in-parts', { dish: name }),
    wayOut: statement('found.guests-in-parts.way'),
  };
}

/** Said where a helping is in a unit that the accepted amount does not reach. */
export function helpingUnknown({ name, recipe, perGuest }: EventDish): PlanFinding {
  return {
    about: recipe.id,
    what: statement('found.helping-unknown', { dish: name, unit: perGuest.amount.unit }),
    wayOut: statement('found.helping-unknown.way', { unit: perGuest.amount.unit }),
  };
}
