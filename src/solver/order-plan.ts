import type { EventPlan } from '../engine/plan/event-plan.ts';
import { purchaseNeeds } from '../engine/plan/purchases/needs.ts';
import type { OrderedPlan } from '../engine/plan/purchases/ordered.ts';
import type { PriceList } from '../engine/purchase/price-list.ts';
import type { StockLot } from '../engine/purchase/stock.ts';
import { type BuyingSetting, placeOrder } from './place-order.ts';

/**
 * Replaces the packs that a plan chose food by food with those of the best order, stock on hand taken off first.
 * `foodCost` is then what the packs of that order cost, without fees.
 */
export async function orderPlan(
  plan: EventPlan,
  prices: PriceList,
  stock: ReadonlyMap<string, readonly StockLot[]>,
  setting: BuyingSetting,
): Promise<OrderedPlan> {
  const { needs, findings } = purchaseNeeds(plan, prices, stock);
  const order = await placeOrder(needs, setting);
  return {
    ...plan,
    order,
    purchases: order.purchases,
    // Where the plan misses a need altogether, what is left of it has no cost to speak of.
    foodCost: plan.foodCost && order.goods,
    findings: [...plan.findings, ...findings, ...order.findings],
  };
}
