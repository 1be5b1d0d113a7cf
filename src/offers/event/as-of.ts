import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { EventFact } from '../../schema/event-fact.ts';

/** Kept beside the Book, so that what is planned of it is planned once. */
const made = new WeakMap<Book, Map<Day, Book>>();
/** By a Book as of a day, the one with all facts. */
const whole = new WeakMap<Book, Book>();

/**
 * The Book with only those facts of its events that were recorded by the end of a day. Of a Book that is as of a later day
 * already it is the same one as of the whole Book.
 */
export function bookAsOf(book: Book, day: Day): Book {
  const all = whole.get(book) ?? book;
  const known = made.get(all) ?? new Map<Day, Book>();
  made.set(all, known);
  const found = known.get(day) ?? withFactsBy(all, day);
  known.set(day, found);
  whole.set(found, all);
  return found;
}

function withFactsBy(book: Book, day: Day): Book {
  const events = [...book.events].flatMap(([id, event]) => {
    const facts = event.facts.filter(({ on }) => on <= day);
    return facts.length === 0 ? [] : [[id, { ...event, facts }] as const];
  });
  return { ...book, events: new Map(events) };
}

/** The day on which what is cooked for an event was last decided: accepted, counted, swapped, given another day. */
export function lastDecided(facts: readonly EventFact[]): Day | undefined {
  const days = facts.filter(({ kind }) => DECIDES.has(kind)).map(({ on }) => on as Day);
  return days.sort().at(-1);
}

const DECIDES: ReadonlySet<EventFact['kind']> = new Set([
  'accepted',
  'guarantee',
  'substitution',
  'postponed',
  'cancelled',
]);
