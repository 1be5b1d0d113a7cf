import { type Day, laterDay } from '../calendar/day.ts';
import type { Instalment } from './instalments.ts';
import { add, compare, type Money, negate, noMoney, subtract, sum } from './money.ts';
import {
  askedOf,
  balanceIndex,
  dueDay,
  instalmentsOf,
  type ScheduleDates,
  type ScheduleTerms,
} from './schedule.ts';

/** Money that came in; negative: a refund. */
export interface Receipt {
  readonly on: Day;
  readonly amount: Money;
  /** The place in the list of the instalment that counts as paid with it, however little came; null for none. */
  readonly settles: number | null;
}

/** A total and the first day it was in force. */
export interface TotalSince {
  readonly from: Day;
  readonly total: Money;
}

/** So much of one receipt went into an instalment. */
export interface ReceiptShare {
  /** The receipt's place in the list given. */
  readonly receipt: number;
  readonly amount: Money;
}

/** One instalment as it stands: `asked` is `paid` and `open` together, none of them negative. */
export interface InstalmentState {
  /** As content writes it, with the currency of a sum: `30 % when accepted`. */
  readonly instalment: Instalment;
  /** null while what it hangs on is not known. */
  readonly due: Day | null;
  readonly asked: Money;
  readonly paid: Money;
  readonly open: Money;
  /** The receipts it was paid with, first to last; refunds are taken off already. */
  readonly by: readonly ReceiptShare[];
}

/** The state of one client's account for an event. All sums are exact and at the minor unit. */
export interface Account {
  /** In the order of the terms. */
  readonly instalments: readonly InstalmentState[];
  /** All that came in, less what was refunded. */
  readonly received: Money;
  /** Received beyond the total: to be paid back. Never negative. */
  readonly credit: Money;
  /** The total less what was received; negative where money is to be paid back. */
  readonly balance: Money;
}

/** What is still to be paid; negative where it is to be paid back, which has no day. */
export interface OpenPayment {
  /** What it is part of; null for what is to be paid back. */
  readonly instalment: Instalment | null;
  readonly due: Day | null;
  readonly amount: Money;
}

/**
 * Matches what came in to the instalments, in the order they fall due: each is filled before the next, and what is
 * left goes on. A refund is taken off the last money that came in. An instalment that was paid in full under the
 * total of that day stays paid when the total changes later; the balance takes the difference. Where the balance was
 * covered and the total rose afterwards, the rest falls due no sooner than that day.
 *
 * `totals` are in the order they came into force, the last is today's; at least one. The order in which receipts of
 * one day are listed changes no sum of an instalment.
 */
export function accountOf(
  totals: readonly [TotalSince, ...TotalSince[]],
  terms: ScheduleTerms,
  dates: ScheduleDates,
  receipts: readonly Receipt[] = [],
): Account {
  const plan = instalmentsOf(terms);
  const order = fillingOrder(plan);
  const balanceAt = balanceIndex(plan);
  const { total } = totals.at(-1) ?? totals[0];
  const { currency } = total;
  let closed = new Map<number, Money>();
  let came: readonly ReceiptShare[] = [];
  for (const [place, { on, amount, settles }] of inOrder(receipts)) {
    came = withReceipt(came, place, amount);
    closed = closedBy(closed, plan, order, sumOf(came, currency), totalsOn(totals, on), settles);
  }
  const asked = askedOf(total, plan, closed);
  const shares = sharesOf(asked, [...closed.keys(), ...order.filter((place) => !closed.has(place))], came);
  const received = sum(
    receipts.map(({ amount }) => amount),
    currency,
  );
  const risen = risenOn(totals, received);
  const instalments = plan.map((instalment, place): InstalmentState => {
    const due = dueDay(instalment.due, dates);
    const by = shares[place] ?? [];
    const [wanted, paid] = [asked[place] ?? noMoney(currency), sumOf(by, currency)];
    return {
      instalment,
      due: due && risen && place === balanceAt ? laterDay(due, risen) : due,
      asked: wanted,
      paid,
      open: subtract(wanted, paid),
      by,
    };
  });
  const balance = subtract(total, received);
  const credit = balance.amount.isNegative() ? negate(balance) : noMoney(currency);
  return { instalments, received, credit, balance };
}

/** What is still open of an account, in the order of the terms; the sums make its balance. */
export function openPayments({ instalments, credit }: Account): OpenPayment[] {
  const open = instalments
    .filter((each) => !each.open.amount.isZero())
    .map(({ instalment, due, open: amount }) => ({ instalment, due, amount }));
  return credit.amount.isZero() ? open : [...open, { instalment: null, due: null, amount: negate(credit) }];
}

/** Of what is open, what should have been paid before a day. */
export function overdueOn(open: readonly OpenPayment[], today: Day): OpenPayment[] {
  return open.filter(({ due }) => due !== null && due < today);
}

/** The instalments' places by the day they fall due, whatever day the event is moved to; the balance of a tie last. */
function fillingOrder(plan: readonly Instalment[]): number[] {
  const before = ({ due }: Instalment) => (due === 'accepted' ? Number.POSITIVE_INFINITY : due);
  const rank = (place: number) => {
    const each = plan[place];
    return each ? [before(each), place === balanceIndex(plan) ? 1 : 0] : [0, 0];
  };
  return [...plan.keys()].toSorted((a, b) => {
    const [[dueA = 0, lastA = 0], [dueB = 0, lastB = 0]] = [rank(a), rank(b)];
    return dueA === dueB ? lastA - lastB || a - b : dueA > dueB ? -1 : 1;
  });
}

/** By day; on one day the larger sums first and refunds last, so that the order of the records means nothing. */
function inOrder(receipts: readonly Receipt[]): (readonly [number, Receipt])[] {
  return [...receipts.entries()].toSorted(([, a], [, b]) =>
    a.on === b.on ? compare(b.amount, a.amount) : a.on < b.on ? -1 : 1,
  );
}

/** What is held once a receipt is in; a refund is taken off the last ones. */
function withReceipt(came: readonly ReceiptShare[], receipt: number, amount: Money): ReceiptShare[] {
  const held = [...came];
  let back = amount;
  for (let last = held.at(-1); last && back.amount.isNegative(); last = held.at(-1)) {
    held.pop();
    back = add(last.amount, back);
    if (back.amount.gt(0)) return [...held, { receipt: last.receipt, amount: back }];
  }
  return back.amount.gt(0) ? [...held, { receipt, amount: back }] : held;
}

/** The totals in force on a day, the last first: on the day it changes both are. */
function totalsOn(totals: readonly [TotalSince, ...TotalSince[]], on: Day): Money[] {
  const begun = totals.filter(({ from }) => from <= on);
  const changing = begun.filter(({ from }) => from === on).length;
  const current = begun.slice(-1 - changing).toReversed();
  return (current.length > 0 ? current : totals.slice(0, 1)).map(({ total }) => total);
}

/**
 * The instalments settled for good, each with its sum, in the order they are filled: those settled before that `held`
 * still covers, and those it covers under a total of the day. A refund reopens what it takes back.
 */
function closedBy(
  before: ReadonlyMap<number, Money>,
  plan: readonly Instalment[],
  order: readonly number[],
  held: Money,
  totals: readonly Money[],
  settles: number | null,
): Map<number, Money> {
  const closed = new Map<number, Money>();
  let left = held;
  for (const place of order) {
    const earlier = before.get(place);
    const asked = totals.map((total) => askedOf(total, plan, closed)[place] ?? noMoney(total.currency));
    const covered = [...(earlier ? [earlier] : []), ...asked].find((sum) => compare(sum, left) <= 0);
    const paid = covered ?? (place === settles ? left : undefined);
    if (!paid) break;
    // The balance takes whatever changes later, and nothing settles what asks for nothing.
    if (place !== balanceIndex(plan) && (!paid.amount.isZero() || earlier || place === settles))
      closed.set(place, paid);
    left = subtract(left, paid);
  }
  return closed;
}

/** Lays what came in against what is asked, first to last; closed instalments hold their sums. */
function sharesOf(
  asked: readonly Money[],
  order: readonly number[],
  came: readonly ReceiptShare[],
): ReceiptShare[][] {
  const shares = asked.map((): ReceiptShare[] => []);
  const queue = [...came];
  for (const place of order) {
    let wanted = asked[place];
    for (let next = queue.shift(); wanted && next; next = queue.shift()) {
      const taken: Money = compare(next.amount, wanted) > 0 ? wanted : next.amount;
      if (!taken.amount.isZero()) shares[place]?.push({ receipt: next.receipt, amount: taken });
      wanted = subtract(wanted, taken);
      const rest = subtract(next.amount, taken);
      if (!rest.amount.isZero()) queue.unshift({ receipt: next.receipt, amount: rest });
      if (wanted.amount.lte(0)) break;
    }
  }
  return shares;
}

/** The day since which the total has been above what was received, where an earlier total was covered by it; else null. */
function risenOn(totals: readonly TotalSince[], received: Money): Day | null {
  const covered = totals.findLastIndex(({ total }) => compare(total, received) <= 0);
  return covered === -1 ? null : (totals[covered + 1]?.from ?? null);
}

function sumOf(shares: readonly ReceiptShare[], currency: string): Money {
  return sum(
    shares.map(({ amount }) => amount),
    currency,
  );
}
