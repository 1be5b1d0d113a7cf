import type { Day } from '../../engine/calendar/day.ts';
import type { EventFact } from '../../schema/event-fact.ts';

/** When an event takes place, as its facts have left it. */
export interface EventDate {
  /** The day it takes place; null once it is cancelled, and while it is postponed without a new day. */
  readonly date: Day | null;
  /** The last day it was set for, whether it still stands or not. */
  readonly lastDate: Day;
}

/** An event's day after all its facts, in the order they were written; `offered` is the day of its offer. */
export function eventDate(offered: Day, facts: readonly EventFact[]): EventDate {
  let date: Day | null = offered;
  let lastDate = offered;
  for (const fact of facts) {
    if (fact.kind === 'cancelled') return { date: null, lastDate };
    if (fact.kind !== 'postponed') continue;
    date = fact.to;
    lastDate = fact.to ?? lastDate;
  }
  return { date, lastDate };
}
