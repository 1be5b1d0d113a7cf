import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parseConversion } from '../../../src/engine/measure/conversions.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { drawStock, type StockLot } from '../../../src/engine/purchase/stock.ts';
import { day, must, q } from '../plan/builders.ts';

const lot = (amount: string, useBy?: string): StockLot => ({
  ingredient: 'milk',
  amount: q(amount),
  useBy: useBy === undefined ? undefined : day(useBy),
});
const use = (amount: string, on: string) => ({ amount: q(amount).amount, on: day(on) });

describe('taking from stock', () => {
  test('takes first what must go first, each lot for uses up to its day, and hands on the rest', () => {
    // The 3 qt of the 14th serve the 13th (2 qt) and the 14th (1 of 2 qt); of the 20th's 4 qt one goes to the 14th.
    const drawn = drawStock(
      'qt',
      [use('2 qt', '2027-05-14'), use('2 qt', '2027-05-13')],
      [lot('4 qt', '2027-05-20'), lot('3 qt', '2027-05-14')],
      [],
    );
    expect(drawn.taken.toFraction()).toBe('4');
    expect(drawn.rest.map(({ amount, useBy }) => [exactText(amount), useBy])).toEqual([
      ['3 qt', '2027-05-20'],
    ]);
    expect(drawn.tooOld.n).toBe(0n);
  });

  test('leaves what is past its day when it would be used, and says how much of the need that is', () => {
    const drawn = drawStock('qt', [use('2 qt', '2027-05-15')], [lot('5 qt', '2027-05-14'), lot('½ qt')], []);
    expect([drawn.taken.toFraction(), drawn.tooOld.toFraction()]).toEqual(['1/2', '3/2']);
    expect(drawn.rest.map(({ amount }) => exactText(amount))).toEqual(['5 qt']);
  });

  test('measures lots by the food’s conversions, and leaves those it cannot measure', () => {
    const drawn = drawStock(
      'lb',
      [use('5 lb', '2027-05-15')],
      [lot('1 can'), lot('1 crate')],
      [must(parseConversion('1 can = 104 oz'))],
    );
    // 104 oz are 6½ lb: 1½ lb of them are left, 3/13 of the can.
    expect(drawn.taken.toFraction()).toBe('5');
    expect(drawn.rest.map(({ amount }) => exactText(amount))).toEqual(['3/13 can', '1 crate']);
    expect(drawn.unmeasured.map(({ amount }) => exactText(amount))).toEqual(['1 crate']);
  });

  test('puts back lots of nothing and those that were not asked for as they are', () => {
    const empty = {
      ...lot('1 qt', '2027-05-10'),
      amount: { ...q('1 qt'), amount: q('1 qt').amount.sub(1n) },
    };
    const drawn = drawStock('qt', [], [lot('2 qt'), empty], []);
    expect(drawn.rest.map(({ amount }) => exactText(amount))).toEqual(['0 qt', '2 qt']);
    expect([drawn.taken.n, drawn.tooOld.n, drawn.unmeasured.length]).toEqual([0n, 0n, 0]);
  });

  test('tells no more as too old than is missing, nor more than there is', () => {
    const tooOld = (need: string, held: string) =>
      drawStock('qt', [use(need, '2027-05-15')], [lot(held, '2027-05-14')], []).tooOld.toFraction();
    expect([tooOld('2 qt', '5 qt'), tooOld('5 qt', '2 qt')]).toEqual(['2', '2']);
  });

  /*
   * The most that can be taken, by Hall's theorem: uses from a day on can be served by lots that keep until then alone,
   * so that whatever those uses want more than such lots hold is missing, and the largest such lack is all that is.
   */
  test('takes as much as any way of sharing the lots could, and loses none', () => {
    const dates = ['2027-05-12', '2027-05-13', '2027-05-14', '2027-05-15'];
    const someDay = fc.constantFrom(...dates);
    const quarts = fc.integer({ min: 0, max: 9 });
    const uses = fc.array(fc.record({ amount: quarts, on: someDay }), { maxLength: 4 });
    const lots = fc.array(fc.record({ amount: quarts, useBy: fc.option(someDay, { nil: undefined }) }), {
      maxLength: 4,
    });
    const quantityOf = (amount: number) => ({ amount: new Fraction(amount), unit: 'qt' });
    fc.assert(
      fc.property(uses, lots, (wanted, held) => {
        const drawn = drawStock(
          'qt',
          wanted.map(({ amount, on }) => ({ amount: new Fraction(amount), on: day(on) })),
          held.map(({ amount, useBy }) => ({ ...lot('1 qt', useBy), amount: quantityOf(amount) })),
          [],
        );
        const sum = (amounts: readonly number[]) => amounts.reduce((a, b) => a + b, 0);
        const lacks = ['', ...dates].map(
          (from) =>
            sum(wanted.filter(({ on }) => on >= from).map(({ amount }) => amount)) -
            sum(held.filter(({ useBy = '9999' }) => useBy >= from).map(({ amount }) => amount)),
        );
        const most = sum(wanted.map(({ amount }) => amount)) - Math.max(0, ...lacks);
        const left = drawn.rest.reduce((all, { amount }) => all.add(amount.amount), new Fraction(0n));
        expect(drawn.taken.valueOf()).toBe(most);
        expect(left.add(drawn.taken).valueOf()).toBe(sum(held.map(({ amount }) => amount)));
      }),
      { numRuns: 500 },
    );
  });
});
