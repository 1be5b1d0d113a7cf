import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { moneyText } from '../engine/money/money.ts';
import { notParsed, type Parsed } from '../engine/parsed.ts';
import type { ConfirmedFact } from '../schema/event-fact.ts';
import { atTable } from './billed-guests.ts';
import { changeableEvent, currentEvent, type NextFact, nextFact } from './current-event.ts';
import { depositDue } from './deposit-due.ts';

/** What came in, as the owner says it; without an amount it is what was due on acceptance. */
export interface DepositReceived {
  readonly amount: string | undefined;
  readonly on: Day;
  readonly method: string | undefined;
}

/**
 * The fact that confirms an accepted event: the deposit is in and the date is kept. Where the event was moved to a
 * day that is held and the deposit is in already, it confirms that day without further money. Refused for an event
 * that is not there, confirmed already, without a day or over, and without an amount where nothing was due on
 * acceptance.
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
      'nothing is left to do; record further money as a payment',
    );
  if (status.state === 'postponed')
    return notParsed(`${event} is postponed without a day`, 'say its new day first, by `postpone` with --to');
  const again = facts.some((fact) => fact.kind === 'confirmed');
  if (again && deposit.amount === undefined)
    return nextFact(facts, { version: 1, kind: 'confirmed', on: today });
  if (deposit.on > today || deposit.on < status.accepted.acceptance.accepted)
    return notParsed(
      `money cannot have come in on ${deposit.on}`,
      `give a day from ${status.accepted.acceptance.accepted} to ${today}`,
    );
  const due = depositDue(offer, status);
  const amount = deposit.amount ?? (due && moneyText(due));
  if (amount === undefined)
    return notParsed(
      `${event} asks for no deposit, so none can be assumed`,
      'say what came in with --received',
    );
  const { on, method } = deposit;
  const received = { amount, on, ...(method === undefined ? {} : { method }) };
  return nextFact(facts, { version: 1, kind: 'confirmed', on: today, received });
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
      `${date} has ${guests} guests over all its events, and the kitchen serves ${capacity.guests} a day`,
    );
  if (capacity.events !== undefined && sameDay.length > capacity.events)
    warnings.push(`${date} has ${sameDay.length} events, and the kitchen serves ${capacity.events} a day`);
  return warnings;
}
