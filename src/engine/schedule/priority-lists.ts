import type { Model } from './model.ts';
import { NONE } from './network.ts';
import type { Random } from './random.ts';

/** All blocks, in the order in which they are placed; what must begin later never stands before what it waits for. */
export type PriorityList = Int32Array;

/** Which blocks must wait for which, as far as the order of a list goes. */
export interface ListOrder {
  /** For each block, those that come after it in every list; and how many come before it. */
  readonly later: readonly Int32Array[];
  readonly countBefore: Int32Array;
}

/** The order that lags give: the strict order of Neumann, Schwindt and Zimmermann (see `schedule.ts`). */
export function listOrder({ size, after }: Model): ListOrder {
  const countBefore = new Int32Array(size);
  const later = Array.from({ length: size }, (_, block) => {
    const found: number[] = [];
    for (let other = 0; other < size; other++) {
      const to = after[block * size + other] as number;
      const back = after[other * size + block] as number;
      if (other === block || to === NONE || to < 0 || (to === 0 && back >= 0)) continue;
      found.push(other);
      countBefore[other] = (countBefore[other] as number) + 1;
    }
    return Int32Array.from(found);
  });
  return { later, countBefore };
}

/** The list in which, of all blocks that nothing holds back, the one with the least key comes next; ties by number. */
export function listByKey({ later, countBefore }: ListOrder, keys: ArrayLike<number>): PriorityList {
  const size = countBefore.length;
  const waiting = countBefore.slice();
  const list = new Int32Array(size);
  const open: number[] = [];
  const sift = (block: number): void => {
    let low = 0;
    let high = open.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      const other = open[middle] as number;
      const difference = (keys[other] as number) - (keys[block] as number) || other - block;
      if (difference > 0) low = middle + 1;
      else high = middle;
    }
    open.splice(low, 0, block);
  };
  for (let block = 0; block < size; block++) if (waiting[block] === 0) sift(block);
  for (let place = 0; place < size; place++) {
    const block = open.pop() as number;
    list[place] = block;
    for (const other of later[block] as Int32Array) {
      waiting[other] = (waiting[other] as number) - 1;
      if (waiting[other] === 0) sift(other);
    }
  }
  return list;
}

/** A child of two lists: the mother’s up to one cut, the father’s order up to another, the mother’s to the end. */
export function crossed(mother: PriorityList, father: PriorityList, random: Random): PriorityList {
  const size = mother.length;
  const [one, two] = [random.below(size + 1), random.below(size + 1)];
  const [first, second] = [Math.min(one, two), Math.max(one, two)];
  const child = new Int32Array(size);
  const used = new Uint8Array(size);
  let place = 0;
  const takeFrom = (list: PriorityList, until: number): void => {
    for (let at = 0; place < until; at++) {
      const block = list[at] as number;
      if (used[block]) continue;
      used[block] = 1;
      child[place++] = block;
    }
  };
  takeFrom(mother, first);
  takeFrom(father, second);
  takeFrom(mother, size);
  return child;
}

/** Moves a block forward in a list, in place, to just after the last one that it waits for or to a place in between. */
export function movedForward(order: ListOrder, list: PriorityList, at: number, random: Random): void {
  const block = list[at] as number;
  let first = at;
  while (first > 0 && !(order.later[list[first - 1] as number] as Int32Array).includes(block)) first--;
  const to = first + random.below(at - first + 1);
  list.copyWithin(to + 1, to, at);
  list[to] = block;
}
