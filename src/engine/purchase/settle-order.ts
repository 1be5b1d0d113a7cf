import { type Decimal, ZERO } from '../money/decimal.ts';
import type { OrderModel } from './order-model.ts';
import type { PressedSearch } from './pressed-order.ts';
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

/** The best of what the solver found, each checked in exact arithmetic, and of what the suppliers' sets came to. */
export function bestOf(
  model: OrderModel,
  sets: SetSearch,
  answer?: SolverAnswer,
  exact?: PressedSearch,
): WeighedOrder | undefined {
  const found = [...(answer?.orders ?? []), ...(exact?.orders ?? [])].map((counts) =>
    weighOrder(model, counts),
  );
  return [sets.best, ...found].filter((order) => order !== undefined).sort(compareOrders)[0];
}

/**
 * Settles on an order: the best of what was found, which is there even where the solver found nothing in time. The
 * gap is what the best of the bounds leaves open: that of the suppliers' sets holds for every order, the others for
 * those with no more suppliers below their minimum.
 */
export function settleOrder(
  model: OrderModel,
  sets: SetSearch,
  answer?: SolverAnswer,
  exact?: PressedSearch,
): SettledOrder {
  const best = bestOf(model, sets, answer, exact);
  if (!best) return { foods: [], below: [], belowProven: true, gap: ZERO };
  const belowProven = best.below.length === 0 || answer?.below === best.below.length;
  const bounds = belowProven ? [sets.bound, answer?.bound, exact?.bound] : [sets.bound];
  const bound = bounds.reduce((a: bigint, b) => (b !== undefined && b > a ? b : a), sets.bound);
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
