import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { compare, type Money, moneyText } from '../../engine/money/money.ts';
import { parseMoney } from '../../engine/money/parse-money.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import type { EventFact, TipFact } from '../../schema/event-fact.ts';
import { currentEvent, type NextFact, nextFact } from './current-event.ts';
import { giveDay } from './day-given.ts';
import type { PaymentSaid } from './payment.ts';

/** A tip that a client gave the crew. */
export interface Tip {
  readonly on: Day;
  readonly amount: Money;
  readonly method: string | undefined;
}

/** All tips of an event, in the order recorded. They are the crew's: no sum that is billed, taxed or paid holds them. */
export function tipsOf(facts: readonly EventFact[], currency: string): Tip[] {
  return facts.flatMap((fact) => {
    if (fact.kind !== 'tip') return [];
    const sum = parseMoney(fact.received.amount, currency, { negative: true });
    if (!sum.ok) throw new Error(`a checked record holds a sum that is none: ${sum.what}`);
    return [{ on: fact.received.on, amount: sum.value, method: fact.received.method }];
  });
}

/**
 * The fact that records a tip; a negative one takes back what was recorded by mistake or passed back. Refused for nothing, for a
 * day before the acceptance or after today, for taking back more than was given, and for the same sum of the same day unless
 * `second` says that it came twice.
 */
export function tip(
  book: Book,
  event: string,
  { amount, on, method }: PaymentSaid,
  today: Day,
  second = false,
): Parsed<NextFact<TipFact>> {
  const found = currentEvent(book, event);
  if (!found.ok) return found;
  const { facts, offer, status } = found.value;
  const { locale, currency } = offer.terms;
  const since = status.accepted.acceptance.accepted;
  if (on > today || on < since) return notParsed(`no tip can have come in on ${on}`, giveDay(since, today));
  if (amount.amount.isZero()) return notParsed('the amount is zero', 'give the amount that came in');
  const before = tipsOf(facts, currency);
  const left = before.reduce((sum, each) => sum.plus(each.amount.amount), amount.amount);
  if (left.isNegative())
    return notParsed(
      `${displayMoney({ ...amount, amount: amount.amount.negated() }, locale)} can’t be taken back: that is more than was given in tips`,
      'give that much or less',
    );
  if (!second && before.some((each) => each.on === on && compare(each.amount, amount) === 0))
    return notParsed(
      `a tip of ${displayMoney(amount, locale)} on ${on} is already recorded for ${event}`,
      'if this is a second tip of the same amount, add --again',
    );
  const received = { amount: moneyText(amount), on, ...(method === undefined ? {} : { method }) };
  return nextFact(facts, { version: 1, kind: 'tip', on: today, received });
}
