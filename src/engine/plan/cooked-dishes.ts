import type { EventPlan, PlannedDish } from './event-plan.ts';

/** All that is cooked and packed as a dish: the guests' and the crew's. What is claimed to guests goes by `dishes` alone. */
export function cookedDishes({
  dishes,
  crewMeals,
}: Pick<EventPlan, 'dishes' | 'crewMeals'>): readonly PlannedDish[] {
  return crewMeals.length === 0 ? dishes : [...dishes, ...crewMeals];
}
