import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { type Parsed, parsed } from '../../engine/parsed.ts';
import { planEvent } from '../../engine/plan/plan-event.ts';
import type { OrderedPlan } from '../../engine/plan/purchases/ordered.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { prepPlan } from '../../exports/plan/prep-plan.ts';
import { currentEvent } from '../../offers/event/current-event.ts';
import { eventInputOf } from '../../offers/event/input-of.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import { bodyKey } from '../../offers/issue/body-key.ts';
import { orderPlan } from '../../solver/order-plan.ts';
import { stockFor } from './stock-for.ts';

/** An event planned as its facts stand: in exact values, and as the document made from them. */
export interface EventSide {
  readonly status: EventStatus;
  readonly plan: OrderedPlan;
  readonly document: PrepPlanDocument;
}

/**
 * Plans an event and what is ordered for it, as on a day: stock goes to the events that are still to come, and an
 * order that had to go out before it is told. Fails where there is none, it has no day, or something it serves is gone or
 * held back.
 */
export async function eventSide(book: Book, id: string, today: Day): Promise<Parsed<EventSide>> {
  const found = currentEvent(book, id);
  if (!found.ok) return found;
  const { offer, status } = found.value;
  const input = eventInputOf(book, id);
  if (!input.ok) return input;
  const { kitchen, prices, suppliers } = book;
  const { secondSupplierSaves } = kitchen;
  const plan = await orderPlan(planEvent(input.value, kitchen, prices), prices, stockFor(book, id, today), {
    kitchen,
    suppliers,
    secondSupplierSaves,
    today,
  });
  const notesOf = (recipe: string) => bodyKey(book.recipeBodies.get(recipe) ?? '');
  return parsed({ status, plan, document: prepPlan(book, plan, offer, status, notesOf, today) });
}
