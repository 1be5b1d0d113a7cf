import type { Arc } from './network.ts';

/** The arcs of a longest path from one task to another, in order; none where no lags lead there. No positive circles. */
export function linkingArcs(size: number, arcs: readonly Arc[], from: number, to: number): Arc[] {
  const longest = new Array<number>(size).fill(Number.NEGATIVE_INFINITY);
  const cause = new Array<Arc | undefined>(size).fill(undefined);
  longest[from] = 0;
  for (let changed = true; changed; ) {
    changed = false;
    for (const arc of arcs) {
      const minutes = (longest[arc.from] as number) + arc.minutes;
      if (arc.to === from || minutes <= (longest[arc.to] as number)) continue;
      longest[arc.to] = minutes;
      cause[arc.to] = arc;
      changed = true;
    }
  }
  const path: Arc[] = [];
  for (let arc = cause[to]; arc && from !== to; arc = cause[arc.from]) path.unshift(arc);
  return path;
}
