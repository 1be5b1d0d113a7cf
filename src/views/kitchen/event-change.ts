import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { PlanOrder } from '../../exports/form/buying.ts';
import type { PlanChangesDocument } from '../../exports/form/changes.ts';
import { planChangesDocument } from '../../exports/plan/changes.ts';
import { currentEvent, withFacts } from '../../offers/event/current-event.ts';
import { eventStatus } from '../../offers/event/status.ts';
import { type ChangingFact, changesPlan, changeText } from './change-text.ts';
import { type EventSide, eventSide } from './event-side.ts';
import { plannedTogether } from './schedule-for.ts';

/**
 * What the last change of an event's plan (its count, a substitution, its day) made of it, both sides planned with
 * today's recipes and prices; null where nothing has changed since the acceptance, and where the event, as it was
 * before or is now, cannot be planned. `now` is the event as it stands, planned already.
 */
export async function lastChange(
  book: Book,
  id: string,
  now: EventSide,
  today: Day,
): Promise<PlanChangesDocument | null> {
  const found = currentEvent(book, id);
  if (!found.ok) return null;
  const { facts, offer } = found.value;
  const index = facts.findLastIndex(changesPlan);
  const fact = facts[index];
  if (!fact || !changesPlan(fact)) return null;
  // A day is compared with the last day it had, whatever time it was without one.
  const dated = facts.slice(0, index).filter((each) => each.kind !== 'postponed' || each.to !== null);
  const before = await eventSide(withFacts(book, id, dated), id, today, plannedTogether(book, today));
  if (!before.ok) return null;
  const status = eventStatus(offer, facts.slice(0, index + 1));
  return compared(book, before.value, { ...now, status }, fact, offer.terms);
}

function compared(
  book: Book,
  before: EventSide,
  after: EventSide,
  fact: ChangingFact,
  terms: Terms,
): PlanChangesDocument {
  const { measures: system, locale } = book.kitchen;
  const nameOf = (id: string) => book.recipes.get(id)?.name ?? book.ingredients.get(id)?.name ?? id;
  return planChangesDocument(before, after, {
    what: changeText(fact, before.status, locale, nameOf),
    terms,
    on: fact.on,
    orderBy: lastOrderDays([...after.document.orders, ...before.document.orders]),
    system,
    locale,
    supplierName: (id) => book.suppliers.get(id)?.name ?? id,
  });
}

/** The last day for orders of each supplier; of one named twice the later entry's. */
function lastOrderDays(orders: readonly PlanOrder[]): Map<string, Day> {
  return new Map(orders.map(({ supplier, orderBy }) => [supplier, orderBy as Day]));
}
