import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { roundBatches } from '../../../src/engine/food/batches.ts';

test.each([
  ['exact', '7/3', '7/3'],
  ['exact', '0.01', '1/100'],
  ['half', '2.01', '5/2'],
  ['half', '2.5', '5/2'],
  ['half', '2.51', '3'],
  ['whole', '2.01', '3'],
  ['whole', '3', '3'],
] as const)('%s batches of %s are %s', (rule, exact, cooked) => {
  expect(roundBatches(new Fraction(exact), rule).toFraction()).toBe(cooked);
});
