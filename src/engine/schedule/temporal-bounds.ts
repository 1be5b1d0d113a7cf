import { type Block, leadOf } from './blocks.ts';
import type { Model } from './model.ts';
import { NEVER, NONE } from './network.ts';

/** Blocks that agree with each other, and between which minutes each may begin. */
export interface BoundBlocks {
  readonly kept: Block[];
  readonly earliest: number[];
  readonly latest: number[];
}

/** The minute of a fixed task that cannot be placed: what lags tie to it is still held to it. */
export interface HeldMinute {
  readonly task: number;
  readonly minute: number;
}

interface Anchor {
  readonly task: number;
  readonly first: number;
  readonly last: number;
  readonly block?: Block;
}

/**
 * The blocks whose own ranges of begins agree, over all lags, with those of the blocks before them; fixed ones come
 * first, then held minutes, then the rest in order. What contradicts them is not kept and binds nobody.
 */
export function compatibleBlocks(
  blocks: readonly Block[],
  paths: Int32Array,
  size: number,
  held: readonly HeldMinute[],
): BoundBlocks {
  const open = blocks.flatMap((block): Anchor[] => {
    const [first, last] = [block.begins[0]?.first, block.begins.at(-1)?.last];
    return first === undefined || last === undefined ? [] : [{ task: leadOf(block), first, last, block }];
  });
  const anchors = [
    ...open.filter(({ block }) => block?.fixed),
    ...held.map(({ task, minute }) => ({ task, first: minute, last: minute })),
    ...open.filter(({ block }) => !block?.fixed),
  ];
  const agreed: Anchor[] = [];
  for (const anchor of anchors) {
    const fits = agreed.every((other) => {
      const to = paths[other.task * size + anchor.task] as number;
      const back = paths[anchor.task * size + other.task] as number;
      return (
        (to === NONE || other.first + to <= anchor.last) &&
        (back === NONE || anchor.first + back <= other.last)
      );
    });
    if (fits) agreed.push(anchor);
  }
  const kept = blocks.filter((block) => agreed.some((anchor) => anchor.block === block));
  const bounds = kept.map((block) => {
    const lead = leadOf(block);
    let [earliest, latest] = [NONE, NEVER];
    for (const { task, first, last } of agreed) {
      const to = paths[task * size + lead] as number;
      const back = paths[lead * size + task] as number;
      if (to !== NONE) earliest = Math.max(earliest, first + to);
      if (back !== NONE) latest = Math.min(latest, last - back);
    }
    return { earliest, latest };
  });
  return {
    kept,
    earliest: bounds.map(({ earliest }) => earliest),
    latest: bounds.map(({ latest }) => latest),
  };
}

/** Narrows the bounds of a model’s begins to what held minutes allow, in place. */
export function holdTo(
  { blocks, earliest, latest }: Model,
  paths: Int32Array,
  size: number,
  held: readonly HeldMinute[],
): void {
  blocks.forEach((block, number) => {
    const lead = leadOf(block);
    for (const { task, minute } of held) {
      const to = paths[task * size + lead] as number;
      const back = paths[lead * size + task] as number;
      if (to !== NONE) earliest[number] = Math.max(earliest[number] as number, minute + to);
      if (back !== NONE) latest[number] = Math.min(latest[number] as number, minute - back);
    }
  });
}

/**
 * Raises lower bounds on begins until nothing changes: each to the first begin that `firstBegin` finds from it on, what lags
 * lead to along with it. A block for which there is no such begin up to its latest raises nobody’s.
 */
export function raiseBounds(
  { size, after, latest }: Model,
  bounds: Int32Array,
  firstBegin: (block: number, from: number) => number,
): void {
  for (let changed = true; changed; ) {
    changed = false;
    for (let block = 0; block < size; block++) {
      const begin = firstBegin(block, bounds[block] as number);
      if (begin === NONE || begin > (latest[block] as number)) continue;
      if (begin > (bounds[block] as number)) changed = true;
      for (let other = 0; other < size; other++) {
        const path = after[block * size + other] as number;
        if (path !== NONE && begin + path > (bounds[other] as number)) {
          bounds[other] = begin + path;
          changed = true;
        }
      }
    }
  }
}
