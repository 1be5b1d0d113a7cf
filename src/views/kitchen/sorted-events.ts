import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { type CurrentEvent, currentEvent } from '../../offers/event/current-event.ts';

/** All events by where they stand on a day, each list by date, then id. */
export interface SortedEvents {
  /** Today or later. */
  readonly coming: readonly CurrentEvent[];
  /** Over. */
  readonly past: readonly CurrentEvent[];
  /** Postponed without a new day, or cancelled and the day it was set for not past. */
  readonly apart: readonly CurrentEvent[];
}

/** Every event that can be read. A cancelled one is shown until the day it was set for has passed. */
export function sortedEvents(book: Book, today: Day): SortedEvents {
  const all = [...book.events.keys()]
    .flatMap((id) => {
      const found = currentEvent(book, id);
      return found.ok ? [found.value] : [];
    })
    .sort(byDate);
  const dated = all.filter(({ status }) => status.date !== null);
  return {
    coming: dated.filter(({ status }) => status.lastDate >= today),
    past: dated.filter(({ status }) => status.lastDate < today),
    apart: all.filter(
      ({ status }) =>
        status.state === 'postponed' || (status.state === 'cancelled' && status.lastDate >= today),
    ),
  };
}

function byDate(a: CurrentEvent, b: CurrentEvent): number {
  const [one, other] = [a, b].map(({ offer, status }) => `${status.lastDate} ${offer.proposal}`) as [
    string,
    string,
  ];
  return one < other ? -1 : one > other ? 1 : 0;
}
