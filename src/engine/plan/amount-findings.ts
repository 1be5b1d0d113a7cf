import { beyondStomach } from '../menu/beyond-stomach.ts';
import type { EventDish } from './event-input.ts';
import type { PlanFinding } from './event-plan.ts';
import { plainAmount } from './figure-text.ts';

/** Dishes of which one guest gets more than anyone eats or drinks. */
export function amountFindings(dishes: readonly EventDish[]): PlanFinding[] {
  return dishes.flatMap((dish) => {
    const beyond = beyondStomach(dish);
    if (!beyond) return [];
    const what = `one guest gets ${plainAmount(beyond.each)} of ${dish.name}, but ${plainAmount(beyond.most)} is already more than anyone takes`;
    const wayOut = 'check the amount in the package, its unit and how many guests it is for';
    return [{ about: dish.recipe.id, what, wayOut }];
  });
}
