import type { Book } from '../book/book.ts';
import { type Parsed, parsed } from '../engine/parsed.ts';
import { planEvent } from '../engine/plan/plan-event.ts';
import { prepPlan } from '../exports/prep-plan.ts';
import type { PrepPlanDocument } from '../exports/prep-plan-document.ts';
import { acceptedOffer } from '../offers/accepted-offer.ts';
import { bodyKey } from '../offers/body-key.ts';
import { eventInputOf } from '../offers/event-input-of.ts';
import { type EventStatus, eventStatus } from '../offers/event-status.ts';
import type { Offer } from '../schema/offer.ts';

/** An event with its plan, or the reason why it cannot be planned now. */
export interface PlannedEvent {
  readonly id: string;
  readonly offer: Offer;
  readonly status: EventStatus;
  readonly plan: Parsed<PrepPlanDocument>;
}

/** One event planned. Fails where there is no such event; a plan held back is a value of its own. */
export function plannedEvent(book: Book, id: string): Parsed<PlannedEvent> {
  const found = acceptedOffer(book, id);
  if (!found.ok) return found;
  const { offer, facts } = found.value;
  const status = eventStatus(offer, facts);
  const input = eventInputOf(book, id);
  const notesOf = (recipe: string) => bodyKey(book.recipeBodies.get(recipe) ?? '');
  const plan = input.ok
    ? parsed(prepPlan(book, planEvent(input.value, book.kitchen, book.prices), offer, status, notesOf))
    : input;
  return parsed({ id, offer, status, plan });
}

/** Every event that can be read, by date, then id. */
export function plannedEvents(book: Book): PlannedEvent[] {
  return [...book.events.keys()]
    .flatMap((id) => {
      const planned = plannedEvent(book, id);
      return planned.ok ? [planned.value] : [];
    })
    .sort((a, b) =>
      a.offer.date < b.offer.date ? -1 : a.offer.date > b.offer.date ? 1 : a.id < b.id ? -1 : 1,
    );
}
