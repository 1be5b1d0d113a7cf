import { type FoodOption, foodOptions, WEIGHT_SCALE, type Weights } from './food-options.ts';
import { joinHalves } from './join-halves.ts';
import type { OrderModel } from './order-model.ts';
import { comparePartOrders, countsOf, type PartOrder } from './part-order.ts';
import { type SupplierChoice, SupplierCredits } from './supplier-credits.ts';
import type { OrderCounts, WeighedOrder } from './weigh-order.ts';

/** What the exact search came to. */
export interface PressedSearch {
  /** Orders found that cost no more than the one known before, the last the cheapest. Not yet checked. */
  readonly orders: readonly OrderCounts[];
  /** No order with at most as many suppliers below their minimum costs less, in steps. */
  readonly bound: bigint;
  /** True where every order that costs no more than the best was gone through, so that its ties are broken too. */
  readonly complete: boolean;
}

/** Partial orders made from one food to the next; the states kept are so many fewer. */
const MOST_STEPS = 60_000;
/** With more suppliers than this, their sets are too many to go through. */
const MOST_SUPPLIERS = 5;
/** Whole numbers up to here are exact, with room for sums of them. */
const LARGEST = 2 ** 50;

/**
 * Looks for an order that is better than a known one under minimum orders that press, in whole numbers alone, and
 * bounds what any order can cost. Undefined where the numbers or the suppliers are too many.
 *
 * For each set of suppliers, and each choice of those in it that may stay below their minimum (as many as in the known
 * order), a part of what is spent with the others is credited against their minimums (Lagrange multipliers): with these
 * weights each food by itself gives a bound for the whole order. Only covers and part orders that this bound leaves
 * below the known cost are gone through, food by food; of those that spend the same with each supplier, as far as its
 * minimum still wants it, the best is kept. Where they are too many the ones with the highest bounds are given up, and
 * the least of these bounds is what is left to prove, and `joinHalves` looks for an order that comes nearer to it.
 */
export function searchPressedOrder(model: OrderModel, known: WeighedOrder): PressedSearch | undefined {
  const largest = model.foods.reduce(
    (sum, { packs, need }) =>
      packs.reduce(
        (all, { cost, size, most: times }) => all + Number(cost + size) * Number(times),
        sum + Number(need),
      ),
    Number(known.cost),
  );
  if (model.suppliers.length > MOST_SUPPLIERS || largest * WEIGHT_SCALE > LARGEST) return undefined;
  let best = Number(known.cost);
  let bound = Number.POSITIVE_INFINITY;
  const orders: OrderCounts[] = [];
  let complete = true;
  for (const weights of choices(model, known.below.length)) {
    const part = new ChoiceSearch(model, weights);
    let open = part.search(best);
    // A better order found leaves less to look at: what was given up may now be gone through.
    for (let found = open.found; found && found.cost < best && open.bound < found.cost; found = open.found) {
      best = found.cost;
      orders.push(found.counts);
      open = part.search(best);
    }
    if (open.found && open.found.cost <= best) {
      best = open.found.cost;
      orders.push(open.found.counts);
    }
    const joined = open.bound < best ? part.join(best) : undefined;
    if (joined) {
      best = joined.cost;
      orders.push(joined.counts);
    }
    bound = Math.min(bound, open.bound);
    complete &&= open.complete;
  }
  return { orders, bound: BigInt(Math.min(bound, best)), complete };
}

/* Sets of suppliers, each with the suppliers whose minimum must be reached. */
function choices(model: OrderModel, below: number): SupplierChoice[] {
  let sets: number[][] = [[]];
  for (const place of model.suppliers.keys()) sets = [...sets, ...sets.map((set) => [...set, place])];
  return sets.slice(1).flatMap((set) => {
    const pressing = set.filter((place) => (model.suppliers[place]?.minimum ?? 0n) > 0n);
    const least = Math.max(0, pressing.length - below);
    return sets
      .filter((watched) => watched.length === least && watched.every((place) => pressing.includes(place)))
      .map((watched) => ({ used: new Set(set), watched }));
  });
}

interface Found {
  readonly cost: number;
  readonly counts: OrderCounts;
}

/** What one choice of suppliers came to. */
interface SearchedChoice extends Pick<PressedSearch, 'complete'> {
  readonly found: Found | undefined;
  readonly bound: number;
}

class ChoiceSearch {
  readonly #model: OrderModel;
  readonly #credits: SupplierCredits;
  #weights: Weights | undefined;

  constructor(model: OrderModel, choice: SupplierChoice) {
    this.#model = model;
    this.#credits = new SupplierCredits(model, choice);
  }

  /** The best order that costs at most `best`, and what none of this choice costs less than (above `best`: none). */
  search(best: number): SearchedChoice {
    this.#weights ??= this.#credits.bestWeights(best);
    const weights = this.#weights;
    const bound = this.#credits.boundBy(weights.credit);
    if (bound === undefined) return { found: undefined, bound: Number.POSITIVE_INFINITY, complete: true };
    if (bound > best * WEIGHT_SCALE)
      return { found: undefined, bound: Math.ceil(bound / WEIGHT_SCALE), complete: true };
    const slack = best * WEIGHT_SCALE - bound;
    const foods = this.#model.foods.map((food, at) => {
      const least = this.#credits.leastOf(at, weights.credit) as number;
      return { food, at, least, ...foodOptions(food, weights, least, slack) };
    });
    foods.sort((a, b) => a.options.length - b.options.length || a.at - b.at);
    let lost = Math.min(
      ...foods.map(({ completeBelow }) =>
        completeBelow > slack ? Number.POSITIVE_INFINITY : bound + completeBelow,
      ),
    );
    let states: PartOrder[] = [
      {
        before: undefined,
        option: undefined,
        food: 0,
        cost: this.#credits.fees,
        spent: weights.watched.map(() => 0),
        packs: 0,
        bound,
      },
    ];
    for (const [index, { at, options }] of foods.entries()) {
      const most = foods.slice(index + 1).map((each) => each.options);
      const rest = weights.watched.map((_, at) =>
        most.reduce((sum, all) => sum + Math.max(0, ...all.map(({ spent }) => spent[at] as number)), 0),
      );
      const room = Math.max(50, Math.floor(MOST_STEPS / Math.max(1, options.length)));
      if (states.length > room) {
        states.sort((a, b) => a.bound - b.bound || b.cost - a.cost || a.packs - b.packs);
        lost = Math.min(lost, (states[room] as PartOrder).bound);
        states = states.slice(0, room);
      }
      states = this.#next(states, at, options, rest, weights.credit, best * WEIGHT_SCALE);
    }
    const reached = states.filter(({ spent }) =>
      spent.every((sum, at) => sum >= (this.#credits.minimums[at] as number)),
    );
    reached.sort(comparePartOrders);
    const [end] = reached;
    return {
      found: end && { cost: end.cost, counts: countsOf(end) },
      bound: Math.min(Math.ceil(lost / WEIGHT_SCALE), end?.cost ?? Number.POSITIVE_INFINITY),
      complete: lost > best * WEIGHT_SCALE,
    };
  }

  /** An order that costs less than `best`, where joined halves come to one: what `search` gave up may hold it. */
  join(best: number): Found | undefined {
    const weights = this.#weights;
    const bound = weights && this.#credits.boundBy(weights.credit);
    if (!weights || bound === undefined) return undefined;
    const slack = best * WEIGHT_SCALE - bound;
    const options = this.#model.foods.map((food, at) => {
      const least = this.#credits.leastOf(at, weights.credit) as number;
      return foodOptions(food, weights, least, slack).options;
    });
    const { minimums, fees } = this.#credits;
    const packsCost = best - fees;
    const found = joinHalves({ options, minimums, credit: weights.credit, below: slack, packsCost });
    if (!found) return undefined;
    return {
      cost: found.reduce((sum, { cost }) => sum + cost, fees),
      counts: found.map(({ counts }) => counts),
    };
  }

  #next(
    states: readonly PartOrder[],
    food: number,
    options: readonly FoodOption[],
    rest: readonly number[],
    credit: readonly number[],
    most: number,
  ): PartOrder[] {
    const next = new Map<string, PartOrder>();
    for (const before of states) {
      for (const option of options) {
        let bound = before.bound + option.excess;
        if (bound > most) break;
        const spent: number[] = [];
        let short = false;
        for (const [at, minimum] of this.#credits.minimums.entries()) {
          const sum = (before.spent[at] as number) + (option.spent[at] as number);
          spent.push(Math.min(sum, minimum));
          // What goes beyond a minimum has no credit.
          if (sum > minimum) bound += (sum - minimum) * (credit[at] as number);
          if (sum + (rest[at] as number) < minimum) short = true;
        }
        if (short || bound > most) continue;
        const state = {
          before,
          option,
          food,
          cost: before.cost + option.cost,
          spent,
          packs: before.packs + option.packs,
          bound,
        };
        const key = spent.join(' ');
        const known = next.get(key);
        if (!known || comparePartOrders(state, known) < 0) next.set(key, state);
      }
    }
    return [...next.values()];
  }
}
