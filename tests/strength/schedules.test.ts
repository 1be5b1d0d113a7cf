import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ScheduleProblem } from '../../src/engine/schedule/problem.ts';
import { schedule, schedulerOf } from '../../src/engine/schedule/schedule.ts';
import { faultsOf, reasonFaults } from '../property/schedule/faults.ts';
import { kitchenDays } from '../property/schedule/kitchen-days.ts';
import { anyProblem } from '../property/schedule/problems.ts';
import { LONG } from './long.ts';

// Problems from a seed, in numbers; another seed is given as SALVER_SEED. The checker shares no code with the scheduler.

const SEED = Number(process.env.SALVER_SEED ?? 20261201);
/** Of each shape. */
const PROBLEMS = LONG ? 20_000 : 40;
const DAYS = LONG ? 150 : 2;
const FEW = { schedules: 24 };

/** Small ones that are mostly tight, and some as large as a day of one event. */
const SHAPES = [
  { tasks: 8, minutes: 5, horizon: 16 },
  { tasks: 16, minutes: 8, horizon: 60 },
  { tasks: 40, minutes: 30, horizon: 400 },
];

const begins = (problem: ScheduleProblem) =>
  schedule(problem, FEW).placed.map(({ id, begin }) => [id, begin] as const);

describe.each(SHAPES)('problems of up to $tasks tasks', (shape) => {
  const tried = (check: (problem: ScheduleProblem, dice: number) => void) =>
    fc.assert(fc.property(anyProblem(shape), fc.nat(1000), check), { numRuns: PROBLEMS, seed: SEED });

  test('get schedules without a fault, with reasons that are true', () => {
    tried((problem) => {
      const answer = schedule(problem, FEW);
      expect(faultsOf(problem, answer)).toEqual([]);
      expect(reasonFaults(problem, answer)).toEqual([]);
    });
  });

  test('are answered alike each time, in whatever order they are handed in', () => {
    tried((problem) => {
      const turned = {
        ...problem,
        tasks: problem.tasks.toReversed(),
        resources: problem.resources.toReversed(),
      };
      expect(begins(problem)).toEqual(begins(problem));
      expect(begins(turned)).toEqual(begins(problem));
    });
  });

  test('that fit with less fit with more', () => {
    tried((problem, dice) => {
      if (!schedulerOf(problem).fits(FEW.schedules)) return;
      const resources = problem.resources.map((resource, index) =>
        index === dice % problem.resources.length
          ? { ...resource, capacity: [...resource.capacity, { ...problem.horizon, amount: 1 }] }
          : resource,
      );
      expect(schedulerOf({ ...problem, resources }).fits(FEW.schedules)).toBe(true);
    });
  });
});

test('days of a kitchen from one seed after the other are scheduled without a fault, alike each time', () => {
  for (let seed = SEED; seed < SEED + DAYS; seed++) {
    const day = kitchenDays(60, seed, 3);
    const answer = schedule(day, FEW);
    expect([seed, faultsOf(day, answer), reasonFaults(day, answer)]).toEqual([seed, [], []]);
    expect(begins(day)).toEqual(answer.placed.map(({ id, begin }) => [id, begin]));
  }
});
