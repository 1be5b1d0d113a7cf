import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { decimalAmountText, guestsCountedText } from '../../../src/exports/words/each-text.ts';
import { eatenText } from '../../../src/exports/words/eaten-text.ts';
import type { EatenDish } from '../../../src/offers/learned/eaten-so-far.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const say = wordsIn('en-US');

test.each([
  ['3400/41', '82.9'],
  ['83', '83'],
  ['1679/20', '84'],
  ['1/3', '0.3'],
])('%s guests are shown as %s', (guests, shown) => {
  expect(guestsCountedText(new Fraction(guests))).toBe(shown);
});

test.each([
  ['0.0454', '0.045 bowls'],
  ['0.0521', '0.052 bowls'],
  ['0.00521', '0.0052 bowls'],
  ['0.88', '0.88 bowls'],
  ['12.345', '12.3 bowls'],
  ['0', '0 bowls'],
])('%s of a bowl is shown as %s', (amount, shown) => {
  expect(decimalAmountText({ amount: new Fraction(amount), unit: 'bowl' })).toBe(shown);
});

test('a mean whose ends read alike is said once', () => {
  const eaten = (from: number, to: number): EatenDish => ({
    recipe: 'leaf-salad',
    style: 'buffet',
    packageId: 'harbour',
    course: 'Table',
    name: 'Leaf salad',
    unit: 'bowl',
    events: [],
    estimate: { events: 5, ranOut: 0, mean: 0.048, spread: 0.002, from, to, atLeast: undefined },
  });
  expect(eatenText(eaten(0.0454, 0.0521), say).said).toContain(
    'the average is from 0.045 bowls to 0.052 bowls (90',
  );
  expect(eatenText(eaten(0.04798, 0.0481), say).said).toContain('the average is about 0.048 bowls (90');
});
