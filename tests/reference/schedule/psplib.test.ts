import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { ScheduleProblem } from '../../../src/engine/schedule/problem.ts';
import { type ScheduleOptions, schedule } from '../../../src/engine/schedule/schedule.ts';
import { faultsOf, reasonFaults } from '../../property/schedule/faults.ts';

/**
 * 48 published instances, the first of each parameter set of j30, each with its proven least makespan: R. Kolisch and
 * A. Sprecher, PSPLIB – a project scheduling problem library, European Journal of Operational Research 96 (1997),
 * 205–216. 30 tasks between a first and a last one of no length; successors are numbered from 1, as published.
 */
interface Instance {
  readonly instance: string;
  readonly optimum: number;
  readonly capacity: readonly number[];
  readonly duration: readonly number[];
  readonly uses: readonly (readonly number[])[];
  readonly successors: readonly (readonly number[])[];
}

const instances: readonly Instance[] = JSON.parse(
  readFileSync(new URL('../../fixtures/psplib/j30.json', import.meta.url), 'utf8'),
);

const OPTIONS: ScheduleOptions = { goals: ['makespan'], schedules: 2000 };

function problemOf(
  { capacity, duration, uses, successors }: Instance,
  direction: ScheduleProblem['direction'],
) {
  const horizon = { from: 0, until: duration.reduce((sum, minutes) => sum + minutes, 0) };
  const id = (number: number) => `task ${String(number).padStart(2, '0')}`;
  return {
    direction,
    horizon,
    tasks: duration.map((minutes, index) => ({
      id: id(index + 1),
      minutes,
      needs: (uses[index] ?? []).map((amount, resource) => ({ resource: `R${resource + 1}`, amount })),
    })),
    lags: successors.flatMap((after, index) =>
      after.map((to) => ({ from: id(index + 1), to: id(to), kind: 'end-begin' as const, least: 0 })),
    ),
    resources: capacity.map((amount, index) => ({ id: `R${index + 1}`, capacity: [{ ...horizon, amount }] })),
  };
}

const solved = instances.map((instance) => {
  const problem = problemOf(instance, 'early');
  return { ...instance, problem, answer: schedule(problem, OPTIONS) };
});

describe('the instances of PSPLIB’s set j30', () => {
  test('are the 48 first of each parameter set', () => {
    expect(instances.map(({ instance }) => instance)).toEqual(
      Array.from({ length: 48 }, (_, set) => `j30${set + 1}_1`),
    );
  });

  test.each(solved)('$instance has a schedule without a fault, and no bound above its optimum', (one) => {
    const { problem, answer, optimum } = one;
    expect(answer.leftOut).toEqual([]);
    expect(faultsOf(problem, answer)).toEqual([]);
    expect(reasonFaults(problem, answer)).toEqual([]);
    expect(answer.makespan).toBe(Math.max(...answer.placed.map(({ end }) => end)));
    expect(answer.makespan).toBeGreaterThanOrEqual(optimum);
    expect(answer.bounds.makespan).toBeLessThanOrEqual(optimum);
    if (answer.proven) expect(answer.makespan).toBe(optimum);
    expect(answer.schedules).toBeLessThanOrEqual(2000);
  });

  test('are on average at most 0.5 % over their proven optimum, and none more than 5 %', () => {
    const over = solved.map(({ answer, optimum }) => (answer.makespan - optimum) / optimum);
    expect(over.reduce((sum, share) => sum + share, 0) / over.length).toBeLessThanOrEqual(0.005);
    expect(Math.max(...over)).toBeLessThanOrEqual(0.05);
  });

  test('a project planned back from its end takes no longer than forward by more than 5 %', () => {
    for (const { optimum, ...instance } of instances.slice(0, 12)) {
      const problem = problemOf({ optimum, ...instance }, 'late');
      const answer = schedule(problem, OPTIONS);
      expect(faultsOf(problem, answer)).toEqual([]);
      expect(answer.makespan).toBeGreaterThanOrEqual(optimum);
      expect(answer.makespan).toBeLessThanOrEqual(optimum * 1.05);
    }
  });
});
