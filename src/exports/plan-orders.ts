import type { Book } from '../book/book.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { supplierOrders } from '../engine/purchase/supplier-orders.ts';
import type { PlanOrder } from './prep-plan-document.ts';

/** What is ordered from each supplier, and what is missing to its minimum order. */
export function planOrders(plan: EventPlan, book: Book): PlanOrder[] {
  return supplierOrders(plan, book);
}
