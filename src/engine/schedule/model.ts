import type { Block, BlockNeed } from './blocks.ts';
import { NONE } from './network.ts';
import { lackUntil, type Profile } from './profile.ts';

/** Blocks by number, in typed arrays: what the search places, thousands of times. Times as in the problem. */
export interface Model {
  readonly size: number;
  readonly blocks: readonly Block[];
  readonly minutes: Int32Array;
  /** Tasks in each block. */
  readonly tasks: Int32Array;
  readonly weight: Int32Array;
  readonly fixed: Uint8Array;
  /** At `a * size + b` the least minutes from the begin of a to the begin of b, or `NONE`; `before` is the other way around. */
  readonly after: Int32Array;
  readonly before: Int32Array;
  /** For each block those from which a path leads to it, and those to which one leads from it. */
  readonly earlier: readonly Int32Array[];
  readonly later: readonly Int32Array[];
  /** The begin by lags, windows and fixed blocks alone, from which waiting is counted. */
  readonly base: Int32Array;
  /** No begin before it, nor after it, is possible, whatever is placed first. */
  readonly earliest: Int32Array;
  readonly latest: Int32Array;
  /** Ranges of begins of block b: those at `rangeAt[b]` up to `rangeAt[b + 1]`; needs likewise. */
  readonly rangeAt: Int32Array;
  readonly rangeFirst: Int32Array;
  readonly rangeLast: Int32Array;
  readonly needAt: Int32Array;
  readonly needResource: Int32Array;
  readonly needAmount: Int32Array;
  readonly needFrom: Int32Array;
  readonly needUntil: Int32Array;
  /** Capacity of each resource with nothing placed; the last one is that of resources nobody has: always none. */
  readonly calendars: readonly Profile[];
  /** The horizon’s beginning, from which the makespan is counted. */
  readonly origin: number;
}

/** What a model is made of. */
export interface ModelParts {
  readonly blocks: readonly Block[];
  readonly needs: readonly (readonly BlockNeed[])[];
  readonly after: Int32Array;
  readonly calendars: readonly Profile[];
  readonly origin: number;
}

/** The arrays of a model; bounds on begins are still open and taken from the blocks’ own ranges. */
export function modelFrom({ blocks, needs, after, calendars, origin }: ModelParts): Model {
  const size = blocks.length;
  const ranges = blocks.map(({ begins }) => begins);
  const [allRanges, allNeeds] = [ranges.flat(), needs.flat()];
  const before = new Int32Array(size * size).fill(NONE);
  const earlier = Array.from({ length: size }, (): number[] => []);
  const later = Array.from({ length: size }, (): number[] => []);
  for (let a = 0; a < size; a++)
    for (let b = 0; b < size; b++) {
      const path = after[a * size + b] as number;
      if (path === NONE) continue;
      before[b * size + a] = path;
      if (a === b) continue;
      earlier[b]?.push(a);
      later[a]?.push(b);
    }
  const earliest = Int32Array.from(ranges, (begins) => begins[0]?.first ?? NONE);
  return {
    size,
    blocks,
    minutes: Int32Array.from(blocks, (block) => block.minutes),
    tasks: Int32Array.from(blocks, ({ members }) => members.length),
    weight: Int32Array.from(blocks, ({ weight }) => weight),
    fixed: Uint8Array.from(blocks, ({ fixed }) => Number(fixed)),
    after,
    before,
    earlier: earlier.map((blocks) => Int32Array.from(blocks)),
    later: later.map((blocks) => Int32Array.from(blocks)),
    base: earliest.slice(),
    earliest,
    latest: Int32Array.from(ranges, (begins) => begins.at(-1)?.last ?? NONE),
    rangeAt: startsOf(ranges),
    rangeFirst: Int32Array.from(allRanges, ({ first }) => first),
    rangeLast: Int32Array.from(allRanges, ({ last }) => last),
    needAt: startsOf(needs),
    needResource: Int32Array.from(allNeeds, ({ resource }) =>
      resource < 0 ? calendars.length - 1 : resource,
    ),
    needAmount: Int32Array.from(allNeeds, ({ amount }) => amount),
    needFrom: Int32Array.from(allNeeds, ({ from }) => from),
    needUntil: Int32Array.from(allNeeds, ({ until }) => until),
    calendars,
    origin,
  };
}

/** The first begin of a block at or after a minute that its ranges allow, or `NONE`. */
export function nextBegin(model: Model, block: number, minute: number): number {
  const end = model.rangeAt[block + 1] as number;
  for (let range = model.rangeAt[block] as number; range < end; range++)
    if (minute <= (model.rangeLast[range] as number))
      return Math.max(minute, model.rangeFirst[range] as number);
  return NONE;
}

/**
 * The first begin of a block from one minute to another at which its ranges allow it and all it needs is free, or
 * `NONE`.
 */
export function firstFit(
  model: Model,
  profiles: readonly Profile[],
  block: number,
  from: number,
  last: number,
): number {
  for (let begin = from; ; ) {
    begin = nextBegin(model, block, begin);
    if (begin === NONE || begin > last) return NONE;
    const later = beyondLack(model, profiles, block, begin);
    if (later === NONE) return begin;
    begin = later;
  }
}

/** Where something that a block needs is not free, the begin at which the first such lack is over; `NONE` where all is free. */
function beyondLack(model: Model, profiles: readonly Profile[], block: number, begin: number): number {
  const end = model.needAt[block + 1] as number;
  for (let need = model.needAt[block] as number; need < end; need++) {
    const start = model.needFrom[need] as number;
    const lack = lackUntil(
      profiles[model.needResource[need] as number] as Profile,
      begin + start,
      begin + (model.needUntil[need] as number),
      model.needAmount[need] as number,
    );
    if (lack !== NONE) return lack - start;
  }
  return NONE;
}

function startsOf(lists: readonly (readonly unknown[])[]): Int32Array {
  const starts = new Int32Array(lists.length + 1);
  lists.forEach((list, index) => {
    starts[index + 1] = (starts[index] as number) + list.length;
  });
  return starts;
}
