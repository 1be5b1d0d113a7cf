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
});
