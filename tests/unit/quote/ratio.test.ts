import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import {
  addRatios,
  decimalRatio,
  ratio,
  ratioText,
  timesWhole,
  wholeAbove,
  wholeBelow,
} from '../../../src/engine/quote/ratio.ts';

const part = fc.tuple(fc.bigInt({ min: 0n, max: 9999n }), fc.bigInt({ min: 1n, max: 99n }));

test('ratios add, multiply and round as fraction.js does, and are always reduced', () => {
  fc.assert(
    fc.property(part, part, fc.bigInt({ min: 0n, max: 50n }), ([a, b], [c, d], whole) => {
      const [left, right] = [ratio(a, b), ratio(c, d)];
      const [first, second] = [new Fraction(a, b), new Fraction(c, d)];
      const same = (mine: { over: bigint; under: bigint }, theirs: Fraction) =>
        expect(mine).toEqual({ over: theirs.n, under: theirs.d });
      same(left, first);
      same(addRatios(left, right), first.add(second));
      same(timesWhole(left, whole), first.mul(whole));
      expect(wholeBelow(left)).toBe(first.floor().n);
      expect(wholeAbove(left)).toBe(first.ceil().n);
      expect(ratioText(left)).toBe(first.toFraction(true));
    }),
  );
});

test('a plain decimal is read exactly, and nothing else is', () => {
  expect(['5', '5.5', '12.25', '123456.1234', '0.05'].map((text) => ratioText(decimalRatio(text)))).toEqual([
    '5',
    '5 1/2',
    '12 1/4',
    '123456 617/5000',
    '1/20',
  ]);
  for (const text of ['', 'x', '5.', '.5', '-1', '5,5', '5.5 h', 'a 5', '1234567', '1.23456', '1e3'])
    expect(() => decimalRatio(text), text).toThrow(`"${text}" is not a plain number such as 5.5`);
});

test('nothing is divided by nothing', () => {
  expect(() => ratio(7n, 0n)).toThrow('the fraction 7/0 has no value');
});
