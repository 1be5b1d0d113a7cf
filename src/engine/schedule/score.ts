import type { BlockBegins } from './generate.ts';
import type { Model } from './model.ts';
import { NONE } from './network.ts';

/**
 * What a schedule is to keep small, after leaving nothing out: `waiting` is the sum over tasks of minutes waited times
 * weight, `makespan` the minutes from the horizon’s beginning to the end of the last task (placed late: from the begin
 * of the first to the horizon’s end).
 */
export type Goal = 'waiting' | 'makespan';

/** What a schedule costs, in the meaning of `Goal`. */
export type Figures = Readonly<Record<Goal, number>>;

/** Tasks left out, then the goals in the caller’s order, then all waiting unweighted: compared in this order. */
export type Score = readonly number[];

/** The score of begins. */
export function scoreOf(model: Model, goals: readonly Goal[], begins: BlockBegins): Score {
  let [leftOut, plain] = [0, 0];
  for (let block = 0; block < model.size; block++) {
    const [begin, tasks] = [begins[block] as number, model.tasks[block] as number];
    if (begin === NONE) leftOut += tasks;
    else plain += (begin - (model.base[block] as number)) * tasks;
  }
  const figures = figuresOf(model, begins);
  return [leftOut, ...goals.map((goal) => figures[goal]), plain];
}

/** The figures of begins, what is left out not counted. */
export function figuresOf(model: Model, begins: BlockBegins): Figures {
  let [waiting, end] = [0, model.origin];
  for (let block = 0; block < model.size; block++) {
    const begin = begins[block] as number;
    if (begin === NONE) continue;
    waiting += (begin - (model.base[block] as number)) * (model.weight[block] as number);
    end = Math.max(end, begin + (model.minutes[block] as number));
  }
  return { waiting, makespan: end - model.origin };
}

/** Below 0 where the first score is the better one. */
export function compareScores(a: Score, b: Score): number {
  for (let index = 0; index < a.length; index++) {
    const difference = (a[index] as number) - (b[index] as number);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** Below 0 where the first schedule is the better one; of two as good, the one whose first block by id begins first. */
export function compareBegins(a: BlockBegins, b: BlockBegins): number {
  for (let block = 0; block < a.length; block++) {
    const difference = (a[block] as number) - (b[block] as number);
    if (difference !== 0) return difference;
  }
  return 0;
}
