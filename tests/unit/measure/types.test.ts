import { expect, it } from 'vitest';
import { type Minutes, minutes } from '../../../src/engine/measure/duration.ts';
import { type GuestCount, guestCount } from '../../../src/engine/measure/guest-count.ts';
import { type Quantity, quantity, timesQuantity } from '../../../src/engine/measure/quantity.ts';

/** The type check fails on any of these lines that compiles; none of them is ever run. */
function mixes(guests: GuestCount, time: Minutes, amount: Quantity): unknown[] {
  // @ts-expect-error a guest count is not a duration
  const a: Minutes = guests;
  // @ts-expect-error a duration is not a guest count
  const b: GuestCount = time;
  // @ts-expect-error a bare number is not a guest count
  const c: GuestCount = 100;
  // @ts-expect-error a bare number is not a duration
  const d: Minutes = 20;
  // @ts-expect-error a guest count is not a quantity
  const e: Quantity = guests;
  // @ts-expect-error a quantity is not a guest count
  const f: GuestCount = amount;
  // @ts-expect-error a binary number is never a quantity's amount
  const g: Quantity = { amount: 0.5, unit: 'lb' };
  // @ts-expect-error a binary number never makes a quantity
  const h = quantity(0.5, 'lb');
  // @ts-expect-error a quantity is scaled by an exact fraction
  const i = timesQuantity(amount, 1.5);
  // @ts-expect-error a quantity does not change
  amount.unit = 'kg';
  return [a, b, c, d, e, f, g, h, i];
}

it('keeps guests, minutes and quantities apart by their types, at no cost when run', () => {
  expect(typeof mixes).toBe('function');
  expect([guestCount(100), minutes(20)]).toEqual([100, 20]);
});
