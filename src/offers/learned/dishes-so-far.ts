import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { ServiceStyle } from '../../engine/course/service-style.ts';
import type { LeftDish } from '../../schema/event-fact.ts';
import { currentEvent } from '../event/current-event.ts';
import { type LeftAmounts, leftAmounts } from './left-amounts.ts';
import { leftoversOf } from './leftovers.ts';

/** A dish at an event for which what came back is recorded. */
export interface DishAtEvent {
  readonly event: string;
  readonly occasion: string;
  readonly date: Day;
  readonly style: ServiceStyle;
  readonly packageId: string;
  readonly dish: LeftDish;
  readonly amounts: LeftAmounts;
}

/** Gone through once for each Book, since every coming event asks for its dishes. */
const KNOWN = new WeakMap<Book, readonly DishAtEvent[]>();

/** Every dish of every event with leftovers recorded, by date, then event, in the order recorded. */
export function dishesSoFar(book: Book): readonly DishAtEvent[] {
  const known = KNOWN.get(book);
  if (known) return known;
  const found = [...book.events.values()].flatMap(({ id, facts }) => {
    const left = leftoversOf(facts);
    const event = left ? currentEvent(book, id) : undefined;
    if (!left || !event?.ok || event.value.status.date === null) return [];
    const { offer, status } = event.value;
    return left.dishes.map((dish) => ({
      event: id,
      occasion: offer.occasion,
      date: status.lastDate,
      style: left.style,
      packageId: left.package,
      dish,
      amounts: leftAmounts(dish),
    }));
  });
  const sorted = found.sort((a, b) => order(a.date, b.date) || order(a.event, b.event));
  KNOWN.set(book, sorted);
  return sorted;
}

function order(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}
