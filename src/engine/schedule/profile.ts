import { NEVER, NONE } from './network.ts';
import type { Resource } from './problem.ts';

/**
 * How much of a resource is free over time, as steps: `free[k]` from `times[k]` until the next step. The first step is
 * at `NONE`, one at `NEVER` closes the row.
 */
export interface Profile {
  readonly times: Int32Array;
  readonly free: Int32Array;
  /** Steps in use, the closing one not counted. */
  count: number;
}

/** The capacity of a resource, nothing taken, with room for so many needs at once. */
export function capacityProfile(capacity: Resource['capacity'], needs: number): Profile {
  const size = 2 * (capacity.length + needs) + 4;
  const profile: Profile = { times: new Int32Array(size), free: new Int32Array(size), count: 1 };
  profile.times[0] = NONE;
  profile.times[1] = NEVER;
  for (const { from, until, amount } of capacity) change(profile, from, until, amount);
  return profile;
}

/** A profile of its own with the same steps. */
export function copyOf({ times, free, count }: Profile): Profile {
  return { times: times.slice(), free: free.slice(), count };
}

/** Makes a profile equal to another of the same size. */
export function resetTo(profile: Profile, { times, free, count }: Profile): void {
  for (let step = 0; step <= count; step++) {
    profile.times[step] = times[step] as number;
    profile.free[step] = free[step] as number;
  }
  profile.count = count;
}

/** Takes an amount from a minute until another; a negative amount is given back. */
export function take(profile: Profile, from: number, until: number, amount: number): void {
  change(profile, from, until, -amount);
}

/**
 * Where in an interval less than an amount is free: the end of the last such step, `NEVER` if it does not end, `NONE` if
 * the amount is free throughout.
 */
export function lackUntil(profile: Profile, from: number, until: number, amount: number): number {
  const { times, free } = profile;
  let step = stepAt(times, profile.count, until - 1);
  for (; ; step--) {
    if ((free[step] as number) < amount) return times[step + 1] as number;
    if ((times[step] as number) <= from) return NONE;
  }
}

/** How much is free at a minute. */
export function freeAt({ times, free, count }: Profile, minute: number): number {
  return free[stepAt(times, count, minute)] as number;
}

/** The step a minute lies in. */
export function stepAt(times: Int32Array, count: number, minute: number): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((times[middle] as number) <= minute) low = middle;
    else high = middle - 1;
  }
  return low;
}

function change(profile: Profile, from: number, until: number, amount: number): void {
  if (from >= until || amount === 0) return;
  const first = split(profile, from);
  const end = split(profile, until);
  for (let step = first; step < end; step++) profile.free[step] = (profile.free[step] as number) + amount;
  // What is given back leaves no steps behind, or they would grow without end.
  join(profile, end);
  join(profile, first);
}

/** The step that begins at a minute, made where there is none. */
function split(profile: Profile, minute: number): number {
  const { times, free } = profile;
  const step = stepAt(times, profile.count, minute);
  if (times[step] === minute) return step;
  times.copyWithin(step + 2, step + 1, profile.count + 1);
  free.copyWithin(step + 2, step + 1, profile.count + 1);
  times[step + 1] = minute;
  free[step + 1] = free[step] as number;
  profile.count++;
  return step + 1;
}

function join(profile: Profile, step: number): void {
  const { times, free } = profile;
  if (step === 0 || step >= profile.count || free[step] !== free[step - 1]) return;
  times.copyWithin(step, step + 1, profile.count + 1);
  free.copyWithin(step, step + 1, profile.count + 1);
  profile.count--;
}
