import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { add, compare, type Money, moneyText, negate } from '../../engine/money/money.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import type { PaymentFact } from '../../schema/event-fact.ts';
import { currentEvent, type NextFact, nextFact } from './current-event.ts';
import { giveDay } from './day-given.ts';
import type { EventStatus } from './status.ts';

/** Money that came in as the owner states it; a negative sum is a refund. */
export interface PaymentSaid {
  readonly amount: Money;
  readonly on: Day;
  readonly method: string | undefined;
}

/**
 * The fact that records a payment or a refund, whatever the event's state: money may come in after it, and for one
 * that was cancelled. Refused for nothing at all, for a day before the acceptance or after today, for a refund of more
 * than came in, and for what is recorded already, unless `second` says that the same sum came in twice.
 */
export function payment(
  book: Book,
  event: string,
  said: PaymentSaid,
  today: Day,
  second = false,
): Parsed<NextFact<PaymentFact>> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { facts, offer, status } = found.value;
  const since = status.accepted.acceptance.accepted;
  const { amount, on, method } = said;
  if (on > today || on < since) return notParsed(`money can’t have come in on ${on}`, giveDay(since, today));
  if (amount.amount.isZero()) return notParsed('the amount is zero', 'give the amount that came in');
  const { locale } = offer.terms;
  const { received } = status.account;
  if (add(received, amount).amount.isNegative())
    return notParsed(
      `${displayMoney(negate(amount), locale)} can’t be refunded: only ${displayMoney(received, locale)} has come in for ${event}`,
      'refund that much or less',
    );
  if (!second && isRecorded(status, said))
    return notParsed(
      `${displayMoney(amount, locale)} on ${on} is already recorded for ${event}`,
      'if this is a second payment of the same amount, add --again',
    );
  const written = { amount: moneyText(amount), on, ...(method === undefined ? {} : { method }) };
  return nextFact(facts, { version: 1, kind: 'payment', on: today, received: written });
}

/**
 * Whether the same sum of the same day is recorded already, by a payment or the deposit. One whose way is not stated
 * may be any other of that sum.
 */
export function isRecorded({ received }: Pick<EventStatus, 'received'>, said: PaymentSaid): boolean {
  return received.some(
    ({ amount, on, method }) =>
      on === said.on &&
      compare(amount, said.amount) === 0 &&
      (method === said.method || method === undefined || said.method === undefined),
  );
}
