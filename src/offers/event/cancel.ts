import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Parsed } from '../../engine/parsed.ts';
import type { CancelledFact } from '../../schema/event-fact.ts';
import { changeableEvent, type NextFact, nextFact } from './current-event.ts';

/** The fact that calls an event off for good. Refused for one that is cancelled already or over. */
export function cancellation(
  book: Book,
  event: string,
  reason: string | undefined,
  today: Day,
): Parsed<NextFact<CancelledFact>> {
  const found = changeableEvent(book, event, today);
  if (!found.ok) return found;
  const said = reason === undefined ? {} : { reason };
  return nextFact(found.value.facts, { version: 1, kind: 'cancelled', on: today, ...said });
}
