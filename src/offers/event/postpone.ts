import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import type { PostponedFact } from '../../schema/event-fact.ts';
import { changeableEvent, type NextFact, nextFact } from './current-event.ts';

/** Where an event is moved to. */
export interface NewDate {
  /** null: postponed, without a new day as yet. */
  readonly to: Day | null;
  /** The new day is only held and must be confirmed again. */
  readonly hold: boolean;
}

/**
 * The fact that moves an event to another day or puts it off without one. Refused for a day that has passed, the day
 * it has already, an event that has no day where none is given, and one that is cancelled or over.
 */
export function postponement(
  book: Book,
  event: string,
  { to, hold }: NewDate,
  today: Day,
): Parsed<NextFact<PostponedFact>> {
  const found = changeableEvent(book, event, today);
  if (!found.ok) return found;
  const { facts, status } = found.value;
  if (to === null && hold)
    return notParsed('there is no new date to hold', 'give the new date with --to, or leave out --hold');
  if (to === null && status.date === null)
    return notParsed(`${event} is already postponed`, 'give its new date with --to when it is set');
  if (to !== null && to < today) return notParsed(`${to} has passed; today is ${today}`, 'give a later date');
  if (to !== null && to === status.date)
    return notParsed(`${event} is already on ${to}`, 'give another date');
  return nextFact(facts, { version: 1, kind: 'postponed', on: today, from: status.lastDate, to, hold });
}
