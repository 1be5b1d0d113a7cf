import { isAtPlace, type Recipe } from '../../food/recipe.ts';
import { usualStands } from '../../food/usual-stands.ts';
import type { Lag } from '../../schedule/problem.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockStep } from './clock-step.ts';
import type { EventClock } from './event-clock.ts';

/** An event that is served on the date. */
export interface ServedEvent {
  readonly plan: EventPlan;
  readonly clock: EventClock;
}

/** What is packed cold or at room temperature is there so long before loading: common practice, no source. */
export const LAST_IN = 15;

/** The task that a course of an event is served. */
export const serveOf = (event: string, course: string) => `serve ${event} ${course}`;

/** From being ready to the first plate, at most as long as it stands; nothing where no clock could keep that. */
export function standsLags(step: ClockStep, { plan, clock }: ServedEvent): Lag[] {
  const { recipe } = step.batch;
  const stands = recipe.stands ?? usualStands(recipe.hold);
  if (stands === undefined || recipe.steps.some(isAtPlace)) return [];
  return plan.dishes
    .filter(({ dish }) => dish.recipe === recipe)
    .flatMap(({ dish }): Lag[] => {
      const course = clock.courses.get(dish.course);
      if (!course || course.from - lastReady(recipe, clock) > stands) return [];
      return [
        {
          from: step.id,
          to: serveOf(plan.input.id, dish.course),
          kind: 'end-begin',
          most: stands,
          why: 'stands',
        },
      ];
    });
}

/** Whether some dish of an event that leaves at another hour would stand longer than it may, and did not before. */
export function standsLonger(event: ServedEvent, before: ServedEvent): boolean {
  const isTooLong = ({ plan, clock }: ServedEvent) =>
    plan.dishes.some(({ dish: { recipe, course } }) => {
      const stands = recipe.stands ?? usualStands(recipe.hold);
      const from = clock.courses.get(course)?.from;
      if (stands === undefined || from === undefined || recipe.steps.some(isAtPlace)) return false;
      return from - lastReady(recipe, clock) > stands;
    });
  return isTooLong(event) && !isTooLong(before);
}

/** The last minute at which a finished dish still gets on the truck. */
function lastReady({ hold }: Recipe, { load }: EventClock): number {
  return hold === 'hot' ? load : load - LAST_IN;
}
