import type { ScheduleProblem, Task } from '../../../src/engine/schedule/problem.ts';
import type { Goal } from '../../../src/engine/schedule/score.ts';
import { beginFaults } from './faults.ts';

/**
 * The best value that any placement of all tasks reaches, by trying every minute for every task; null where there is no
 * such placement. For `makespan` as the schedule counts it; for `waiting` the sum of weight times begin, which is least
 * where all is placed early and greatest where all is placed late.
 */
export function bestOfAll(problem: ScheduleProblem, goal: Goal): number | null {
  const { tasks, horizon, direction } = problem;
  let best: number | null = null;
  const begins = new Map<string, number>();
  const value = (): number =>
    goal === 'waiting'
      ? weightedBegins(tasks, begins)
      : direction === 'early'
        ? Math.max(...tasks.map(({ id, minutes }) => (begins.get(id) as number) + minutes)) - horizon.from
        : horizon.until - Math.min(...begins.values());
  const isBetter = (a: number, b: number) => (goal === 'waiting' && direction === 'late' ? a > b : a < b);
  const visit = (index: number): void => {
    const task = tasks[index];
    if (!task) {
      const found = value();
      if (best === null || isBetter(found, best)) best = found;
      return;
    }
    for (let begin = horizon.from; begin + task.minutes <= horizon.until; begin++) {
      begins.set(task.id, begin);
      if (beginFaults(problem, begins).length === 0) visit(index + 1);
    }
    begins.delete(task.id);
  };
  visit(0);
  return best;
}

export function weightedBegins(tasks: readonly Task[], begins: ReadonlyMap<string, number>): number {
  return tasks.reduce((sum, { id, weight = 0 }) => sum + weight * (begins.get(id) as number), 0);
}
