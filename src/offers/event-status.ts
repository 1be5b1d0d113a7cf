import type { Day } from '../engine/calendar/day.ts';
import type { Money } from '../engine/money/money.ts';
import { parseMoney } from '../engine/money/parse-money.ts';
import { type Payment, type Receipt, scheduleFor } from '../engine/money/schedule.ts';
import type { Choice } from '../engine/quote/choice.ts';
import { quote } from '../engine/quote/quote.ts';
import type { AcceptedFact, EventFact } from '../schema/event-fact.ts';
import type { Offer } from '../schema/offer.ts';

/** Where an accepted offer stands: the date is held once accepted, and kept once the deposit is in. */
export type EventState = 'accepted' | 'confirmed';

/** What an event's facts come to. */
export interface EventStatus {
  readonly state: EventState;
  readonly accepted: AcceptedFact;
  readonly choice: Choice;
  readonly total: Money;
  readonly received: readonly Receipt[];
  /** The schedule that is left, with what came in. */
  readonly payments: readonly Payment[];
}

/** Adds an event's facts up, in the order they were written. The first must be its acceptance. */
export function eventStatus(offer: Offer, facts: readonly EventFact[]): EventStatus {
  const [accepted] = facts;
  if (accepted?.kind !== 'accepted') throw new Error('an event begins with its acceptance');
  const { currency } = offer.terms;
  const total = sumOf(quote(offer.terms, accepted.acceptance.choice).total, currency);
  const deposit = offer.terms.payments.findIndex((each) => each.due === 'accepted');
  const received: Receipt[] = facts.flatMap((fact) => {
    if (fact.kind === 'accepted') return [];
    const settles = fact.kind === 'confirmed' && deposit !== -1 ? deposit : null;
    return [{ on: fact.received.on as Day, amount: sumOf(fact.received.amount, currency), settles }];
  });
  const dates = { acceptedOn: accepted.acceptance.accepted, eventDate: offer.date };
  return {
    state: facts.some((fact) => fact.kind === 'confirmed') ? 'confirmed' : 'accepted',
    accepted,
    choice: accepted.acceptance.choice,
    total,
    received,
    payments: scheduleFor(total, offer.terms.payments, dates, received),
  };
}

function sumOf(text: string, currency: string): Money {
  const sum = parseMoney(text, currency);
  if (!sum.ok) throw new Error(`a checked record holds a sum that is none: ${sum.what}`);
  return sum.value;
}
