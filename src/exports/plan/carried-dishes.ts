import Fraction from 'fraction.js';
import type { CarriedDish } from '../../engine/learning/carried-dish.ts';
import { readNumber } from '../../engine/measure/mixed-number.ts';
import { forGuests, parsePerGuest } from '../../engine/measure/per-guest.ts';
import { parseExactText, type Quantity, timesQuantity } from '../../engine/measure/quantity.ts';
import type { Parsed } from '../../engine/parsed.ts';
import type { PlanDish } from '../form/food.ts';
import type { PrepPlanDocument } from '../form/prep-plan.ts';

/** The parts of a plan that say what went out. */
export type CarriedPlan = Pick<PrepPlanDocument, 'dishes' | 'recipes'>;

/**
 * What a plan's dishes went out as, exact, in the unit each is counted per guest: with overage, whole units, and
 * the share of what rounding up to batches added. Portions made separately for single guests are left out: they are plated,
 * and what is left of one says nothing of a dish. Throws on a document that Salver did not write.
 */
export function carriedDishes({ dishes, recipes }: CarriedPlan): CarriedDish[] {
  const stretch = new Map(recipes.map(({ id, need, makes }) => [id, ratioOf(makes.exact, need.exact)]));
  return dishes
    .filter(({ apartFrom }) => apartFrom === '')
    .map((dish) => carriedDish(dish, stretch.get(dish.recipe) ?? new Fraction(1n)));
}

function carriedDish(dish: PlanDish, stretch: Fraction): CarriedDish {
  const perGuest = known(parsePerGuest(dish.perGuest));
  const counted = known(readNumber(dish.counted)).value;
  return {
    course: dish.course,
    recipe: dish.recipe,
    name: dish.name,
    perGuest: dish.perGuest,
    counted,
    planned: forGuests(perGuest, counted),
    carried: timesQuantity(exact(dish.need.exact), stretch),
    containers: dish.containers
      .filter(({ stage }) => stage !== 'chill')
      .map(({ container, name, each }) => ({ id: container, name, each: exact(each.exact) })),
  };
}

function ratioOf(makes: string, need: string): Fraction {
  const [made, needed] = [exact(makes).amount, exact(need).amount];
  return needed.n === 0n ? new Fraction(1n) : made.div(needed);
}

function exact(text: string): Quantity {
  return known(parseExactText(text));
}

function known<T>(read: Parsed<T>): T {
  if (!read.ok) throw new Error(`a plan holds what Salver does not write: ${read.what}`);
  return read.value;
}
