import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { type Parsed, parsed } from '../../engine/parsed.ts';
import type { PrepPlanDocument } from '../../exports/form/prep-plan.ts';
import { currentEvent } from '../../offers/event/current-event.ts';
import type { EventStatus } from '../../offers/event/status.ts';
import type { Offer } from '../../schema/offer.ts';
import { lastChange } from './event-change.ts';
import { type EventSide, eventSide } from './event-side.ts';

/** An event with its plan, or the reason why it cannot be planned now. */
export interface PlannedEvent {
  readonly id: string;
  readonly offer: Offer;
  readonly status: EventStatus;
  readonly plan: Parsed<PrepPlanDocument>;
  /** The plan in exact values; null where it is held back. */
  readonly side: EventSide | null;
}

/**
 * One event planned as on a day, with what its last change made of the plan. Fails where there is no such event; a plan held
 * back, or of an event that is cancelled or has no day, is a value of its own.
 */
export async function plannedEvent(book: Book, id: string, today: Day): Promise<Parsed<PlannedEvent>> {
  const found = currentEvent(book, id);
  if (!found.ok) return found;
  const { offer, status } = found.value;
  const side = await eventSide(book, id, today);
  if (!side.ok) return parsed({ id, offer, status, plan: side, side: null });
  const plan = { ...side.value.document, lastChange: await lastChange(book, id, side.value, today) };
  return parsed({ id, offer, status, plan: parsed(plan), side: side.value });
}

/** Several events planned as on a day, in their order; `between` is awaited before each. */
export async function plannedEvents(
  book: Book,
  ids: readonly string[],
  today: Day,
  between: () => Promise<void> = async () => undefined,
): Promise<PlannedEvent[]> {
  const events: PlannedEvent[] = [];
  for (const id of ids) {
    await between();
    const planned = await plannedEvent(book, id, today);
    if (planned.ok) events.push(planned.value);
  }
  return events;
}
