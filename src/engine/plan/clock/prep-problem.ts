import type { ScheduleProblem, Task } from '../../schedule/problem.ts';
import type { ClockStep } from './clock-step.ts';
import { coolingTasks } from './cooling-tasks.ts';
import { type CrewSpan, DAY_END } from './crew-hours.ts';
import { dayResources } from './day-resources.ts';
import type { ClockKitchen } from './kitchen-steps.ts';
import { lagsOf, taskOf, withWhatThereIs } from './step-tasks.ts';

/** Work for other days, and what of the date has its time. */
export interface PrepWork {
  readonly steps: readonly ClockStep[];
  readonly placed: readonly Task[];
  /** False where what is placed begins before the crew comes; the work for other days does not. */
  readonly hours: boolean;
}

/**
 * Work for other days, as soon as the crew is there, around what the date's own events wait for: what keeps loses nothing
 * by being done, and the hours left over are at the end of the day, where the next slip needs them.
 */
export function prepProblem(
  { steps, placed, hours }: PrepWork,
  kitchen: ClockKitchen,
  crew: readonly CrewSpan[],
): ScheduleProblem {
  const from = crew[0]?.from ?? 0;
  const byId = new Map(steps.map((step) => [step.id, step]));
  const cooled = steps.map(coolingTasks);
  return withWhatThereIs({
    direction: 'early',
    horizon: { from: Math.min(from, ...placed.map(({ fixed }) => fixed ?? from)), until: 2 * DAY_END },
    tasks: [
      ...placed,
      ...steps.map((step) => taskOf(step, crew, true)),
      ...cooled.flatMap((each) => each.tasks),
    ],
    lags: [...steps.flatMap((step) => lagsOf(step, byId, true)), ...cooled.flatMap((each) => each.lags)],
    resources: dayResources(kitchen, crew, hours),
  });
}
