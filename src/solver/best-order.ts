import type { OrderModel } from '../engine/purchase/order-model.ts';
import { type SettledOrder, settleOrder } from '../engine/purchase/settle-order.ts';
import { searchSupplierSets } from '../engine/purchase/supplier-sets.ts';
import type { RunLimits } from './run-program.ts';
import { ORDER_LIMITS, solveOrder } from './solve-order.ts';

/**
 * The best order for a model. Where no minimum order presses, exact arithmetic alone proves it; else the solver is
 * asked, and what it finds is checked and settled in exact arithmetic.
 */
export async function bestOrder(model: OrderModel, limits: RunLimits = ORDER_LIMITS): Promise<SettledOrder> {
  const sets = searchSupplierSets(model);
  return settleOrder(model, sets, sets.proven ? undefined : await solveOrder(model, limits));
}
