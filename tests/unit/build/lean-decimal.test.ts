import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LEFT_OUT, leanDecimal } from '../../../src/build/lean-decimal.ts';

const whole = readFileSync(fileURLToPath(import.meta.resolve('decimal.js')), 'utf8');
const text = leanDecimal(whole);
const { Decimal: Lean } = (await import(`data:text/javascript,${encodeURIComponent(text)}`)) as {
  Decimal: typeof Decimal;
};

test('the lean form has none of what is left out, and all else', () => {
  const names = (of: typeof Decimal) => [...Object.keys(of), ...Object.keys(of.prototype)];
  expect(names(Lean)).toEqual(names(Decimal).filter((name) => !LEFT_OUT.has(name)));
  expect(names(Decimal).filter((name) => LEFT_OUT.has(name)).length).toBeGreaterThan(60);
});

test('both forms reckon alike, to the last digit', () => {
  const settings = { precision: 40, rounding: 4, defaults: true } as const;
  const [A, B] = [Decimal.clone(settings), Lean.clone(settings)];
  const number = fc
    .tuple(fc.bigInt({ min: -(10n ** 14n), max: 10n ** 14n }), fc.integer({ min: -8, max: 4 }))
    .map(([digits, power]) => `${digits}e${power}`);
  const reckon = (of: typeof Decimal, a: string, b: string) => {
    const [one, other] = [new of(a), new of(b)];
    return [
      one.plus(other),
      one.minus(other),
      one.times(other),
      other.isZero() ? other : one.div(other),
      one.toDecimalPlaces(2, of.ROUND_HALF_UP).toFixed(2),
      one.floor(),
      one.ceil(),
      one.round(),
      of.max(one, other),
      one.comparedTo(other),
    ].map(String);
  };
  fc.assert(
    fc.property(number, number, (a, b) => {
      expect(reckon(B, a, b)).toEqual(reckon(A, a, b));
    }),
  );
});

test('a library that is written in another way is refused rather than shipped whole', () => {
  expect(() => leanDecimal(whole.replaceAll('P.', 'proto.'))).toThrow(/decimal\.js has changed/);
});
