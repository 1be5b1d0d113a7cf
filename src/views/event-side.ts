import type { Book } from '../book/book.ts';
import { type Parsed, parsed } from '../engine/parsed.ts';
import type { EventPlan } from '../engine/plan/event-plan.ts';
import { planEvent } from '../engine/plan/plan-event.ts';
import { prepPlan } from '../exports/prep-plan.ts';
import type { PrepPlanDocument } from '../exports/prep-plan-document.ts';
import { bodyKey } from '../offers/body-key.ts';
import { currentEvent } from '../offers/current-event.ts';
import { eventInputOf } from '../offers/event-input-of.ts';
import type { EventStatus } from '../offers/event-status.ts';

/** An event planned as its facts stand: in exact values, and as the document made from them. */
export interface EventSide {
  readonly status: EventStatus;
  readonly plan: EventPlan;
  readonly document: PrepPlanDocument;
}

/** Plans an event. Fails where there is none, it has no day, or something it serves is gone or held back. */
export async function eventSide(book: Book, id: string): Promise<Parsed<EventSide>> {
  const found = currentEvent(book, id);
  if (!found.ok) return found;
  const { offer, status } = found.value;
  const input = eventInputOf(book, id);
  if (!input.ok) return input;
  const plan = planEvent(input.value, book.kitchen, book.prices);
  const notesOf = (recipe: string) => bodyKey(book.recipeBodies.get(recipe) ?? '');
  return parsed({ status, plan, document: prepPlan(book, plan, offer, status, notesOf) });
}
