import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import { type EventFact, eventFactSchema } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { acceptedOffer } from './accepted-offer.ts';
import { type EventStatus, eventStatus } from './status.ts';

/** An event as it stands. */
export interface CurrentEvent {
  readonly offer: Offer;
  readonly facts: readonly EventFact[];
  readonly status: EventStatus;
}

/** An event with its offer and what its facts come to. Fails as `acceptedOffer` does. */
export function currentEvent(book: Book, event: string): Parsed<CurrentEvent> {
  const found = acceptedOffer(book, event);
  if (!found.ok) return found;
  return parsed({ ...found.value, status: eventStatus(found.value.offer, found.value.facts) });
}

/** An event that can still be changed: not cancelled, and its day not past. */
export function changeableEvent(book: Book, event: string, today: Day): Parsed<CurrentEvent> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { state, date } = found.value.status;
  if (state === 'cancelled')
    return notParsed(`${event} is canceled`, 'for a new date or menu, write a new proposal');
  if (date !== null && date < today)
    return notParsed(
      `${event} took place on ${date}`,
      'you can still record who was `served`, what is `broken`, and a `payment`',
    );
  return found;
}

/** The next fact of an event: it goes with the facts known, under the number after theirs. */
export interface NextFact<F extends EventFact = EventFact> {
  readonly number: number;
  readonly fact: F;
}

/** A fact as it will be read back, with its number. Fails on what its file could not hold, saying which entry. */
export function nextFact<F extends EventFact>(facts: readonly EventFact[], fact: F): Parsed<NextFact<F>> {
  const issue = eventFactSchema.safeParse(fact).error?.issues[0];
  return issue
    ? notParsed(`${issue.path.join('.')} can’t be recorded: ${issue.message}`, 'word it differently')
    : parsed({ number: facts.length + 1, fact });
}

/** The Book as it will be once a fact is recorded for an event. */
export function withFact(book: Book, event: string, fact: EventFact): Book {
  const facts = [...(book.events.get(event)?.facts ?? []), fact];
  return withFacts(book, event, facts);
}

/** The Book as it would be if an event had just these facts. */
export function withFacts(book: Book, event: string, facts: readonly EventFact[]): Book {
  return { ...book, events: new Map(book.events).set(event, { id: event, facts }) };
}
