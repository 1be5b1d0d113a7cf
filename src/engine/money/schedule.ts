import { addDays, type Day, laterDay } from '../calendar/day.ts';
import type { Instalment, InstalmentDue } from './instalments.ts';
import { type Money, money, noMoney, roundToMinor, subtract, times } from './money.ts';
import { rateOf } from './rate.ts';

/** One row of a payment schedule. */
export interface Payment {
  readonly instalment: Instalment;
  /** null where it is due on acceptance and nobody has accepted yet, or hangs on an event that has no day. */
  readonly due: Day | null;
  /** At the minor unit. */
  readonly amount: Money;
}

/** The dates a schedule hangs on; `acceptedOn` is null while an offer is open, `eventDate` while the event has no day. */
export interface ScheduleDates {
  readonly acceptedOn: Day | null;
  readonly eventDate: Day | null;
}

/** What a schedule is made under: the instalments asked for. */
export interface ScheduleTerms {
  readonly payments: readonly Instalment[];
}

const WHOLE_ON_THE_DAY: readonly Instalment[] = [{ of: 'balance', due: 0 }];

/**
 * What is paid when, before any money has come in. `total` is at its minor unit and the rows sum to it exactly; shares
 * of nothing are left out. A due date before acceptance becomes the day of acceptance.
 */
export function scheduleFor(total: Money, terms: ScheduleTerms, dates: ScheduleDates): Payment[] {
  const plan = instalmentsOf(terms);
  const asked = askedOf(total, plan);
  const rows = plan.map((instalment, index) => ({
    instalment,
    due: dueDay(instalment.due, dates),
    amount: asked[index] ?? noMoney(total.currency),
  }));
  const some = rows.filter((row) => !row.amount.amount.isZero());
  const balanceAt = balanceIndex(plan);
  return some.length > 0 ? some : rows.slice(balanceAt, balanceAt + 1);
}

/** The instalments asked for; where none are listed, all of it on the day. */
export function instalmentsOf({ payments }: ScheduleTerms): readonly Instalment[] {
  return payments.length > 0 ? payments : WHOLE_ON_THE_DAY;
}

/**
 * What each instalment asks for, in the order listed; the sums make `total` exactly. Shares are half-up at the minor
 * unit, the balance (without one, the last instalment) takes the difference, and none asks for more than is still
 * open. `closed` holds what instalments were settled with: they keep that sum, so that a changed total moves the
 * others, and they come first where the total has fallen below them.
 */
export function askedOf(
  total: Money,
  plan: readonly Instalment[],
  closed: ReadonlyMap<number, Money> = new Map(),
): Money[] {
  const balanceAt = balanceIndex(plan);
  const asked = new Map<number, Money>();
  let open = total;
  const ask = (index: number, share: Money) => {
    const amount = atMost(share, open);
    asked.set(index, amount);
    open = subtract(open, amount);
  };
  for (const [index, settled] of closed) ask(index, settled);
  for (const [index, instalment] of plan.entries())
    if (index !== balanceAt && !asked.has(index)) ask(index, shareOf(instalment, total));
  asked.set(balanceAt, open);
  return plan.map((_, index) => asked.get(index) ?? noMoney(total.currency));
}

/** The place of the instalment that takes the difference: the balance, without one the last. */
export function balanceIndex(plan: readonly Instalment[]): number {
  const found = plan.findIndex((each) => each.of === 'balance');
  return found === -1 ? plan.length - 1 : found;
}

function shareOf(instalment: Instalment, total: Money): Money {
  if (instalment.of === 'amount') return roundToMinor(money(instalment.amount, total.currency));
  return instalment.of === 'rate' ? roundToMinor(times(total, rateOf(instalment.rate))) : total;
}

function atMost(share: Money, open: Money): Money {
  if (open.amount.lte(0)) return noMoney(share.currency);
  return share.amount.gt(open.amount) ? open : share;
}

/** The day an instalment falls due, never before acceptance; null while what it hangs on is not known. */
export function dueDay(due: InstalmentDue, dates: ScheduleDates): Day | null {
  if (due === 'accepted') return dates.acceptedOn;
  if (dates.eventDate === null) return null;
  const day = addDays(dates.eventDate, -due);
  return dates.acceptedOn === null ? day : laterDay(day, dates.acceptedOn);
}
