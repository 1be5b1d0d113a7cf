import type { Lag, Task } from '../../schedule/problem.ts';
import type { ClockStep } from './clock-step.ts';
import { gearOf } from './day-resources.ts';

/** The task that ends when a step's food is cold, and the one before it, to the code's first temperature. */
export const coolOf = (step: string) => `${step} cool`;
export const firstCoolOf = (step: string) => `${step} first cool`;

/**
 * How a step's food gets cold: one task for each stage of the food code, each right after what comes before it, so that
 * every stage has its own end (FDA Food Code 3-501.14(A)). Equipment that chills is in use all the while. Nothing where it
 * is not cooled.
 */
export function coolingTasks({ id, cools }: Pick<ClockStep, 'id' | 'cools'>): {
  readonly tasks: readonly Task[];
  readonly lags: readonly Lag[];
} {
  if (!cools) return { tasks: [], lags: [] };
  const { minutes, first, chiller } = cools;
  const needs = chiller ? [{ resource: gearOf(chiller.equipment.id), amount: chiller.uses }] : [];
  const then = (from: string, to: string): Lag => ({
    from,
    to,
    kind: 'end-begin',
    least: 0,
    most: 0,
    why: 'cool',
  });
  if (!first) return { tasks: [{ id: coolOf(id), minutes, needs }], lags: [then(id, coolOf(id))] };
  return {
    tasks: [
      { id: firstCoolOf(id), minutes: first.minutes, needs },
      { id: coolOf(id), minutes: minutes - first.minutes, needs },
    ],
    lags: [then(id, firstCoolOf(id)), then(firstCoolOf(id), coolOf(id))],
  };
}
