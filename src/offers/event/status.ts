import { addDays, type Day } from '../../engine/calendar/day.ts';
import {
  type Account,
  accountOf,
  type OpenPayment,
  openPayments,
  type Receipt,
  type TotalSince,
} from '../../engine/money/account.ts';
import type { Money } from '../../engine/money/money.ts';
import { parseMoney } from '../../engine/money/parse-money.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { Guests } from '../../engine/quote/counts.ts';
import { quote } from '../../engine/quote/quote.ts';
import { mainsFor } from '../../engine/quote/scaled-choice.ts';
import { type Charge, withCharges } from '../../engine/quote/with-charges.ts';
import type { AcceptedFact, EventFact, GuaranteeFact, SubstitutionFact } from '../../schema/event-fact.ts';
import type { Offer } from '../../schema/offer.ts';
import { wordsIn } from '../../words/words-in.ts';
import { billedGuests, floorCount } from './billed-guests.ts';
import { chargesFor } from './charges.ts';
import { eventDate } from './event-date.ts';

/**
 * Where an accepted offer stands: the date is held once accepted, and kept once the deposit is in. Postponed is an
 * event without a day; one moved to a new day is accepted or confirmed for that day.
 */
export type EventState = 'accepted' | 'confirmed' | 'postponed' | 'cancelled';

/** Money that came in, or was refunded where negative, and how where that is stated. */
export interface ReceivedMoney extends Receipt {
  readonly method: string | undefined;
}

/** What an event's facts come to. */
export interface EventStatus {
  readonly state: EventState;
  readonly accepted: AcceptedFact;
  /** The day it takes place; null once cancelled, and while postponed without a new day. */
  readonly date: Day | null;
  /** The last day it was set for. */
  readonly lastDate: Day;
  /** What is planned for: the accepted choice with the counts guaranteed last. */
  readonly choice: Choice;
  /** The last guarantee; undefined while the accepted count stands. */
  readonly guarantee: GuaranteeFact | undefined;
  /** The last day on which the guarantee may fall; null while there is no day of the event. */
  readonly deadline: Day | null;
  /** The fewest guests at the table that are billed. */
  readonly floor: number;
  /** Who was really served; null until it is recorded. */
  readonly served: Guests | null;
  /** What is billed: the choice for the larger of guarantee and served, never under the floor. */
  readonly billed: Choice;
  /** What is billed besides: what was broken or is missing, where it is charged. */
  readonly charges: readonly Charge[];
  readonly total: Money;
  readonly received: readonly ReceivedMoney[];
  /** The client's account: each instalment with what is paid of it, and the balance. */
  readonly account: Account;
  /** What of it is still open; nothing for a cancelled event, whose terms of cancellation say what is owed. */
  readonly open: readonly OpenPayment[];
  /** In the order decided. */
  readonly substitutions: readonly SubstitutionFact[];
}

/** Adds an event's facts up, in the order they were written. The first must be its acceptance. */
export function eventStatus(offer: Offer, facts: readonly EventFact[]): EventStatus {
  const [accepted] = facts;
  if (accepted?.kind !== 'accepted') throw new Error('an event starts with its acceptance');
  const { guarantee: rules } = offer.terms;
  const { choice: acceptedChoice, accepted: acceptedOn } = accepted.acceptance;
  const guarantee = lastOf(facts, 'guarantee');
  const choice = guarantee ? guaranteed(acceptedChoice, guarantee) : acceptedChoice;
  const { billed, charges, total } = billedBy(offer, acceptedChoice, facts);
  const received = receivedIn(offer, facts);
  const { date, lastDate } = eventDate(offer.date, facts);
  const state = stateOf(facts);
  const totals = totalsOf(offer, accepted, facts, total);
  const account = accountOf(totals, offer.terms, { acceptedOn, eventDate: date }, received);
  return {
    state,
    accepted,
    date,
    lastDate,
    choice,
    guarantee,
    deadline: date && addDays(date, -rules.daysBefore),
    floor: floorCount(rules.floorRate, acceptedChoice.guests),
    served: lastOf(facts, 'served')?.guests ?? null,
    billed,
    charges,
    total,
    received,
    account,
    open: state === 'cancelled' ? [] : openPayments(account),
    substitutions: facts.filter((fact) => fact.kind === 'substitution'),
  };
}

/** What is billed by the counts and charges in some facts, and what it comes to. */
function billedBy(
  offer: Offer,
  acceptedChoice: Choice,
  facts: readonly EventFact[],
): Pick<EventStatus, 'billed' | 'charges' | 'total'> {
  const guarantee = lastOf(facts, 'guarantee');
  const served = lastOf(facts, 'served')?.guests ?? null;
  const choice = guarantee ? guaranteed(acceptedChoice, guarantee) : acceptedChoice;
  const floor = floorCount(offer.terms.guarantee.floorRate, acceptedChoice.guests);
  const billed = choiceFor(offer, choice, billedGuests(choice.guests, served, acceptedChoice.guests, floor));
  const { terms } = offer;
  const say = wordsIn(terms.locale);
  const charges = chargesFor(facts, terms.currency, ({ what, name }) =>
    say('bill.loss', { what, item: name }),
  );
  const { total } = withCharges(quote(terms, billed), terms, charges);
  return { billed, charges, total: sumOf(total, terms.currency) };
}

/** The totals that were in force, from the acceptance on, each since the day the count behind it was recorded. */
function totalsOf(
  offer: Offer,
  { acceptance }: AcceptedFact,
  facts: readonly EventFact[],
  total: Money,
): [TotalSince, ...TotalSince[]] {
  const changes = facts.flatMap(({ kind, on }, index) =>
    kind === 'guarantee' || kind === 'served' || kind === 'broken' ? [{ on, until: index + 1 }] : [],
  );
  const before = changes.length === 0 ? total : billedBy(offer, acceptance.choice, facts.slice(0, 1)).total;
  const first: TotalSince = { from: acceptance.accepted, total: before };
  const later = changes.map(({ on, until }, index): TotalSince => {
    const last = index === changes.length - 1;
    return {
      from: on,
      total: last ? total : billedBy(offer, acceptance.choice, facts.slice(0, until)).total,
    };
  });
  return [first, ...later];
}

/** The choice with other guests: mains that each guest takes one of keep their proportions where guests at them change. */
export function choiceFor(offer: Pick<Offer, 'terms'>, choice: Choice, guests: Guests): Choice {
  const chosen = offer.terms.packages.find((each) => each.id === choice.package);
  return chosen
    ? { ...choice, guests, mains: mainsFor(chosen, choice.mains, guests) }
    : { ...choice, guests };
}

function guaranteed(choice: Choice, { guests, needs, mains }: GuaranteeFact): Choice {
  return { ...choice, guests, needs, mains };
}

function stateOf(facts: readonly EventFact[]): EventState {
  let confirmed = false;
  let dated = true;
  for (const fact of facts) {
    if (fact.kind === 'cancelled') return 'cancelled';
    if (fact.kind === 'confirmed') confirmed = true;
    if (fact.kind !== 'postponed') continue;
    dated = fact.to !== null;
    if (fact.hold) confirmed = false;
  }
  if (!dated) return 'postponed';
  return confirmed ? 'confirmed' : 'accepted';
}

/** All money received. A deposit that confirms the event settles the instalment due on acceptance, however little it is. */
function receivedIn({ terms }: Offer, facts: readonly EventFact[]): ReceivedMoney[] {
  const deposit = terms.payments.findIndex((each) => each.due === 'accepted');
  return facts.flatMap((fact) => {
    const money = fact.kind === 'confirmed' || fact.kind === 'payment' ? fact.received : undefined;
    if (!money) return [];
    const settles = fact.kind === 'confirmed' && deposit !== -1 ? deposit : null;
    const amount = sumOf(money.amount, terms.currency);
    return [{ on: money.on, amount, settles, method: money.method }];
  });
}

function lastOf<K extends EventFact['kind']>(
  facts: readonly EventFact[],
  kind: K,
): Extract<EventFact, { kind: K }> | undefined {
  return facts.findLast((fact): fact is Extract<EventFact, { kind: K }> => fact.kind === kind);
}

function sumOf(text: string, currency: string): Money {
  const sum = parseMoney(text, currency, { negative: true });
  if (!sum.ok) throw new Error(`a checked record holds a sum that is none: ${sum.what}`);
  return sum.value;
}
