import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { moneyText } from '../engine/money/money.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { type ConfirmedFact, eventFactSchema } from '../schema/event-fact.ts';
import { acceptedOffer } from './accepted-offer.ts';
import { depositDue } from './deposit-due.ts';
import { eventStatus } from './event-status.ts';

/** What came in, as the owner says it; without an amount it is what was due on acceptance. */
export interface DepositReceived {
  readonly amount: string | undefined;
  readonly on: Day;
  readonly method: string | undefined;
}

/**
 * The fact that confirms an accepted event: the deposit is in and the date is kept. Refused for an event that is
 * not there or confirmed already, and without an amount where nothing was due on acceptance.
 */
export function confirmation(
  book: Book,
  event: string,
  deposit: DepositReceived,
  today: Day,
): Parsed<ConfirmedFact> {
  const found = acceptedOffer(book, event);
  if (!found.ok) return found;
  const status = eventStatus(found.value.offer, found.value.facts);
  if (status.state === 'confirmed')
    return notParsed(
      `${event} is confirmed already`,
      'nothing is left to do; record further money as a payment',
    );
  if (deposit.on > today || deposit.on < status.accepted.acceptance.accepted)
    return notParsed(
      `money cannot have come in on ${deposit.on}`,
      `give a day from ${status.accepted.acceptance.accepted} to ${today}`,
    );
  const due = depositDue(found.value.offer, status);
  const amount = deposit.amount ?? (due && moneyText(due));
  if (amount === undefined)
    return notParsed(
      `${event} asks for no deposit, so none can be assumed`,
      'say what came in with --received',
    );
  const { on, method } = deposit;
  const fact: ConfirmedFact = {
    version: 1,
    kind: 'confirmed',
    on: today,
    received: { amount, on, ...(method === undefined ? {} : { method }) },
  };
  const issue = eventFactSchema.safeParse(fact).error?.issues[0];
  return issue
    ? notParsed(`${issue.path.join('.')} cannot be recorded: ${issue.message}`, 'say it otherwise')
    : parsed(fact);
}

/**
 * How a day stands against what the kitchen can do, as sentences: more guests or events than its stated capacity,
 * the event itself included. Empty when it fits or the kitchen states none.
 */
export function capacityWarnings(book: Book, event: string): string[] {
  const own = acceptedOffer(book, event);
  if (!own.ok) return [];
  const { date } = own.value.offer;
  const sameDay = [...book.events.keys()].flatMap((id) => {
    const other = acceptedOffer(book, id);
    return other.ok && other.value.offer.date === date ? [other.value] : [];
  });
  const guests = sameDay.reduce((sum, { offer, facts }) => {
    const { adults, children } = eventStatus(offer, facts).choice.guests;
    return sum + adults + children;
  }, 0);
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
