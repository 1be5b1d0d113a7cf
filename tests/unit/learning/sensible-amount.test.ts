import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eachOf, sensibleAmount } from '../../../src/engine/learning/sensible-amount.ts';
import { type PerGuest, parsePerGuest, perGuestText } from '../../../src/engine/measure/per-guest.ts';

const amount = (text: string): PerGuest => {
  const read = parsePerGuest(text);
  if (!read.ok) throw new Error(read.what);
  return read.value;
};

test.each([
  ['1 piece per guest', 0.9, '9 pieces per 10 guests'],
  ['1 piece per guest', 0.8999999999999999, '9 pieces per 10 guests'],
  ['1 piece per guest', 0.91, undefined],
  ['2 pieces per guest', 1.42, '15 pieces per 10 guests'],
  ['2 pieces per guest', 0.97, '1 piece per guest'],
  ['1 piece per guest', 1.12, '12 pieces per 10 guests'],
  ['1 bowl per 20 guests', 0.045, '1 bowl per 22 guests'],
  ['1 bowl per 20 guests', 0.055, '1 bowl per 18 guests'],
  ['5 oz per guest', 4.3, '4½ oz per guest'],
  ['120 g per guest', 101, '110 g per guest'],
  ['¾ fl oz per guest', 0.62, '6½ fl oz per 10 guests'],
  ['5 oz per guest', 4.97, undefined],
  ['1 piece per guest', 0, undefined],
  // Ten for ten would be more than stands, though less was eaten.
  ['11 pieces per 12 guests', 0.91, undefined],
])('%s is written for %f by the head as %s', (present, target, written) => {
  const found = sensibleAmount(amount(present), target);
  expect(found && perGuestText(found)).toBe(written);
});

test('what is written is never less than asked for, and no more than a fifth or a tenth of a thing above it', () => {
  const presents = [
    '1 piece per guest',
    '1 bowl per 20 guests',
    '5 oz per guest',
    '¾ fl oz per guest',
    '120 g per guest',
  ];
  fc.assert(
    fc.property(fc.constantFrom(...presents), fc.double({ min: 0.3, max: 3, noNaN: true }), (text, share) => {
      const present = amount(text);
      const target = eachOf(present).valueOf() * share;
      const found = sensibleAmount(present, target);
      if (!found) return;
      const each = eachOf(found).valueOf();
      expect(each).toBeGreaterThan(target - 1e-9);
      expect(each).toBeLessThan(Math.max(target * 1.2, target + 0.1) + 1e-6);
    }),
  );
});

test.each([
  // A mean of 1.02, from 0.97 to 1.07: 11 for 10 guests would lie outside.
  ['1 piece per guest', 1.02, 1.07, '21 pieces per 20 guests'],
  ['1 piece per guest', 1.01, 1.03, '51 pieces per 50 guests'],
  ['1 piece per guest', 1.02, 1.2, '11 pieces per 10 guests'],
  ['1 piece per guest', 1.001, 1.0015, undefined],
  ['5 oz per guest', 5.1, 5.2, '5⅛ oz per guest'],
  ['5 oz per guest', 5.1, 5.6, '5½ oz per guest'],
  // On its way down to a mean below 1.3.
  ['2 pieces per guest', 1.42, 1.3, '15 pieces per 10 guests'],
])('%s, where %f is meant and what was learned ends at %f, becomes %s', (present, target, most, written) => {
  const found = sensibleAmount(amount(present), target, most);
  expect(found && perGuestText(found)).toBe(written);
});

test('what is written never passes the end of what was learned', () => {
  const presents = ['1 piece per guest', '1 bowl per 20 guests', '5 oz per guest', '120 g per guest'];
  const share = fc.double({ min: 0.7, max: 1.4, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...presents),
      share,
      fc.double({ min: 0, max: 0.2, noNaN: true }),
      (text, at, wide) => {
        const present = amount(text);
        const target = eachOf(present).valueOf() * at;
        const found = sensibleAmount(present, target, target * (1 + wide));
        if (found) expect(eachOf(found).valueOf()).toBeLessThanOrEqual(target * (1 + wide) + 2e-6);
      },
    ),
  );
});
