import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Schedule } from '../../engine/plan/clock/event-work.ts';
import { scheduleOf } from '../../engine/plan/clock/schedule.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { planEvent } from '../../engine/plan/plan-event.ts';
import { eventInputOf } from '../../offers/event/input-of.ts';
import { sortedEvents } from './sorted-events.ts';

interface Planned {
  readonly plans: ReadonlyMap<string, EventPlan>;
  readonly schedule: Schedule;
}

const made = new WeakMap<Book, Map<Day, Planned>>();

/**
 * All events still to come that can be planned, as on a day, and the one schedule over them. Kept beside the Book, since
 * every page asks for it; an event that cannot be planned takes no hands and no ovens from the others.
 */
export function plannedTogether(book: Book, today: Day): Planned {
  const days = made.get(book) ?? new Map<Day, Planned>();
  made.set(book, days);
  const known = days.get(today);
  if (known) return known;
  const plans = new Map(
    sortedEvents(book, today).coming.flatMap(({ offer }) => {
      const plan = eventPlan(book, offer.proposal);
      return plan ? [[offer.proposal, plan] as const] : [];
    }),
  );
  const planned = { plans, schedule: scheduleOf([...plans.values()], book.kitchen) };
  days.set(today, planned);
  return planned;
}

/** The schedule with an event planned another way, as before its last change, beside all the others. */
export function scheduleWith(plan: EventPlan, others: ReadonlyMap<string, EventPlan>, book: Book): Schedule {
  const beside = [...others.values()].filter(({ input }) => input.id !== plan.input.id);
  return scheduleOf([...beside, plan], book.kitchen);
}

function eventPlan(book: Book, id: string): EventPlan | undefined {
  const input = eventInputOf(book, id);
  return input.ok ? planEvent(input.value, book.kitchen, book.prices) : undefined;
}
