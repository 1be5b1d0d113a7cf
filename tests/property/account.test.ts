import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addDays, type Day } from '../../src/engine/calendar/day.ts';
import { accountOf, openPayments, type Receipt, type TotalSince } from '../../src/engine/money/account.ts';
import { Decimal } from '../../src/engine/money/decimal.ts';
import { type Money, moneyText, sum } from '../../src/engine/money/money.ts';
import { instalments } from './payment-plans.ts';

const START = '2027-01-01' as Day;
const days = fc.integer({ min: 0, max: 60 }).map((offset) => addDays(START, offset));
const cents = (min: number, max: number) =>
  fc.integer({ min, max }).map((minor): Money => ({ amount: new Decimal(minor).div(100), currency: 'USD' }));
const receipt = fc.record({
  on: days,
  amount: cents(-60_000, 200_000),
  settles: fc.constantFrom(null, null, 0),
});
const totals = fc
  .tuple(cents(0, 400_000), fc.array(fc.tuple(days, cents(0, 400_000)), { maxLength: 3 }))
  .map(([first, later]): [TotalSince, ...TotalSince[]] => [
    { from: START, total: first },
    ...later.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([from, total]) => ({ from, total })),
  ]);
const dates = { acceptedOn: START, eventDate: addDays(START, 50) };
const text = (amounts: readonly Money[]) => moneyText(sum(amounts, 'USD'));

/** Never more refunded than has come in by then, as the records are held to. */
function sound(receipts: readonly Receipt[]): boolean {
  let held = new Decimal(0);
  return receipts
    .toSorted((a, b) => (a.on === b.on ? b.amount.amount.comparedTo(a.amount.amount) : a.on < b.on ? -1 : 1))
    .every(({ amount }) => {
      held = held.plus(amount.amount);
      return held.gte(0);
    });
}
const receipts = fc.array(receipt, { maxLength: 6 }).filter(sound);

it('allocates every cent that came in once, and never below nothing or above what is asked', () => {
  fc.assert(
    fc.property(totals, instalments, receipts, (history, payments, came) => {
      const account = accountOf(history, { payments }, dates, came);
      const { total } = history.at(-1) ?? history[0];
      const rows = account.instalments;
      expect(text(rows.map(({ asked }) => asked))).toBe(moneyText(total));
      expect(text([...rows.map(({ paid }) => paid), account.credit])).toBe(moneyText(account.received));
      expect(text(openPayments(account).map(({ amount }) => amount))).toBe(moneyText(account.balance));
      for (const { asked, paid, open, by } of rows) {
        for (const each of [paid, open, asked]) {
          expect(each.amount.isNegative() && !each.amount.isZero()).toBe(false);
          expect(each.amount.decimalPlaces()).toBeLessThanOrEqual(2);
        }
        expect(text([paid, open])).toBe(moneyText(asked));
        expect(by.every(({ amount }) => amount.amount.gt(0))).toBe(true);
      }
      for (const [place, { amount }] of came.entries()) {
        const used = rows.flatMap(({ by }) => by).filter((share) => share.receipt === place);
        const most = Decimal.max(amount.amount, 0);
        expect(
          sum(
            used.map((share) => share.amount),
            'USD',
          ).amount.lte(most),
        ).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
});

it('is the same account in whatever order the receipts are listed', () => {
  const shuffled = receipts.chain((came) =>
    fc.tuple(fc.constant(came), fc.shuffledSubarray(came, { minLength: came.length })),
  );
  fc.assert(
    fc.property(totals, instalments, shuffled, (history, payments, [came, other]) => {
      const sums = (list: readonly Receipt[]) =>
        accountOf(history, { payments }, dates, list).instalments.map(({ asked, paid, due }) => [
          moneyText(asked),
          moneyText(paid),
          due,
        ]);
      expect(sums(other)).toEqual(sums(came));
    }),
    { numRuns: 500 },
  );
});
