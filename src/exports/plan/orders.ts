import type { PlacedOrder } from '../../engine/plan/purchases/ordered.ts';
import type { PlanOrder } from '../form/buying.ts';
import { dateText } from '../words/date-text.ts';

/** What is ordered from each supplier, by when, and what is missing to its minimum order. */
export function planOrders({ orders }: PlacedOrder, locale: string): PlanOrder[] {
  return orders.map(({ neededOn, ...order }) => ({
    ...order,
    deliverOnText: dateText(order.deliverOn, locale),
    orderByText: dateText(order.orderBy, locale),
  }));
}
