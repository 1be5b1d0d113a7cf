import type { ScheduleProblem } from '../../schedule/problem.ts';
import type { PlacedTask, Schedule } from '../../schedule/result.ts';
import { schedulerOf } from '../../schedule/schedule.ts';

/**
 * How many schedules are made: to see whether a day fits at all, and to find the one that is cooked by. Counts, never a
 * time, so that every machine finds the same.
 */
const SCHEDULES = { trial: 8, final: 36 } as const;

/** A problem with the times found for it. */
export interface Solved {
  /** Whether every task has a time. */
  readonly complete: boolean;
  readonly schedule: Schedule;
  at(id: string): { readonly begins: number; readonly ends: number; readonly placed: PlacedTask } | undefined;
}

/** A day's problem, analyzed once. */
export interface DayProblem {
  /** Whether everything finds a time; some schedules are tried. */
  fits(): boolean;
  /** Back from its fixed hours with the least waiting, or forward to be done soonest. */
  solved(effort: keyof typeof SCHEDULES): Solved;
}

export function dayProblem(problem: ScheduleProblem): DayProblem {
  const scheduler = schedulerOf(problem);
  return {
    fits: () => scheduler.fits(SCHEDULES.trial),
    solved(effort) {
      const made = scheduler.best({
        goals: problem.direction === 'late' ? ['waiting', 'makespan'] : ['makespan', 'waiting'],
        schedules: SCHEDULES[effort],
      });
      const byId = new Map(made.placed.map((task) => [task.id, task]));
      return {
        schedule: made,
        complete: made.leftOut.length === 0,
        at: (id) => {
          const placed = byId.get(id);
          return placed && { begins: placed.begin, ends: placed.end, placed };
        },
      };
    },
  };
}
