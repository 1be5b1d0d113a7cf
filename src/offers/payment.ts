import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { type Money, moneyText } from '../engine/money/money.ts';
import { notParsed, type Parsed } from '../engine/parsed.ts';
import type { PaymentFact } from '../schema/event-fact.ts';
import { currentEvent, type NextFact, nextFact } from './current-event.ts';

/** Money that came in, as the owner says it. */
export interface PaymentSaid {
  readonly amount: Money;
  readonly on: Day;
  readonly method: string | undefined;
}

/**
 * The fact that records a payment, whatever the event's state: money may come in after it, and for one that was
 * cancelled. Refused for nothing at all, and for a day before the acceptance or after today.
 */
export function payment(
  book: Book,
  event: string,
  said: PaymentSaid,
  today: Day,
): Parsed<NextFact<PaymentFact>> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { facts, status } = found.value;
  const since = status.accepted.acceptance.accepted;
  if (said.on > today || said.on < since)
    return notParsed(`money cannot have come in on ${said.on}`, `give a day from ${since} to ${today}`);
  if (said.amount.amount.isZero()) return notParsed('a payment of nothing is none', 'say what came in');
  const { on, method } = said;
  const received = { amount: moneyText(said.amount), on, ...(method === undefined ? {} : { method }) };
  return nextFact(facts, { version: 1, kind: 'payment', on: today, received });
}
