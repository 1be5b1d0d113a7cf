import type { GuestNeed } from '../../menu/guest-needs.ts';
import type { StatedAttendance } from '../../odds/attendance.ts';
import type { CourseOdds } from '../../odds/course-odds.ts';
import type { Guests } from '../../quote/counts.ts';
import type { EventDish } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';
import { appetiteDemand } from './appetite-demand.ts';
import { courseDemand } from './course-demand.ts';
import { drinkDemand } from './drink-demand.ts';

/** Dishes with what guests will want of them, and what could not be calculated. */
export interface DemandedDishes {
  readonly dishes: readonly EventDish[];
  readonly courses: readonly CourseOdds[];
  readonly findings: readonly PlanFinding[];
}

/**
 * Calculates what guests will want of each dish for which the kitchen states how they take it, and of each drink; all others stay as they are,
 * and so do portions made separately, whose guests are known. `dishes` are already split by need.
 */
export function withDemands(
  dishes: readonly EventDish[],
  guests: Guests,
  needs: readonly GuestNeed[],
  stated: StatedAttendance | undefined,
): DemandedDishes {
  if (dishes.every(({ takeRate, drink }) => takeRate === undefined && drink === undefined))
    return { dishes, courses: [], findings: [] };
  const demands = new Map<EventDish, NonNullable<EventDish['demand']>>();
  const courses: CourseOdds[] = [];
  const findings: PlanFinding[] = [];
  for (const course of Map.groupBy(dishes, (dish) => dish.course).values()) {
    const whole = courseDemand(course, guests, needs, stated);
    if (whole && 'what' in whole) findings.push(whole);
    else if (whole) {
      courses.push(whole.odds);
      for (const [dish, demand] of whole.demands) demands.set(dish, demand);
    }
    for (const dish of course) {
      const drunk = dish.drink && drinkDemand(dish, dish.drink, guests, stated);
      if (drunk) demands.set(dish, drunk);
      if (!dish.takeRate?.appetite || dish.portions?.apart) continue;
      const demand = appetiteDemand(dish, dish.takeRate.appetite, course, guests, needs, stated);
      if ('what' in demand) findings.push(demand);
      else demands.set(dish, demand);
    }
  }
  const demanded = dishes.map((dish) => {
    const demand = demands.get(dish);
    return demand ? { ...dish, demand } : dish;
  });
  return { dishes: demanded, courses, findings };
}
