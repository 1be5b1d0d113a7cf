import { type Decimal, ZERO } from '../money/decimal.ts';
import type { OrderModel } from './order-model.ts';
import { decimalOfFraction } from './price-fraction.ts';
import type { PricedPack } from './price-list.ts';
import type { SetSearch } from './supplier-sets.ts';
import { compareOrders, type OrderCounts, type WeighedOrder, weighOrder } from './weigh-order.ts';

/** What a solver says of a model. */
export interface SolverAnswer {
  /** Orders it found, not yet checked. */
  readonly orders: readonly OrderCounts[];
  /** No order with at most `below` suppliers short of their minimum costs less, in steps; undefined: not known. */
  readonly bound: bigint | undefined;
  /** The fewest suppliers short of their minimum order that any order has; undefined: not known. */
  readonly below: number | undefined;
}

/** An order, checked. */
export interface SettledOrder {
  readonly foods: readonly {
    readonly ingredient: string;
    readonly unit: string;
    readonly lines: readonly { readonly pack: PricedPack; readonly count: number }[];
    /** True where a pack could be left off with the need still covered: bought to reach a minimum order. */
    readonly toppedUp: boolean;
  }[];
  /** Ids of suppliers whose minimum order is not reached. */
  readonly below: readonly string[];
  /** True where it is proven that no order has fewer of them. */
  readonly belowProven: boolean;
  /** The most by which a better order may undercut this one, in money; 0 when it is proven to be the best. */
  readonly gap: Decimal;
}

/**
 * Settles on an order: the best of what the solver found, each checked in exact arithmetic, and of what covering
 * each food by itself came to, which is there even where the solver found nothing in time. The gap is what the
 * better of the two bounds leaves open.
 */
export function settleOrder(model: OrderModel, sets: SetSearch, answer?: SolverAnswer): SettledOrder {
  const found = [sets.best, ...(answer?.orders ?? []).map((counts) => weighOrder(model, counts))];
  const orders = found.filter((order): order is WeighedOrder => order !== undefined);
  const [best] = orders.sort(compareOrders);
  if (!best) return { foods: [], below: [], belowProven: true, gap: ZERO };
  const belowProven = best.below.length === 0 || answer?.below === best.below.length;
  const bound =
    belowProven && answer?.bound !== undefined && answer.bound > sets.bound ? answer.bound : sets.bound;
  const open = sets.proven || best.cost < bound ? 0n : best.cost - bound;
  return {
    foods: model.foods.map((food, at) => {
      const counts = best.counts[at] ?? [];
      const held = food.packs.reduce((sum, { size }, index) => sum + size * BigInt(counts[index] ?? 0), 0n);
      const bought = food.packs.filter((_, index) => (counts[index] ?? 0) > 0);
      return {
        ingredient: food.ingredient,
        unit: food.unit,
        lines: food.packs.flatMap(({ pack }, index) => {
          const count = counts[index] ?? 0;
          return count > 0 ? [{ pack, count }] : [];
        }),
        toppedUp: bought.some(({ size }) => held - size >= food.need),
      };
    }),
    below: best.below.map((place) => model.suppliers[place]?.id ?? ''),
    belowProven,
    gap: decimalOfFraction(model.step.mul(open)),
  };
}
