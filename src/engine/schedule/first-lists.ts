import { tailsOf } from './lower-bounds.ts';
import type { Model } from './model.ts';
import { type ListOrder, listByKey, type PriorityList } from './priority-lists.ts';
import type { Random } from './random.ts';

/** Steps in which chance grows from one list to the next, and how many of them span the longest tail. */
const [STEPS, SPAN] = [4, 6];

/**
 * Lists to begin a search with, as many as are asked for: one by each of the usual rules (longest tail, latest begin and
 * end, most blocks that follow, greatest weight), then the first rules with more and more chance in them. They are to
 * be good and unlike each other.
 */
export function* firstLists(
  model: Model,
  order: ListOrder,
  count: number,
  random: Random,
): Generator<PriorityList> {
  const { size, minutes, base, latest, weight } = model;
  const tails = tailsOf(model);
  const byTail = Int32Array.from(tails, (tail) => -tail);
  const byLatestEnd = Int32Array.from(tails, (tail, block) => (minutes[block] as number) - tail);
  const rules = [
    byTail,
    byLatestEnd,
    base,
    Int32Array.from(order.later, (later) => -later.length),
    Int32Array.from(weight, (each) => -each),
    latest,
  ];
  for (const keys of rules.slice(0, count)) yield listByKey(order, keys);
  const longest = Math.max(1, ...tails);
  for (let index = rules.length; index < count; index++) {
    const keys = index % 2 === 0 ? byTail : byLatestEnd;
    const spread = 1 + Math.floor((longest * (1 + (index % STEPS))) / SPAN);
    yield listByKey(
      order,
      Int32Array.from({ length: size }, (_, block) => (keys[block] as number) + random.below(spread)),
    );
  }
}
