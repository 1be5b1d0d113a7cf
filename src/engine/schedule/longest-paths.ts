import { type Arc, NONE } from './network.ts';

/**
 * The longest path between any two tasks: at `from * size + to` the minutes by which `to` must begin after `from`, over
 * all chains of lags, or `NONE`. The arcs have no positive circle. Floyd and Warshall’s method, the temporal analysis of
 * Bartusch, Möhring and Radermacher (see `schedule.ts`).
 */
export function longestPaths(size: number, arcs: readonly Arc[]): Int32Array {
  const paths = new Int32Array(size * size).fill(NONE);
  for (let task = 0; task < size; task++) paths[task * size + task] = 0;
  for (const { from, to, minutes } of arcs) {
    const at = from * size + to;
    if (from !== to && minutes > (paths[at] as number)) paths[at] = minutes;
  }
  const ends = new Int32Array(size);
  for (let over = 0; over < size; over++) {
    const row = over * size;
    let count = 0;
    for (let to = 0; to < size; to++) if (to !== over && paths[row + to] !== NONE) ends[count++] = to;
    if (count === 0) continue;
    for (let from = 0; from < size; from++) {
      const first = paths[from * size + over] as number;
      if (first === NONE || from === over) continue;
      const start = from * size;
      for (let index = 0; index < count; index++) {
        const to = ends[index] as number;
        const minutes = first + (paths[row + to] as number);
        if (minutes > (paths[start + to] as number)) paths[start + to] = minutes;
      }
    }
  }
  return paths;
}
