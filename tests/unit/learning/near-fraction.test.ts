import { expect, test } from 'vitest';
import { fractionAbove, nearFraction } from '../../../src/engine/learning/near-fraction.ts';

test('an estimate is the nearest millionth, or the next one up but for the error of its search', () => {
  expect([1 / 3, 2 / 3, 0, 1.5].map((each) => nearFraction(each).toFraction())).toEqual([
    '333333/1000000',
    '666667/1000000',
    '0',
    '3/2',
  ]);
  expect([1 / 3, 0.9, 0.9 + 5e-8, 0.9 + 2e-7].map((each) => fractionAbove(each).toFraction())).toEqual([
    '166667/500000',
    '9/10',
    '9/10',
    '900001/1000000',
  ]);
});
