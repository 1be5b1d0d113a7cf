import type { Span, Task } from './problem.ts';

/** Minutes at which something may begin: both ends count. */
export interface Range {
  readonly first: number;
  readonly last: number;
}

/** When a task may begin by its windows, its fixed minute and the horizon, in order, touching ranges joined. */
export function beginRanges({ minutes, windows, fixed }: Task, horizon: Span): Range[] {
  const within = (windows ?? [horizon]).map(({ from, until }) => ({
    first: Math.max(from, horizon.from, fixed ?? from),
    last: Math.min(until - minutes, horizon.until - minutes, fixed ?? until),
  }));
  return joined(within.filter(({ first, last }) => first <= last));
}

/** The minutes that are in both. */
export function commonRanges(some: readonly Range[], others: readonly Range[]): Range[] {
  const common = some.flatMap((a) =>
    others.map((b) => ({ first: Math.max(a.first, b.first), last: Math.min(a.last, b.last) })),
  );
  return joined(common.filter(({ first, last }) => first <= last));
}

/** The same ranges, so many minutes later. */
export function laterRanges(ranges: readonly Range[], minutes: number): Range[] {
  return ranges.map(({ first, last }) => ({ first: first + minutes, last: last + minutes }));
}

function joined(ranges: readonly Range[]): Range[] {
  const out: { first: number; last: number }[] = [];
  for (const { first, last } of ranges.toSorted((a, b) => a.first - b.first)) {
    const end = out.at(-1);
    if (end && first <= end.last + 1) end.last = Math.max(end.last, last);
    else out.push({ first, last });
  }
  return out;
}
