import type { Obstacle } from './left-out.ts';
import type { Arc, Network } from './network.ts';
import { type Lag, mirroredSpan, type ScheduleProblem, type Task } from './problem.ts';
import type { Bond } from './reasons.ts';
import type { LeftOutReason, Reason } from './result.ts';

/** Turns what is found in numbers, and in mirrored time where all is placed late, into the problem’s own ids and minutes. */
export interface Naming {
  id(task: number): string;
  lags(arcs: readonly Arc[]): Lag[];
  reason(bond: Bond): Reason;
  obstacle(obstacle: Obstacle): LeftOutReason;
}

/** The naming of a problem’s network, which is that of its mirror image where all is placed late. */
export function namingOf(problem: ScheduleProblem, { tasks }: Network): Naming {
  const isLate = problem.direction === 'late';
  const id = (task: number): string => (tasks[task] as Task).id;
  const ids = (some: readonly number[]): string[] => some.map(id);
  /** A minute is named by its beginning, which mirrored is its end. */
  const minuteOf = (minute: number): number => (isLate ? -minute - 1 : minute);
  // Mirrored, a path is walked from its end. A lag that binds from both its sides is one lag.
  const lags = (arcs: readonly Arc[]): Lag[] => {
    const named = [...new Set(arcs.map(({ lag }) => problem.lags[lag] as Lag))];
    return isLate ? named.reverse() : named;
  };
  return {
    id,
    lags,
    reason(bond) {
      if (bond.kind === 'lag')
        return {
          kind: 'lag',
          task: id(bond.task),
          lags: lags(bond.arcs),
          side: (bond.arcs.at(-1) as Arc).side,
        };
      if (bond.kind === 'resource')
        return {
          ...bond,
          minute: minuteOf(bond.minute),
          holders: ids(bond.holders),
          task: bond.task === undefined ? null : id(bond.task),
        };
      if (bond.kind === 'window')
        return { kind: 'window', window: isLate ? mirroredSpan(bond.window) : bond.window };
      return bond;
    },
    obstacle(obstacle) {
      if (obstacle.kind === 'circle') return { kind: 'circle', lags: lags(obstacle.arcs) };
      if (obstacle.kind === 'tied') return { kind: 'tied', task: id(obstacle.task) };
      if (obstacle.kind === 'resource')
        return { ...obstacle, minute: minuteOf(obstacle.minute), holders: ids(obstacle.holders) };
      return { kind: obstacle.kind, lags: lags(obstacle.arcs), tasks: ids([...new Set(obstacle.tasks)]) };
    },
  };
}
