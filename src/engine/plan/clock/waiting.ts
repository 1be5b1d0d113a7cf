import type { Hold } from '../../food/recipe.ts';
import { usualStands } from '../../food/usual-stands.ts';
import { travelsAs } from '../../safety/travels-as.ts';
import type { EventPlan, PlannedDish } from '../event-plan.ts';
import type { TimedStep } from './clock-step.ts';
import type { EventClock } from './event-clock.ts';

/** A finished dish that waits for its guests. */
export interface Waiting {
  readonly dish: PlannedDish;
  /** How it waits: hot and cold are kept so, `room` is out of control unless its recipe says that it is safe so. */
  readonly as: Hold;
  /** Minutes from the event's midnight; its last step's end, and its course's first plate. */
  readonly from: number;
  readonly until: number;
  /** As long as it may, without losing quality; undefined where it keeps. */
  readonly stands: number | undefined;
  /** Whether it is finished at the place. */
  readonly there: boolean;
}

/**
 * How each dish of an event that is finished on its day waits, from its last step, in the kitchen or at the place, to the
 * first plate of its course. What is finished on an earlier day is stored, not waiting, and left out.
 */
export function waitingOf(plan: EventPlan, steps: readonly TimedStep[], clock: EventClock): Waiting[] {
  return plan.dishes.flatMap((dish): Waiting[] => {
    const { recipe, course } = dish.dish;
    const own = steps.filter(
      ({ batch, wave }) =>
        batch.recipe === recipe &&
        (wave === undefined || wave.number === 1) &&
        batch.events.some((event) => event.plan.input.id === plan.input.id),
    );
    const until = clock.courses.get(course)?.from;
    if (own.length === 0 || until === undefined) return [];
    const from = Math.max(...own.map(({ ends }) => ends));
    const there = own.some(({ where }) => where !== 'kitchen');
    return [
      {
        dish,
        as: there ? recipe.hold : travelsAs(recipe),
        from,
        until,
        stands: recipe.stands ?? usualStands(recipe.hold),
        there,
      },
    ];
  });
}

/** By how many minutes a dish waits longer than it should; 0 where it does not. */
export function tooLong({ from, until, stands }: Waiting): number {
  return stands === undefined ? 0 : Math.max(0, until - from - stands);
}
