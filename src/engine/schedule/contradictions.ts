import { longestPaths } from './longest-paths.ts';
import { type Arc, type Network, NONE } from './network.ts';
import { linkingArcs } from './paths.ts';

/** A task that lags between two fixed tasks leave no minute for: it is taken out, and the fixed ones stay. */
export interface Contradiction {
  readonly task: number;
  /** The lags from one fixed task to the other, over the task. */
  readonly arcs: readonly Arc[];
  readonly between: readonly [number, number];
}

/** What is left of a network’s arcs when its contradictions are taken out, with the longest paths over them. */
export interface Consistent {
  readonly contradictions: readonly Contradiction[];
  readonly arcs: readonly Arc[];
  readonly paths: Int32Array;
}

/**
 * Takes out, one after the other, tasks by which lags from one fixed task to another take longer than there is time: the
 * last one on the way, or, where the lag leads straight there, the second of the two by id.
 */
export function withoutContradictions({ tasks }: Network, arcs: readonly Arc[]): Consistent {
  const size = tasks.length;
  const contradictions: Contradiction[] = [];
  const fixed = tasks.flatMap(({ fixed: minute }, task) => (minute === undefined ? [] : [{ task, minute }]));
  let left = arcs;
  for (;;) {
    const paths = longestPaths(size, left);
    const pair = fixed
      .flatMap((from) => fixed.map((to) => ({ from, to })))
      .find(({ from, to }) => {
        const path = paths[from.task * size + to.task] as number;
        return path !== NONE && from.minute + path > to.minute;
      });
    if (!pair) return { contradictions, arcs: left, paths };
    const between = [pair.from.task, pair.to.task] as const;
    const way = linkingArcs(size, left, ...between);
    const onIt = way.slice(0, -1).filter(({ to }) => tasks[to]?.fixed === undefined);
    const task = onIt.at(-1)?.to ?? Math.max(...between);
    contradictions.push({ task, arcs: way, between });
    left = left.filter(({ from, to }) => from !== task && to !== task);
  }
}
