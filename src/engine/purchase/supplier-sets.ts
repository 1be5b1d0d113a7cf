import { type FoodCover, foodCover } from './food-cover.ts';
import type { OrderModel } from './order-model.ts';
import { compareOrders, costOfSuppliers, type WeighedOrder, weighOrder } from './weigh-order.ts';

/** What can be told of an order by covering each food by itself. */
export interface SetSearch {
  /** The best order found; undefined where there is nothing to buy. */
  readonly best: WeighedOrder | undefined;
  /** No order costs less than this, in steps; minimum orders reached or not. */
  readonly bound: bigint;
  /** True where `best` is the best order there is, its ties broken. */
  readonly proven: boolean;
}

/** With more suppliers than this, their sets are too many to go through. */
const MOST_SUPPLIERS = 8;

/**
 * Goes through the sets of suppliers an order may be placed with. While no minimum order presses, nothing but the
 * choice of suppliers links the foods, so that each is covered by itself, exactly; what that costs is a bound for
 * every order from the set, and the best set whose minimum orders are reached anyway is the best order there is.
 * Where a set that could be as cheap falls short of a minimum, the matter is open: that takes `searchPressedOrder` or the solver.
 */
export function searchSupplierSets(model: OrderModel): SetSearch {
  const all = model.suppliers.map((_, place) => place);
  const coverOf = coversByFood(model);
  const few = all.length <= MOST_SUPPLIERS;
  let best: WeighedOrder | undefined;
  const bounds: bigint[] = [];
  const openBounds: bigint[] = [];
  for (const places of few ? setsOf(all) : [all]) {
    const covers = model.foods.map((_, food) => coverOf(food, places));
    if (!covers.every((cover) => cover !== undefined)) continue;
    const packs = covers.reduce((sum, { cost, gap }) => sum + cost - gap, 0n);
    // An order from a larger set than can be gone through may use any part of it, so no fee is certain.
    const bound = few ? packs + costOfSuppliers(model, places) : packs;
    const order = weighOrder(
      model,
      covers.map(({ counts }) => counts),
    );
    if (!order) throw new Error('a cover found food by food is not one of the whole order');
    bounds.push(bound);
    if (order.below.length > 0 || covers.some(({ gap }) => gap > 0n)) openBounds.push(bound);
    if (!best || compareOrders(order, best) < 0) best = order;
  }
  if (!best) return { best, bound: 0n, proven: true };
  const { cost, below } = best;
  const least = bounds.toSorted((a, b) => (a < b ? -1 : a > b ? 1 : 0))[0] ?? 0n;
  const proven = few && below.length === 0 && cost === least && openBounds.every((each) => each > cost);
  return { best, bound: least, proven };
}

/** Covers of one food from a set of suppliers, worked out once for those of the set that sell it. */
function coversByFood(model: OrderModel): (food: number, places: readonly number[]) => FoodCover | undefined {
  const known = new Map<string, FoodCover | undefined>();
  const sellers = model.foods.map(({ packs }) => new Set(packs.map(({ supplier }) => supplier)));
  return (at, places) => {
    const open = places.filter((place) => sellers[at]?.has(place));
    const key = `${at}:${open.join()}`;
    const food = model.foods[at];
    if (food && !known.has(key))
      known.set(
        key,
        foodCover(food, (place) => open.includes(place)),
      );
    return known.get(key);
  };
}

/** Every set of at least one of the places. */
function setsOf(places: readonly number[]): number[][] {
  const sets: number[][] = [[]];
  for (const place of places) sets.push(...sets.map((set) => [...set, place]));
  return sets.slice(1);
}
