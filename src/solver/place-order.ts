import type { PurchaseNeed } from '../engine/plan/purchases/needs.ts';
import { type OrderSetting, type PlacedOrder, placedOrder } from '../engine/plan/purchases/ordered.ts';
import { orderModel } from '../engine/purchase/order-model.ts';
import { bestOrder } from './best-order.ts';
import type { RunLimits } from './run-program.ts';

/** An order's setting, and what a further supplier must save more than, money text. */
export interface BuyingSetting extends OrderSetting {
  readonly secondSupplierSaves: string;
  /** What the solver may take; by default `ORDER_LIMITS`. */
  readonly limits?: RunLimits;
}

/** Decides what to buy for needs, in one order from as many suppliers as it takes. */
export async function placeOrder(
  needs: readonly PurchaseNeed[],
  setting: BuyingSetting,
): Promise<PlacedOrder> {
  const model = orderModel(
    needs.map(({ ingredient, need, stock, packs }) => ({
      ingredient,
      need: { amount: need.amount.sub(stock), unit: need.unit },
      packs,
    })),
    setting,
  );
  return placedOrder(needs, await bestOrder(model, setting.limits), setting);
}
