import type { Lag, ScheduleProblem, Task } from '../../schedule/problem.ts';
import { inUseFrom } from '../days/loads.ts';
import type { ClockStep } from './clock-step.ts';
import type { CrewSpan } from './crew-hours.ts';
import { DAY_END, nobodyHas } from './crew-hours.ts';
import { gearOf, HANDS, skillOf, stationOf } from './day-resources.ts';

/** What a minute of waiting costs by how food waits: hot food is the worse for it. */
export const COSTS = { hot: 3, room: 2, cold: 1, frozen: 1 } as const;

/** Without the needs of what is not counted: hands where no crew is stated. */
export function withWhatThereIs(problem: ScheduleProblem): ScheduleProblem {
  const there = new Set(problem.resources.map(({ id }) => id));
  const tasks = problem.tasks.map((task) => ({
    ...task,
    needs: task.needs.filter(({ resource }) => there.has(resource)),
  }));
  return { ...problem, tasks };
}

/** The task of a step: hands and its station until hands are free, then the equipment. */
export function taskOf(step: ClockStep, crew: readonly CrewSpan[], hours: boolean): Task {
  const { id, hands, handsFor, unattended, load, batch } = step;
  const [gearFrom, until] = [inUseFrom(step), handsFor + unattended];
  const from = crew[0]?.from;
  return {
    id,
    minutes: handsFor + unattended,
    needs: [
      ...handsNeed(hands, handsFor),
      ...skillNeed(step, crew),
      ...(handsFor > 0
        ? [{ resource: stationOf(step.step.station), amount: hands, from: 0, until: handsFor }]
        : []),
      ...(load && until > gearFrom
        ? [
            {
              resource: gearOf(load.equipment.id),
              amount: load.uses,
              from: gearFrom,
              until,
            },
          ]
        : []),
    ],
    ...(hours && from !== undefined && { windows: [{ from, until: 2 * DAY_END }] }),
    weight: COSTS[batch.recipe.hold],
  };
}

/** So many hands for so long; none where there is nothing to do. */
export function handsNeed(hands: number, minutes: number): Task['needs'] {
  return hands > 0 && minutes > 0 ? [{ resource: HANDS, amount: hands, from: 0, until: minutes }] : [];
}

/** One of the pairs of hands has the skill; where nobody of the day has it, that is told, and anybody does it. */
function skillNeed({ step: { skill }, handsFor }: ClockStep, crew: readonly CrewSpan[]): Task['needs'] {
  if (skill === undefined || handsFor === 0 || nobodyHas(skill, crew)) return [];
  return [{ resource: skillOf(skill), amount: 1, from: 0, until: handsFor }];
}

/** What comes before a step: at least its rest, and at most as long as the step before may wait for it. */
export function lagsOf(step: ClockStep, steps: ReadonlyMap<string, ClockStep>, quality: boolean): Lag[] {
  return step.after.map((id): Lag => {
    const before = steps.get(id);
    const same = before?.batch === step.batch;
    return {
      from: id,
      to: step.id,
      kind: 'end-begin',
      least: (same && before?.step.rest) || 0,
      ...(quality && same && before?.step.useWithin !== undefined && { most: before.step.useWithin }),
      why: 'step',
    };
  });
}
