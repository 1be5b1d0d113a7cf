import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { guestNumber } from '../../../src/engine/plan/figure-text.ts';
import { batchesText } from '../../../src/exports/words/batches-text.ts';

test.each([
  ['31/16', '1.94', '1.94'],
  ['3/2', '1½', '1.5'],
  ['7/4', '1¾', '1.75'],
  ['1/3', '0.33', '0.33'],
  ['7/16', '0.44', '0.44'],
  ['3/40', '0.075', '0.075'],
  ['1/12', '0.083', '0.083'],
  ['201/200', '1.01', '1.01'],
  ['2', '2', '2'],
])('%s of a batch is %s in an American kitchen and %s in a metric one', (batches, us, metric) => {
  const exact = new Fraction(batches);
  expect([batchesText(exact, 'us'), batchesText(exact, 'metric')]).toEqual([us, metric]);
});

test('a number of guests has no fraction in it', () => {
  const told = ['102/5', '175/2', '50/3', '12'].map((guests) => guestNumber(new Fraction(guests)));
  expect(told).toEqual(['20.4', '87.5', '16.67', '12']);
});
