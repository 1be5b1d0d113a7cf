import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { displayMoney } from '../../engine/money/display-money.ts';
import { type Money, moneyText } from '../../engine/money/money.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import { atTable } from '../../engine/quote/counts.ts';
import { counted } from '../../engine/text/counted.ts';
import type { ConfirmedFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import {
  type CurrentEvent,
  changeableEvent,
  currentEvent,
  type NextFact,
  nextFact,
} from './current-event.ts';
import { giveDay } from './day-given.ts';
import { depositDue } from './deposit-due.ts';
import { isRecorded } from './payment.ts';

/** What came in, as the owner states it; without an amount it is what is still missing of the deposit. */
export interface DepositReceived {
  readonly amount: Money | undefined;
  readonly on: Day;
  readonly method: string | undefined;
}

/**
 * The fact that confirms an accepted event: the deposit is in and the date is kept. It records only money that is not
 * recorded yet: what payments have brought of the deposit is taken as in, and a date that the event was moved to is
 * confirmed by the deposit of the first. Refused for an event that is not there, confirmed already, without a day or
 * over; without an amount where no deposit is asked for and nothing has come in; and with one where the deposit is in.
 */
export function confirmation(
  book: Book,
  event: string,
  deposit: DepositReceived,
  today: Day,
): Parsed<NextFact<ConfirmedFact>> {
  const found = changeableEvent(book, event, today);
  if (!found.ok) return found;
  const { offer, facts, status } = found.value;
  if (status.state === 'confirmed')
    return notParsed(
      `${event} is confirmed already`,
      'nothing more to do; record any other money with `payment`',
    );
  if (status.state === 'postponed')
    return notParsed(
      `${event} is postponed without a new date`,
      'first set the new date with `postpone` --to',
    );
  const due = depositDue(offer, status);
  const isIn = depositIsIn(found.value, due);
  if (isIn && deposit.amount === undefined)
    return nextFact(facts, { version: 1, kind: 'confirmed', on: today });
  if (deposit.on > today || deposit.on < status.accepted.acceptance.accepted)
    return notParsed(
      `money can’t have come in on ${deposit.on}`,
      giveDay(status.accepted.acceptance.accepted, today),
    );
  const amount = deposit.amount ?? due;
  if (amount === undefined)
    return notParsed(
      `${event} has no deposit due, so there is no default amount`,
      'give the amount with --received',
    );
  const { on, method } = deposit;
  if ((isIn && asksDeposit(offer)) || isRecorded(status, { amount, on, method }))
    return notParsed(
      `${displayMoney(status.account.received, offer.terms.locale)} is already recorded for ${event}, the deposit included`,
      `to confirm the date, run: confirm ${event}; for any other money: payment ${event} AMOUNT`,
    );
  const received = { amount: moneyText(amount), on, ...(method === undefined ? {} : { method }) };
  return nextFact(facts, { version: 1, kind: 'confirmed', on: today, received });
}

const asksDeposit = ({ terms }: Pick<Offer, 'terms'>) => terms.payments.some(({ due }) => due === 'accepted');

/** Whether nothing more need come in for the date to be kept: the deposit has, or some money where none is asked for. */
function depositIsIn({ offer, facts, status }: CurrentEvent, due: Money | undefined): boolean {
  if (facts.some((fact) => fact.kind === 'confirmed')) return true;
  return asksDeposit(offer) ? due === undefined : status.account.received.amount.gt(0);
}

/**
 * How a day stands against what the kitchen can do, as sentences: more guests or events than its stated capacity,
 * the event itself included, with the counts guaranteed last. Empty when it fits, the kitchen states none, or the
 * event has no day.
 */
export function capacityWarnings(book: Book, event: string): string[] {
  const own = currentEvent(book, event);
  const date = own.ok ? own.value.status.date : null;
  if (date === null) return [];
  const sameDay = [...book.events.keys()].flatMap((id) => {
    const other = currentEvent(book, id);
    return other.ok && other.value.status.date === date ? [other.value.status] : [];
  });
  const guests = sameDay.reduce((sum, { choice }) => sum + atTable(choice.guests), 0);
  const { capacity } = book.kitchen;
  const warnings: string[] = [];
  if (capacity.guests !== undefined && guests > capacity.guests)
    warnings.push(
      `${date} has ${counted(guests, 'guest')} over all its events, but the kitchen’s limit is ${capacity.guests} a day`,
    );
  if (capacity.events !== undefined && sameDay.length > capacity.events)
    warnings.push(
      `${date} has ${counted(sameDay.length, 'event')}, but the kitchen’s limit is ${capacity.events} a day`,
    );
  return warnings;
}
