/**
 * Resource-constrained project scheduling with least and most lags (RCPSP/max): whole minutes, whole amounts, no clock,
 * so that every machine answers alike. All is placed early; what is to be placed late is mirrored before and after.
 *
 * 1. Analysis: lags become arcs from begin to begin, a most lag an arc back. A positive circle of arcs is impossible;
 *    longest paths bound every begin (M. Bartusch, R. H. Möhring, F. J. Radermacher, Scheduling project networks with
 *    resource constraints and time windows, 1988). Tasks tied to the minute become one block.
 * 2. Serial generation: in the order of a list each block is placed at its first possible minute (R. Kolisch, Serial and
 *    parallel resource-constrained project scheduling methods revisited, 1996). Where that breaks a most lag, what it is
 *    tied to is taken out and placed again later (unscheduling: B. Franck, K. Neumann, C. Schwindt, 2001).
 * 3. Improvement: each schedule is justified late and early again (V. Valls, F. Ballestín, S. Quintanilla, Justification
 *    and RCPSP, 2005), and good lists are crossed at two points (S. Hartmann, A competitive genetic algorithm for
 *    resource-constrained project scheduling, 1998), for a given number of schedules or until a lower bound is reached.
 * 4. Explanation: what binds each placed task, what is in the way of each other one, how far the best can be.
 *
 * The sources are named from memory.
 */

import { hasEnergy } from './energy.ts';
import { generatorOf } from './generate.ts';
import { obstaclesOf } from './left-out.ts';
import { lowerBounds } from './lower-bounds.ts';
import { namingOf } from './naming.ts';
import { networkOf } from './network.ts';
import { blockBegins, type TaskBegins, taskBegins, taskBeginsOf } from './placement.ts';
import { type Prepared, prepare } from './prepare.ts';
import { type Begins, mirrored, type ScheduleProblem, type Task } from './problem.ts';
import { bondsOf } from './reasons.ts';
import { chainOf, type PlacedTask, type Schedule } from './result.ts';
import { compareScores, figuresOf, type Goal, scoreOf } from './score.ts';
import { search } from './search.ts';

/** How a schedule is searched for. */
export interface ScheduleOptions {
  /** What is to be kept small once as little as possible is left out, the weightiest first; default waiting, then makespan. */
  readonly goals?: readonly Goal[];
  /** How many schedules may be made, from 1; the default depends on the number of tasks alone. */
  readonly schedules?: number;
  /** Another seed may find another schedule; the same one always finds the same. */
  readonly seed?: number;
  /**
   * Begins that are known, as from the schedule before something changed. Where they place everything and are still
   * possible the answer is none worse: so that with more capacity or fewer tasks no such schedule gets worse.
   */
  readonly alsoTry?: readonly Begins[];
}

const GOALS: readonly Goal[] = ['waiting', 'makespan'];
const SEED = 1;

/** Blocks placed in a whole search, and how many schedules that is at least and at most. */
const PLACEMENTS = 200_000;
const SCHEDULES = { least: 200, most: 2000 } as const;

/** A problem that has been analyzed: asked as often as one likes, analyzed once. */
export interface Scheduler {
  /** Whether one of so many schedules places everything; the first that does ends the search. */
  fits(schedules: number): boolean;
  /** The best schedule found; see `schedule`. */
  best(options?: ScheduleOptions): Schedule;
}

/**
 * The best schedule found for a problem. Whatever cannot be placed is left out with its reason, and everything else is
 * placed: nothing that is impossible throws. What no problem may say does (see `networkOf`).
 */
export function schedule(problem: ScheduleProblem, options: ScheduleOptions = {}): Schedule {
  return schedulerOf(problem).best(options);
}

/** Analyzes a problem. */
export function schedulerOf(problem: ScheduleProblem): Scheduler {
  const isLate = problem.direction === 'late';
  const network = networkOf(isLate ? mirrored(problem) : problem);
  const prepared = prepare(network);
  const { model, full } = prepared;
  const bounds = lowerBounds(
    model,
    problem.resources.map(({ id }) => id),
  );
  return {
    fits(schedules) {
      const inModel = model.tasks.reduce((sum, tasks) => sum + tasks, 0);
      if (inModel < network.tasks.length || !hasEnergy(model)) return false;
      // The goals lead the search all the same: a schedule that waits less leaves more room.
      return (
        search(model, { goals: GOALS, schedules, seed: SEED, known: [], bounds, anyWill: true }).score[0] ===
        0
      );
    },
    best({ goals = GOALS, seed = SEED, alsoTry = [], schedules = schedulesFor(model.size) } = {}) {
      const known = alsoTry.map((begins) =>
        taskBeginsOf(network, isLate ? mirroredBegins(problem, begins) : begins),
      );
      const found = search(model, {
        goals,
        schedules,
        seed,
        known: known.map((begins) => blockBegins(model, begins)),
        bounds,
      });
      const searched = taskBegins(model, found.begins, network.tasks.length);
      // What is known may place tasks that the search had left out from the start: it is finished beside what was found.
      const finisher = generatorOf(full);
      const begins = [searched, ...known]
        .map((some) => finisher.finish(blockBegins(full, some)))
        .reduce((best, other) =>
          compareScores(scoreOf(full, goals, other), scoreOf(full, goals, best)) < 0 ? other : best,
        );
      const figures = figuresOf(full, begins);
      return {
        ...explained(problem, prepared, taskBegins(full, begins, network.tasks.length)),
        ...figures,
        bounds,
        proven: found.score[0] === 0 && goals.every((goal) => figures[goal] <= bounds[goal]),
        schedules: found.schedules,
      };
    },
  };
}

/** What is placed and what is not, each with its reason. */
function explained(
  problem: ScheduleProblem,
  prepared: Prepared,
  begins: TaskBegins,
): Pick<Schedule, 'placed' | 'leftOut' | 'circles' | 'criticalPath'> {
  const { network, circles } = prepared;
  const naming = namingOf(problem, network);
  const isLate = problem.direction === 'late';
  const placed = [...bondsOf(prepared, begins)].map(([number, bond]): PlacedTask => {
    const { id, minutes } = network.tasks[number] as Task;
    const at = begins[number] as number;
    const begin = isLate ? -at - minutes : at;
    return { id, begin, end: begin + minutes, reason: naming.reason(bond) };
  });
  placed.sort((a, b) => a.begin - b.begin || (a.id < b.id ? -1 : 1));
  const leftOut = [...obstaclesOf(prepared, begins)]
    .sort(([a], [b]) => a - b)
    .map(([number, obstacle]) => ({ id: naming.id(number), reason: naming.obstacle(obstacle) }));
  const farthest = isLate ? placed[0] : placed.toSorted((a, b) => b.end - a.end)[0];
  return {
    placed,
    leftOut,
    circles: circles.map(naming.lags),
    criticalPath: farthest ? chainOf({ placed }, farthest.id).map(({ id }) => id) : [],
  };
}

function schedulesFor(size: number): number {
  return Math.min(SCHEDULES.most, Math.max(SCHEDULES.least, Math.floor(PLACEMENTS / Math.max(1, size))));
}

/** Known begins in mirrored time. */
function mirroredBegins({ tasks }: ScheduleProblem, begins: Begins): Begins {
  return new Map(
    tasks.flatMap(({ id, minutes }): [string, number][] => {
      const begin = begins.get(id);
      return begin === undefined ? [] : [[id, -begin - minutes]];
    }),
  );
}
