import type { Model } from './model.ts';
import { NONE } from './network.ts';
import { type Profile, stepAt } from './profile.ts';
import type { Goal, Score } from './score.ts';

/** What no schedule in which nothing is left out can go below, in minutes; see `Goal`. */
export interface LowerBounds {
  readonly makespan: number;
  readonly waiting: number;
  /** The makespan by lags, windows and calendars alone: the longest path. */
  readonly longestPath: number;
  /** The makespan by the work that a resource has to do, for the scarcest one; null where no resource is needed. */
  readonly energy: { readonly resource: string; readonly makespan: number } | null;
}

/** The lower bounds of a model; `names` are the resources’ ids in its order. */
export function lowerBounds(model: Model, names: readonly string[]): LowerBounds {
  let [longest, waiting] = [model.origin, 0];
  for (let block = 0; block < model.size; block++) {
    const begin = model.earliest[block] as number;
    longest = Math.max(longest, begin + (model.minutes[block] as number));
    waiting += (begin - (model.base[block] as number)) * (model.weight[block] as number);
  }
  const tails = tailsOf(model);
  let energy: LowerBounds['energy'] = null;
  names.forEach((resource, index) => {
    const end = energyEnd(model, model.calendars[index] as Profile, workOn(model, index, tails));
    if (end === NONE) return;
    const makespan = end - model.origin;
    if (!energy || makespan > energy.makespan) energy = { resource, makespan };
  });
  const longestPath = longest - model.origin;
  const { makespan } = (energy as LowerBounds['energy']) ?? { makespan: 0 };
  return { makespan: Math.max(longestPath, makespan), waiting, longestPath, energy };
}

/** The bounds as a score, without what is compared last. */
export function bestScore(bounds: LowerBounds, goals: readonly Goal[]): Score {
  return [0, ...goals.map((goal) => bounds[goal])];
}

/** The least minutes from the begin of each block to the end of everything that must follow it. */
export function tailsOf({ size, after, minutes }: Model): Int32Array {
  const tails = Int32Array.from(minutes);
  for (let block = 0; block < size; block++)
    for (let other = 0; other < size; other++) {
      const path = after[block * size + other] as number;
      if (path !== NONE) tails[block] = Math.max(tails[block] as number, path + (minutes[other] as number));
    }
  return tails;
}

interface Work {
  /** Not before this minute. */
  readonly head: number;
  /** Minutes that must follow. */
  readonly tail: number;
  /** Amount times minutes. */
  readonly energy: number;
}

function workOn(model: Model, resource: number, tails: Int32Array): Work[] {
  const work: Work[] = [];
  for (let block = 0; block < model.size; block++)
    for (let need = model.needAt[block] as number; need < (model.needAt[block + 1] as number); need++) {
      if (model.needResource[need] !== resource) continue;
      const [from, until] = [model.needFrom[need] as number, model.needUntil[need] as number];
      work.push({
        head: (model.earliest[block] as number) + from,
        tail: (tails[block] as number) - until,
        energy: (model.needAmount[need] as number) * (until - from),
      });
    }
  return work;
}

/**
 * The earliest end by a resource’s work: from each head on, all work with a head no earlier must be done; and for each
 * tail, all work with a tail no shorter must be done that long before the end.
 */
function energyEnd(model: Model, calendar: Profile, work: readonly Work[]): number {
  let end = NONE;
  const later = work.toSorted((a, b) => b.head - a.head);
  let [energy, tail] = [0, Number.POSITIVE_INFINITY];
  for (const each of later) {
    energy += each.energy;
    tail = Math.min(tail, each.tail);
    end = Math.max(end, doneBy(calendar, each.head, energy) + tail);
  }
  energy = 0;
  let head = Number.POSITIVE_INFINITY;
  for (const each of work.toSorted((a, b) => b.tail - a.tail)) {
    energy += each.energy;
    head = Math.min(head, each.head);
    end = Math.max(end, doneBy(calendar, head, energy) + each.tail);
  }
  return Math.max(end, work.length > 0 ? model.origin : NONE);
}

/** When so much work can be done at the soonest, all capacity from a minute on being used; that minute if never. */
function doneBy({ times, free, count }: Profile, from: number, energy: number): number {
  let left = energy;
  let at = from;
  for (let step = stepAt(times, count, from); step < count; step++) {
    const amount = free[step] as number;
    const until = times[step + 1] as number;
    if (amount * (until - at) >= left) return at + Math.ceil(left / amount);
    left -= amount * (until - at);
    at = until;
  }
  return from;
}
