import { describe, expect, it } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import {
  accountOf,
  openPayments,
  overdueOn,
  type Receipt,
  type TotalSince,
} from '../../../src/engine/money/account.ts';
import { type Instalment, parseInstalment } from '../../../src/engine/money/instalments.ts';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import type { ScheduleDates } from '../../../src/engine/money/schedule.ts';
import { instalmentText } from './instalment-text.ts';

const PLAN = ['30 % when accepted', '40 % 30 days before', 'balance 7 days before'];
const dates: ScheduleDates = { acceptedOn: '2027-03-12' as Day, eventDate: '2027-05-15' as Day };

const plan = (texts: readonly string[]): Instalment[] =>
  texts.map((text) => {
    const instalment = parseInstalment(text, 'USD');
    if (!instalment.ok) throw new Error(instalment.what);
    return instalment.value;
  });
const came = (on: string, amount: string, settles: number | null = null): Receipt => ({
  on: `2027-${on}` as Day,
  amount: money(amount, 'USD'),
  settles,
});
const since = (from: string, total: string): TotalSince => ({
  from: `2027-${from}` as Day,
  total: money(total, 'USD'),
});
const account = (
  totals: readonly [TotalSince, ...TotalSince[]],
  receipts: readonly Receipt[],
  payments: readonly string[] = PLAN,
) => accountOf(totals, { payments: plan(payments) }, dates, receipts);
type Account = ReturnType<typeof account>;
const state = ({ instalments }: Account) =>
  instalments.map(({ asked, paid, open }) => [asked, paid, open].map(moneyText).join(' '));
const open = (each: Account) =>
  openPayments(each).map(
    ({ instalment, due, amount }) => `${instalmentText(instalment)}: ${moneyText(amount)} ${due}`,
  );

const THOUSAND = since('03-12', '1000.00');

describe('money that came in', () => {
  it('is taken by day however it is listed, each payment under the total of its day', () => {
    const totals: [TotalSince, TotalSince] = [THOUSAND, since('04-20', '2000.00')];
    const [early, late] = [came('03-16', '300.00'), came('04-25', '700.00')];
    // 300.00 settled the deposit of its day; 700.00 goes to the 40 % of today's 2,000.00.
    const told = ['300.00 300.00 0.00', '800.00 700.00 100.00', '900.00 0.00 900.00'];
    expect(state(account(totals, [early, late]))).toEqual(told);
    expect(state(account(totals, [late, early]))).toEqual(told);
  });

  it('loses no refund that is listed before the money of the same day', () => {
    for (const receipts of [
      [came('03-16', '-50.00'), came('03-16', '300.00')],
      [came('03-16', '300.00'), came('03-16', '-50.00')],
    ])
      expect(state(account([THOUSAND], receipts))[0]).toBe('300.00 250.00 50.00');
  });

  it('fills a share before the balance that falls due on the same day, wherever it is listed', () => {
    const listed = ['balance 7 days before', '20 % 7 days before'];
    expect(state(account([THOUSAND], [came('03-16', '150.00')], listed))).toEqual([
      '800.00 0.00 800.00',
      '200.00 150.00 50.00',
    ]);
  });

  it('is never overdue while nobody knows the day', () => {
    expect(
      overdueOn(
        [{ instalment: { of: 'balance', due: 7 }, due: null, amount: money('5.00', 'USD') }],
        '2027-05-09' as Day,
      ),
    ).toEqual([]);
  });

  it('settles the instalments in the order they fall due, and names the receipts each was paid with', () => {
    const paid = account([THOUSAND], [came('03-16', '300.00', 0), came('04-15', '400.00')]);
    expect(state(paid)).toEqual(['300.00 300.00 0.00', '400.00 400.00 0.00', '300.00 0.00 300.00']);
    expect(paid.instalments.map(({ by }) => by.map(({ receipt }) => receipt))).toEqual([[0], [1], []]);
    expect(open(paid)).toEqual(['balance 7 days before: 300.00 2027-05-08']);
    expect(overdueOn(openPayments(paid), '2027-05-08' as Day)).toEqual([]);
    expect(overdueOn(openPayments(paid), '2027-05-09' as Day)).toHaveLength(1);
  });

  it('goes on to the next instalment with what is left of it, and leaves open what it does not cover', () => {
    expect(state(account([THOUSAND], [came('03-16', '450.00', 0), came('04-15', '200.00')]))).toEqual([
      '300.00 300.00 0.00',
      '400.00 350.00 50.00',
      '300.00 0.00 300.00',
    ]);
  });

  it('is matched by due day whatever order the kitchen lists the instalments in', () => {
    const listed = ['40 % 30 days before', 'balance 7 days before', '30 % when accepted'];
    expect(state(account([THOUSAND], [came('03-16', '310.00')], listed))).toEqual([
      '400.00 10.00 390.00',
      '300.00 0.00 300.00',
      '300.00 300.00 0.00',
    ]);
  });

  it('confirms the date with less than the deposit where the kitchen takes it so, and the balance takes the rest', () => {
    expect(state(account([THOUSAND], [came('03-16', '100.00', 0)]))).toEqual([
      '100.00 100.00 0.00',
      '400.00 0.00 400.00',
      '500.00 0.00 500.00',
    ]);
    expect(state(account([THOUSAND], [came('03-16', '100.00')]))[0]).toBe('300.00 100.00 200.00');
  });

  it('beyond the total is to be paid back, on no day of its own', () => {
    const paid = account([THOUSAND], [came('03-16', '1069.29')]);
    expect(state(paid).map((row) => row.split(' ')[2])).toEqual(['0.00', '0.00', '0.00']);
    expect([moneyText(paid.credit), moneyText(paid.balance)]).toEqual(['69.29', '-69.29']);
    expect(open(paid)).toEqual(['to be paid back: -69.29 null']);
  });
});

describe('a total that changes', () => {
  const rises = [THOUSAND, since('04-20', '1200.00')] as const;

  it('leaves what was paid in full under the total of the day paid, and moves the balance', () => {
    const paid = account(rises, [came('03-16', '300.00', 0), came('04-15', '400.00')]);
    expect(state(paid)).toEqual(['300.00 300.00 0.00', '400.00 400.00 0.00', '500.00 0.00 500.00']);
    // Paid after the rise, the second instalment is 40 % of the new total.
    const later = account(rises, [came('03-16', '300.00', 0), came('04-21', '400.00')]);
    expect(state(later)).toEqual(['300.00 300.00 0.00', '480.00 400.00 80.00', '420.00 0.00 420.00']);
    // On the day of the change either total settles it.
    for (const amount of ['400.00', '480.00'])
      expect(state(account(rises, [came('03-16', '300.00', 0), came('04-20', amount)]))[1]).toBe(
        `${amount} ${amount} 0.00`,
      );
  });

  it('makes what is owed since then due since then, not on the day of a balance that was paid', () => {
    const all = [came('03-16', '300.00', 0), came('05-07', '700.00')];
    expect(open(account([THOUSAND, since('05-16', '1030.00')], all))).toEqual([
      'balance 7 days before: 30.00 2027-05-16',
    ]);
    const short = [came('03-16', '300.00', 0), came('05-07', '690.00')];
    expect(open(account([THOUSAND, since('05-16', '1030.00')], short))).toEqual([
      'balance 7 days before: 40.00 2027-05-08',
    ]);
  });

  it('below what came in makes the difference a credit, and asks no instalment for less than nothing', () => {
    const paid = account(
      [THOUSAND, since('05-01', '600.00')],
      [came('03-16', '300.00', 0), came('04-15', '400.00')],
    );
    expect(state(paid)).toEqual(['300.00 300.00 0.00', '300.00 300.00 0.00', '0.00 0.00 0.00']);
    expect(moneyText(paid.credit)).toBe('100.00');
  });
});

describe('a refund', () => {
  it('is taken off the last money that came in and reopens what it paid', () => {
    const receipts = [came('03-16', '300.00', 0), came('04-15', '400.00'), came('04-16', '-150.00')];
    const refunded = account([THOUSAND], receipts);
    expect(state(refunded)).toEqual(['300.00 300.00 0.00', '400.00 250.00 150.00', '300.00 0.00 300.00']);
    expect(refunded.instalments[1]?.by.map(({ receipt, amount }) => [receipt, moneyText(amount)])).toEqual([
      [1, '250.00'],
    ]);
    expect(moneyText(refunded.received)).toBe('550.00');
  });

  it('of what came in beyond the total closes the account', () => {
    const paid = account([THOUSAND], [came('03-16', '1069.29'), came('05-20', '-69.29')]);
    expect([open(paid), moneyText(paid.balance)]).toEqual([[], '0.00']);
  });
});
