import { type Arc, type Network, networkOf } from './network.ts';
import type { Lag, ScheduleProblem } from './problem.ts';

/**
 * The lags that contradict each other whatever the resources: going around them, a task would have to begin after
 * itself. Each list is one such circle, a positive circle of the network; no task is in two of the lists. An empty list
 * means that without resources, windows and fixed tasks everything could be placed.
 */
export function impossibleLags(problem: ScheduleProblem): Lag[][] {
  return circlesOf(networkOf(problem)).map((circle) => [
    ...new Set(circle.map(({ lag }) => problem.lags[lag] as Lag)),
  ]);
}

/** The positive circles, each as its arcs in order; found one by one, the tasks of those found left out. */
export function circlesOf({ tasks, arcs }: Network): Arc[][] {
  const circles: Arc[][] = [];
  let left = arcs;
  for (;;) {
    const circle = firstCircle(tasks.length, left);
    if (!circle) return circles;
    circles.push(circle);
    const inIt = new Set(circle.map(({ from }) => from));
    left = left.filter(({ from, to }) => !inIt.has(from) && !inIt.has(to));
  }
}

/** Bellman and Ford’s method from a point before all tasks: what still grows after as many rounds hangs on a circle. */
function firstCircle(size: number, arcs: readonly Arc[]): Arc[] | undefined {
  const earliest = new Array<number>(size).fill(0);
  const cause = new Array<Arc | undefined>(size).fill(undefined);
  let grown: number | undefined;
  for (let round = 0; round <= size; round++) {
    grown = undefined;
    for (const arc of arcs) {
      const begin = (earliest[arc.from] as number) + arc.minutes;
      if (begin <= (earliest[arc.to] as number)) continue;
      earliest[arc.to] = begin;
      cause[arc.to] = arc;
      grown = arc.to;
    }
    if (grown === undefined) return undefined;
  }
  // As many steps back as there are tasks lead into the circle for certain.
  let at = grown as number;
  for (let step = 0; step < size; step++) at = (cause[at] as Arc).from;
  const circle: Arc[] = [];
  const start = at;
  do {
    const arc = cause[at] as Arc;
    circle.unshift(arc);
    at = arc.from;
  } while (at !== start);
  return circle;
}
