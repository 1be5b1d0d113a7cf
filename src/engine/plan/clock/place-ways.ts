import type { WayOut } from './clock-finding.ts';
import type { TimedStep } from './clock-step.ts';
import type { ServedOn } from './day-clock.ts';
import { tooLong, type Waiting, waitingOf } from './waiting.ts';

/**
 * What would have a dish that is finished at the place wait no longer than it may, each tried by working out the place
 * again: one more of what is cooked on there, one more cook. None counts with which another dish waits too long instead.
 */
export function placeWays({ plan, clock, place }: ServedOn, dish: Waiting['dish']): WayOut[] {
  const longIn = (steps: readonly TimedStep[]) =>
    waitingOf(plan, steps, clock).filter((each) => tooLong(each) > 0);
  const now = longIn(place.steps).map((each) => each.dish);
  const works = (steps: readonly TimedStep[]) => {
    const then = longIn(steps).map((each) => each.dish);
    return !then.includes(dish) && then.every((each) => now.includes(each));
  };
  const gear = new Map(
    place.steps.flatMap(({ load }) => (load ? [[load.equipment.id, load.equipment.name] as const] : [])),
  );
  return [
    ...[...gear].flatMap(([id, name]): WayOut[] =>
      works(place.stepsWith({ equipment: id })) ? [{ kind: 'equipment', name }] : [],
    ),
    ...(place.cooks !== undefined && works(place.stepsWith({ cooks: 1 }))
      ? [{ kind: 'cook there' as const }]
      : []),
  ];
}
