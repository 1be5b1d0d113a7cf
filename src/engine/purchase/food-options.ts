import Fraction from 'fraction.js';
import { compareCounts } from './cheapest-cover.ts';
import type { ModelFood } from './order-model.ts';

/** One way to cover a food: what it costs and how much of that goes to each supplier whose minimum is watched. */
export interface FoodOption {
  readonly counts: readonly number[];
  readonly cost: number;
  /** Goods from each watched supplier, in the order of `Weights.watched`. */
  readonly spent: readonly number[];
  readonly packs: number;
  readonly held: number;
  /** What is left over as a share of the need. */
  readonly left: () => Fraction;
  /** What it costs by `Weights` above the cheapest cover by them. */
  readonly excess: number;
}

/** What a step of cost counts for, in `WEIGHT_SCALE` parts of a step: less where it helps to reach a minimum order. */
export interface Weights {
  /** Suppliers, by place, that are used; the others sell nothing. */
  readonly used: ReadonlySet<number>;
  /** Suppliers, by place, whose minimum order has to be reached. */
  readonly watched: readonly number[];
  /** How much of a step spent with each of them is not counted, 0 to `WEIGHT_SCALE`. */
  readonly credit: readonly number[];
}

export const WEIGHT_SCALE = 4096;

/** Options of one food kept at most; of more, those that cost most by the weights are given up. */
const MOST_OPTIONS = 400;
/** Partial covers looked at for one food. */
const MOST_TRIED = 8_000;

/** The options of one food. */
export interface FoodOptions {
  /** By `excess`, the least first. */
  readonly options: readonly FoodOption[];
  /** Every cover whose excess is below this is among the options, or one that is no worse is. */
  readonly completeBelow: number;
}

/**
 * The covers of a food that cost by the weights at most `slack` above the cheapest (`least`), each pack up to its
 * `most` and with no more left over than a food that spoils allows. Of covers that spend the same, the one with the
 * fewest packs, then the least left over, is kept. All numbers are whole and far below 2^53.
 */
export function foodOptions(food: ModelFood, weights: Weights, least: number, slack: number): FoodOptions {
  for (let within = slack; ; within = Math.floor(within / 16)) {
    const found = optionsWithin(food, weights, least, within);
    if (found.complete) return { options: found.options, completeBelow: within + 1 };
    if (within === 0) return { options: found.options.slice(0, MOST_OPTIONS), completeBelow: 0 };
  }
}

/** What each pack of the food costs by the weights; undefined where its supplier is not used. */
export function weightedCosts(food: ModelFood, { used, watched, credit }: Weights): (number | undefined)[] {
  return food.packs.map(({ supplier, cost }) => {
    if (!used.has(supplier)) return undefined;
    const at = watched.indexOf(supplier);
    return Number(cost) * (WEIGHT_SCALE - (at < 0 ? 0 : (credit[at] as number)));
  });
}

interface Usable {
  readonly place: number;
  readonly size: number;
  readonly cost: number;
  readonly weighted: number;
  readonly most: number;
  readonly room: number;
  readonly watchedAt: number;
}

function optionsWithin(
  food: ModelFood,
  weights: Weights,
  least: number,
  within: number,
): { readonly options: readonly FoodOption[]; readonly complete: boolean } {
  const packs = usable(food, weights);
  const need = Number(food.need);
  const counts = food.packs.map(() => 0);
  const spent = weights.watched.map(() => 0);
  const found = new Map<string, FoodOption>();
  let tried = 0;
  const grow = (at: number, held: number, cost: number, weighted: number, bought: number, room: number) => {
    if (tried >= MOST_TRIED) return;
    tried += 1;
    const missing = need - held;
    const pack = packs[at];
    if (!pack) {
      if (missing > 0 || -missing > room) return;
      const option = {
        counts: [...counts],
        cost,
        spent: [...spent],
        packs: bought,
        held,
        left: () => new Fraction(held).div(food.exactNeed).sub(1n),
        excess: weighted - least,
      };
      const key = `${cost} ${spent.join(' ')}`;
      const known = found.get(key);
      if (!known || compareOptions(option, known) < 0) found.set(key, option);
      return;
    }
    // Packs stand by their rate, so that none of those to come fills what is missing at a lower one. A division of
    // numbers below 2^53 is less than 1 off here, which is taken off the bound.
    if (missing > 0 && weighted + Math.floor((missing * pack.weighted) / pack.size) - 1 > least + within)
      return;
    for (let count = 0; count <= pack.most; count += 1) {
      const more = weighted + count * pack.weighted;
      const roomLeft = count > 0 ? Math.min(room, pack.room) : room;
      if (more > least + within || (count > 0 && held + count * pack.size - need > roomLeft)) break;
      counts[pack.place] = count;
      if (pack.watchedAt >= 0) (spent[pack.watchedAt] as number) += count === 0 ? 0 : pack.cost;
      grow(at + 1, held + count * pack.size, cost + count * pack.cost, more, bought + count, roomLeft);
    }
    if (pack.watchedAt >= 0) (spent[pack.watchedAt] as number) -= (counts[pack.place] as number) * pack.cost;
    counts[pack.place] = 0;
  };
  grow(0, 0, 0, 0, 0, Number.POSITIVE_INFINITY);
  const options = [...found.values()].sort((a, b) => a.excess - b.excess || compareOptions(a, b));
  return { options, complete: tried < MOST_TRIED && options.length <= MOST_OPTIONS };
}

function usable(food: ModelFood, weights: Weights): Usable[] {
  const costs = weightedCosts(food, weights);
  return food.packs
    .flatMap((pack, place) => {
      const weighted = costs[place];
      if (weighted === undefined) return [];
      const room = pack.room === undefined ? Number.POSITIVE_INFINITY : Number(pack.room);
      const watchedAt = weights.watched.indexOf(pack.supplier);
      const numbers = { size: Number(pack.size), cost: Number(pack.cost), most: Number(pack.most) };
      return [{ place, weighted, room, watchedAt, ...numbers }];
    })
    .sort((a, b) => a.weighted * b.size - b.weighted * a.size || a.place - b.place);
}

function compareOptions(a: FoodOption, b: FoodOption): number {
  return a.packs - b.packs || a.held - b.held || compareCounts(a.counts, b.counts);
}
