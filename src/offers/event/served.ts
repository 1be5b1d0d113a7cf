import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import { MOST_GUESTS } from '../../engine/quote/choice.ts';
import { GUEST_GROUPS, type Guests } from '../../engine/quote/counts.ts';
import type { ServedFact } from '../../schema/event-fact.ts';
import { currentEvent, type NextFact, nextFact } from './current-event.ts';

/**
 * The fact that says who was really served; groups left out are as guaranteed. A later one corrects it. Refused
 * before the event's day, and for one that did not take place.
 */
export function served(
  book: Book,
  event: string,
  asked: Partial<Guests>,
  today: Day,
): Parsed<NextFact<ServedFact>> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { facts, status } = found.value;
  if (status.date === null)
    return notParsed(`${event} is ${status.state}, so no one was served`, 'check which event is meant');
  if (today < status.date)
    return notParsed(
      `${event} is on ${status.date}, so no one has been served yet`,
      'to set the expected count use `guarantee`',
    );
  const guests = { ...status.choice.guests, ...asked };
  const odd = GUEST_GROUPS.find((group) => guests[group] > MOST_GUESTS);
  if (odd) return notParsed(`${guests[odd]} ${odd} is more than any event serves`, 'check the count');
  return nextFact(facts, { version: 1, kind: 'served', on: today, guests });
}
