import Fraction from 'fraction.js';
import { compareCounts } from './cheapest-cover.ts';
import type { OrderModel } from './order-model.ts';

/** How many of each pack, food by food, in the order of the model. */
export type OrderCounts = readonly (readonly number[])[];

/** An order that covers every need, with all that orders are compared by. Exact. */
export interface WeighedOrder {
  readonly counts: OrderCounts;
  /** Suppliers used, by their places in the model. */
  readonly used: readonly number[];
  /** Cost of the packs from each supplier of the model, in steps. */
  readonly goods: readonly bigint[];
  /** Suppliers used whose minimum order is not reached, by their places. */
  readonly below: readonly number[];
  /** Packs, fees, and what further suppliers are charged, in steps. */
  readonly cost: bigint;
  readonly packs: number;
  /** What is left over of each food as a share of its need, summed. Asked for only where all else ties: it is slow. */
  readonly left: () => Fraction;
}

/**
 * Checks counts against the model in exact arithmetic and weighs them. Undefined where they are no order: a need
 * not covered, a count that is no whole number or beyond its limit, more left over than a food that spoils may
 * leave. Falling short of a minimum order is no reason to refuse, but weighs heaviest in `compareOrders`.
 */
export function weighOrder(model: OrderModel, counts: OrderCounts): WeighedOrder | undefined {
  const goods = model.suppliers.map(() => 0n);
  const used = new Set<number>();
  let packs = 0;
  const holds: bigint[] = [];
  for (const [at, food] of model.foods.entries()) {
    let held = 0n;
    let room: bigint | undefined;
    for (const [index, pack] of food.packs.entries()) {
      const count = counts[at]?.[index] ?? 0;
      if (!Number.isSafeInteger(count) || count < 0 || BigInt(count) > pack.most) return undefined;
      if (count === 0) continue;
      held += pack.size * BigInt(count);
      goods[pack.supplier] = (goods[pack.supplier] as bigint) + pack.cost * BigInt(count);
      used.add(pack.supplier);
      packs += count;
      if (pack.room !== undefined && (room === undefined || pack.room < room)) room = pack.room;
    }
    if (held < food.need || (room !== undefined && held - food.need > room)) return undefined;
    holds.push(held);
  }
  const places = [...used].sort((a, b) => a - b);
  return {
    counts,
    used: places,
    goods,
    below: places.filter((place) => (goods[place] as bigint) < (model.suppliers[place]?.minimum ?? 0n)),
    cost: goods.reduce((sum, each) => sum + each, costOfSuppliers(model, places)),
    packs,
    left: () => leftOver(model, holds),
  };
}

/** Exact, whatever the needs: their fractions have no small common measure, so that each addition costs a long division. */
function leftOver({ foods }: OrderModel, holds: readonly bigint[]): Fraction {
  return foods.reduce(
    (sum, { exactNeed }, at) => sum.add(new Fraction(holds[at] ?? 0n).sub(exactNeed).div(exactNeed)),
    new Fraction(0n),
  );
}

/** What using these suppliers costs besides the packs, in steps: their fees, and the charge for each beyond the first. */
export function costOfSuppliers(model: OrderModel, places: readonly number[]): bigint {
  const fees = places.reduce((sum, place) => sum + (model.suppliers[place]?.fee ?? 0n), 0n);
  return fees + model.further * BigInt(Math.max(0, places.length - 1));
}

/**
 * Which of two orders is better (negative: the first): fewer below their minimum, then least cost, then fewest
 * suppliers (a further one must save more than it is charged, not as much), fewest packs, least left over, the
 * suppliers named first, more of the packs named first. 0 only for the same order.
 */
export function compareOrders(a: WeighedOrder, b: WeighedOrder): number {
  const cost = a.cost - b.cost;
  return (
    a.below.length - b.below.length ||
    (cost === 0n ? 0 : cost < 0n ? -1 : 1) ||
    a.used.length - b.used.length ||
    a.packs - b.packs ||
    compareTied(a, b)
  );
}

function compareTied(a: WeighedOrder, b: WeighedOrder): number {
  const counts = compareCounts(a.counts.flat(), b.counts.flat());
  return counts && (a.left().compare(b.left()) || -compareCounts(a.used, b.used) || counts);
}
