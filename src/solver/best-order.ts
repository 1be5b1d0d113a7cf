import type { OrderModel } from '../engine/purchase/order-model.ts';
import { searchPressedOrder } from '../engine/purchase/pressed-order.ts';
import { bestOf, type SettledOrder, settleOrder } from '../engine/purchase/settle-order.ts';
import { searchSupplierSets } from '../engine/purchase/supplier-sets.ts';
import type { RunLimits } from './run-program.ts';
import { ORDER_LIMITS, solveOrder } from './solve-order.ts';

/**
 * The best order for a model. Where no minimum order presses, covering each food by itself proves it; where one does,
 * the exact search is tried, and then, unless that proved its order, the solver, whose best order, checked, leaves the exact search less to go
 * through. Where none of them gets to the end the gap says how much is open.
 */
export async function bestOrder(model: OrderModel, limits: RunLimits = ORDER_LIMITS): Promise<SettledOrder> {
  const sets = searchSupplierSets(model);
  if (sets.proven) return settleOrder(model, sets);
  const start = sets.best?.below.length === 0 ? searchPressedOrder(model, sets.best) : undefined;
  const settled = start && settleOrder(model, sets, undefined, start);
  if (settled && (start.complete || settled.gap.isZero())) return settled;
  const answer = await solveOrder(model, limits);
  const known = bestOf(model, sets, answer, start);
  return settleOrder(model, sets, answer, known && searchPressedOrder(model, known));
}
