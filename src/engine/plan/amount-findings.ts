import { beyondStomach } from '../menu/beyond-stomach.ts';
import { statement } from '../text/statement.ts';
import type { EventDish } from './event-input.ts';
import type { PlanFinding } from './event-plan.ts';
import { plainAmount } from './figure-text.ts';

/** Dishes of which one guest gets more than anyone eats or drinks. */
export function amountFindings(dishes: readonly EventDish[]): PlanFinding[] {
  return dishes.flatMap((dish) => {
    const beyond = beyondStomach(dish);
    if (!beyond) return [];
    const what = statement('found.beyond-stomach', {
      amount: plainAmount(beyond.each),
      dish: dish.name,
      most: plainAmount(beyond.most),
    });
    return [{ about: dish.recipe.id, what, wayOut: statement('found.beyond-stomach.way') }];
  });
}
