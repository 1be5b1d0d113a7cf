import type { Book } from '../../book/book.ts';
import { addDays, type Day, daysBetween } from '../../engine/calendar/day.ts';
import {
  MOST_DAYS,
  type MovingSetting,
  type PlannedEvents,
  workAhead,
} from '../../engine/plan/clock/work-ahead.ts';
import type { EarlierWork, EventInput } from '../../engine/plan/event-input.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { planEvent } from '../../engine/plan/plan-event.ts';
import { thereBefore } from '../../engine/plan/purchases/there-before.ts';
import { bookAsOf, lastDecided } from '../../offers/event/as-of.ts';
import { eventInputOf } from '../../offers/event/input-of.ts';
import { sortedEvents } from './sorted-events.ts';

/** All events to come, planned together. */
export interface Planned extends PlannedEvents {
  /** As their recipes say, before anything is moved to another day. */
  readonly written: ReadonlyMap<string, EventPlan>;
}

const made = new WeakMap<Book, Map<Day, Planned>>();

/**
 * All events still to come that can be planned, as on a day, and the one schedule over them, with what keeps done the day
 * before where their own day is full. Kept beside the Book, since every page asks for it; an event that cannot be planned
 * takes no hands and no ovens from the others.
 */
export function plannedTogether(book: Book, today: Day): Planned {
  const days = made.get(book) ?? new Map<Day, Planned>();
  made.set(book, days);
  const known = days.get(today);
  if (known) return known;
  const written = new Map(
    sortedEvents(book, today).coming.flatMap(({ offer }) => {
      const input = eventInputOf(book, offer.proposal);
      return input.ok ? [[offer.proposal, planned(book, input.value)] as const] : [];
    }),
  );
  const dates = [...written.values()].map(({ input }) => input.date);
  const together = { written, ...workAhead(written, dates, movingSetting(book, written)) };
  days.set(today, together);
  return together;
}

/** The events with one of them planned another way, as before its last change, and what then is moved on its day. */
export function plannedBeside(book: Book, input: EventInput, others: Planned): PlannedEvents {
  const written = new Map(others.written).set(input.id, planned(book, input));
  const plans = new Map(
    [...written].map(([id, plan]) => [
      id,
      plan.input.date === input.date ? plan : (others.plans.get(id) ?? plan),
    ]),
  );
  return workAhead(plans, [input.date], movingSetting(book, written));
}

function planned({ kitchen, prices }: Book, input: EventInput): EventPlan {
  return planEvent(input, kitchen, prices);
}

/**
 * What is moved is decided by what was known while it could be done: once a day is past, what its crew was told to do stays
 * done, and what is decided after food had to be ordered moves only what it was ordered for. Nothing of it depends on the
 * day on which it is asked, so that a plan is the same today as it was yesterday.
 */
function movingSetting(book: Book, written: ReadonlyMap<string, EventPlan>): MovingSetting {
  const since = (date: Day) => knownSince(book, written, date);
  const before = (date: Day): readonly EarlierWork[] => {
    const day = addDays(since(date), -1);
    const { plans } = plannedTogether(bookAsOf(book, day), day);
    return [...plans.values()].find(({ input }) => input.date === date)?.input.earlier ?? [];
  };
  return {
    kitchen: book.kitchen,
    planned: (input) => planned(book, input),
    settled: (date) => (since(date) < date ? undefined : before(date)),
    open: (date) => {
      const days = daysBetween(since(date), date);
      const isOver = (work: EarlierWork) => (work.days ?? 1) > days;
      return { days, done: days < MOST_DAYS ? before(date).filter(isOver) : [] };
    },
    isThere: (recipe, { input }, days) =>
      thereBefore(recipe, input, since(input.date), book, days) ||
      before(input.date).some((work) => work.recipe === recipe.id && (work.days ?? 1) === days),
  };
}

/** The day since which all is known of the events with work on a date or on a day that its work may be moved to. */
function knownSince(book: Book, written: ReadonlyMap<string, EventPlan>, date: Day): Day {
  const first = addDays(date, -MOST_DAYS);
  const working = [...written].filter(
    ([, { input, days }]) => input.date === date || days.some((day) => first <= day.date && day.date <= date),
  );
  const decided = working.flatMap(([id]) => lastDecided(book.events.get(id)?.facts ?? []) ?? []);
  return decided.sort().at(-1) ?? date;
}
