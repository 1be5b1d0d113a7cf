import type { ScheduleProblem, Task } from './problem.ts';

/** Of a time or a lag: there is none. Far enough below all minutes that two of them can be added in 32 bits. */
export const NONE = -(2 ** 30);

/** Later than anything. */
export const NEVER = 2 ** 30;

/** One side of a lag: `to` begins at least `minutes` after `from` begins. A most lag is an arc back, with its negative. */
export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly minutes: number;
  /** Its place in the problem’s list. */
  readonly lag: number;
  readonly side: 'least' | 'most';
}

/** A problem’s tasks in the order of their ids, so that no answer depends on the order they were handed in. */
export interface Network {
  readonly problem: ScheduleProblem;
  readonly tasks: readonly Task[];
  readonly placeOf: ReadonlyMap<string, number>;
  /** Resources by id, as numbers in the problem’s order. */
  readonly resourceAt: ReadonlyMap<string, number>;
  readonly arcs: readonly Arc[];
}

/**
 * The network of a problem. What no problem may say is the caller’s mistake and throws: an id twice, a lag of an
 * unknown task, figures that are not whole minutes or amounts from 0.
 */
export function networkOf(problem: ScheduleProblem): Network {
  const tasks = problem.tasks.toSorted((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  const placeOf = new Map(tasks.map(({ id }, place) => [id, place]));
  if (placeOf.size < tasks.length) throw new RangeError('two tasks of a schedule have the same id');
  for (const task of tasks) checkTask(task);
  checkCapacities(problem);
  const arcs = problem.lags.flatMap((lag, index): Arc[] => {
    const [from, to] = [placeOf.get(lag.from), placeOf.get(lag.to)];
    if (from === undefined || to === undefined)
      throw new RangeError(`a lag leads from ${lag.from} to ${lag.to}, and one of them is not a task`);
    const length = lag.kind === 'end-begin' ? (tasks[from] as Task).minutes : 0;
    const found: Arc[] = [];
    if (lag.least !== undefined)
      found.push({ from, to, minutes: whole(lag.least, lag.from) + length, lag: index, side: 'least' });
    if (lag.most !== undefined)
      found.push({
        from: to,
        to: from,
        minutes: -whole(lag.most, lag.from) - length,
        lag: index,
        side: 'most',
      });
    return found;
  });
  const resourceAt = new Map(problem.resources.map(({ id }, index) => [id, index]));
  return { problem, tasks, placeOf, resourceAt, arcs };
}

function checkTask(task: Task): void {
  const { id, minutes, needs, windows = [], weight = 0, fixed = 0 } = task;
  const figures = [minutes, weight, fixed, ...needs.map(({ amount }) => amount)];
  for (const { from = 0, until = minutes } of needs) {
    figures.push(from, until);
    if (from < 0 || until > minutes)
      throw new RangeError(`the task ${id} needs something before it begins or after it ends`);
  }
  for (const { from, until } of windows) figures.push(from, until);
  for (const figure of figures) whole(figure, id);
  if (minutes < 0 || weight < 0 || needs.some(({ amount }) => amount < 0))
    throw new RangeError(`the task ${id} has minutes, a weight or an amount below 0`);
}

function checkCapacities({ resources, horizon }: ScheduleProblem): void {
  whole(horizon.from, 'the horizon');
  whole(horizon.until, 'the horizon');
  for (const { id, capacity } of resources)
    for (const { from, until, amount } of capacity) {
      for (const figure of [from, until, amount]) whole(figure, id);
      if (amount < 0) throw new RangeError(`the resource ${id} has a capacity below 0`);
    }
  if (new Set(resources.map(({ id }) => id)).size < resources.length)
    throw new RangeError('two resources of a schedule have the same id');
}

function whole(figure: number, of: string): number {
  if (!Number.isInteger(figure) || Math.abs(figure) >= 2 ** 28)
    throw new RangeError(`${figure} is not a whole number that a schedule can hold (${of})`);
  return figure;
}
