import { compareCounts, coverWithin } from './cheapest-cover.ts';
import type { ModelFood } from './order-model.ts';

/** The best cover of one food by itself. */
export interface FoodCover {
  /** Of each pack of the food, in its order. */
  readonly counts: readonly number[];
  readonly cost: bigint;
  /** What a better cover may cost less at most; 0 when proven. */
  readonly gap: bigint;
}

interface Weighed extends FoodCover {
  readonly packs: number;
  readonly left: bigint;
}

/**
 * The cheapest whole packs of one food from some of the suppliers (`sells` by their place), with nothing bought
 * for a minimum order; ties as `cheapestCover`. Undefined where those suppliers cannot cover it. Exact.
 *
 * For a food that spoils, what may be left over depends on the packs bought. So for each limit that a pack has,
 * the best cover of the packs with at least that limit is looked for, and the best of these is the best there is:
 * every allowed cover is among those found for the strictest of its packs.
 */
export function foodCover(food: ModelFood, sells: (supplier: number) => boolean): FoodCover | undefined {
  const open = food.packs.flatMap((pack, index) => (sells(pack.supplier) ? [index] : []));
  const rooms = new Set(open.map((index) => food.packs[index]?.room));
  let best: Weighed | undefined;
  let bound: bigint | undefined;
  for (const room of rooms) {
    const allowed = open.filter((index) => {
      const own = food.packs[index]?.room;
      return own === undefined || (room !== undefined && own >= room);
    });
    const packs = allowed.map((index) => food.packs[index] as ModelFood['packs'][number]);
    const { cover, complete } = coverWithin(food.need, packs, room);
    if (!complete && !cover) bound = 0n;
    if (!cover) continue;
    const counts = food.packs.map(() => 0);
    for (const [at, index] of allowed.entries()) counts[index] = cover.counts[at] as number;
    const found = weigh(food, counts);
    const least = found.cost - cover.gap;
    if (bound === undefined || least < bound) bound = least;
    if (!best || compareWeighed(found, best) < 0) best = found;
  }
  return best && { counts: best.counts, cost: best.cost, gap: best.cost - (bound ?? best.cost) };
}

function weigh(food: ModelFood, counts: readonly number[]): Weighed {
  let [cost, left, packs] = [0n, -food.need, 0];
  for (const [index, count] of counts.entries()) {
    const pack = food.packs[index] as ModelFood['packs'][number];
    cost += pack.cost * BigInt(count);
    left += pack.size * BigInt(count);
    packs += count;
  }
  return { counts, cost, gap: 0n, packs, left };
}

function compareWeighed(a: Weighed, b: Weighed): number {
  const order = a.cost - b.cost || BigInt(a.packs - b.packs) || a.left - b.left;
  return order === 0n ? compareCounts(a.counts, b.counts) : order < 0n ? -1 : 1;
}
