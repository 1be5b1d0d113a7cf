import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { planEvent } from '../../engine/plan/plan-event.ts';
import { purchaseNeeds } from '../../engine/plan/purchases/needs.ts';
import type { StockLot } from '../../engine/purchase/stock.ts';
import { eventInputOf } from '../../offers/event/input-of.ts';

type Stock = ReadonlyMap<string, readonly StockLot[]>;

/** By Book and day: an event's stock is what all events before it leave, so that they are gone through once. */
const KNOWN = new WeakMap<Book, Map<Day, ReadonlyMap<string, Stock>>>();

/**
 * The stock that an event may draw on: what the coming events before it (by date, then id) leave of it, whichever
 * event is asked for first. An event that is over finds the stock as it is. `plans` are the events planned together, on the
 * days their work is done.
 */
export function stockFor(
  book: Book,
  event: string,
  today: Day,
  plans: ReadonlyMap<string, EventPlan>,
): Stock {
  if (book.stock.size === 0) return book.stock;
  const byDay = KNOWN.get(book) ?? new Map<Day, ReadonlyMap<string, Stock>>();
  KNOWN.set(book, byDay);
  const known = byDay.get(today) ?? handedOn(book, today, plans);
  byDay.set(today, known);
  return known.get(event) ?? book.stock;
}

function handedOn(book: Book, today: Day, plans: ReadonlyMap<string, EventPlan>): ReadonlyMap<string, Stock> {
  const found = new Map<string, Stock>();
  let left: Stock = book.stock;
  const inputs = [...book.events.keys()].flatMap((id) => {
    const input = eventInputOf(book, id);
    return input.ok && input.value.date >= today ? [input.value] : [];
  });
  inputs.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.id < b.id ? -1 : 1));
  for (const input of inputs) {
    found.set(input.id, left);
    const plan = plans.get(input.id) ?? planEvent(input, book.kitchen, book.prices);
    left = purchaseNeeds(plan, book.prices, left).rest;
  }
  return found;
}
