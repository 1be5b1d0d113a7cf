import { addDays, type Day, laterDay } from '../calendar/day.ts';
import { ZERO } from './decimal.ts';
import { type Instalment, type InstalmentDue, instalmentLabel } from './instalments.ts';
import { type Money, money, roundToMinor, subtract, sum, times } from './money.ts';
import { rateOf } from './rate.ts';

/** Money that has come in. */
export interface Receipt {
  readonly on: Day;
  readonly amount: Money;
  /** The place in the list of the instalment it settles for good; null where it only lowers what is open. */
  readonly settles: number | null;
}

/** One row of a payment schedule. */
export interface Payment {
  /** As the client reads it: `$1,500.00 when accepted`. */
  readonly label: string;
  /** null where it is due on acceptance and nobody has accepted yet, or hangs on an event that has no day. */
  readonly due: Day | null;
  /** At the minor unit; negative where money is to be paid back. */
  readonly amount: Money;
  readonly received: boolean;
}

/** The dates a schedule hangs on; `acceptedOn` is null while an offer is open, `eventDate` while the event has no day. */
export interface ScheduleDates {
  readonly acceptedOn: Day | null;
  readonly eventDate: Day | null;
}

/** What a schedule is made under: the instalments asked for, and the locale its labels write sums in. */
export interface ScheduleTerms {
  readonly payments: readonly Instalment[];
  readonly locale: string;
}

const WHOLE_ON_THE_DAY: readonly Instalment[] = [{ of: 'balance', due: 0 }];

/**
 * What is paid when. `total` is at its minor unit and the rows sum to it exactly: shares are half-up, the balance
 * (without one, the last instalment) takes the difference, and no instalment asks for more than is still open.
 * A due date before acceptance becomes the day of acceptance. What was received is kept as it was, so a changed
 * total moves the balance alone; where too much was received the balance is negative.
 */
export function scheduleFor(
  total: Money,
  terms: ScheduleTerms,
  dates: ScheduleDates,
  received: readonly Receipt[] = [],
): Payment[] {
  const plan = terms.payments.length > 0 ? terms.payments : WHOLE_ON_THE_DAY;
  const balanceAt = balanceIndex(plan);
  let open = subtract(
    total,
    sum(
      received.map((each) => each.amount),
      total.currency,
    ),
  );
  const asked = plan.map((instalment, index) => {
    if (index === balanceAt || received.some((each) => each.settles === index))
      return money(ZERO, total.currency);
    const amount = atMost(shareOf(instalment, total), open);
    open = subtract(open, amount);
    return amount;
  });
  asked[balanceAt] = open;
  const due = plan.map((instalment, index) => ({
    label: instalmentLabel(instalment, total.currency, terms.locale),
    due: dueDay(instalment.due, dates),
    amount: asked[index] ?? open,
    received: false,
  }));
  const rows = [
    ...received.map(({ on, amount }) => ({ label: 'received', due: on, amount, received: true })),
    ...due.filter((row) => !row.amount.amount.isZero()),
  ];
  return rows.length > 0 ? rows : due.slice(balanceAt, balanceAt + 1);
}

function balanceIndex(plan: readonly Instalment[]): number {
  const found = plan.findIndex((each) => each.of === 'balance');
  return found === -1 ? plan.length - 1 : found;
}

function shareOf(instalment: Instalment, total: Money): Money {
  if (instalment.of === 'amount') return roundToMinor(money(instalment.amount, total.currency));
  return instalment.of === 'rate' ? roundToMinor(times(total, rateOf(instalment.rate))) : total;
}

function atMost(share: Money, open: Money): Money {
  if (open.amount.lte(0)) return money(ZERO, share.currency);
  return share.amount.gt(open.amount) ? open : share;
}

function dueDay(due: InstalmentDue, dates: ScheduleDates): Day | null {
  if (due === 'accepted') return dates.acceptedOn;
  if (dates.eventDate === null) return null;
  const day = addDays(dates.eventDate, -due);
  return dates.acceptedOn === null ? day : laterDay(day, dates.acceptedOn);
}
