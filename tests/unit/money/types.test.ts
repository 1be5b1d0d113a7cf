import { expect, it } from 'vitest';
import type { GuestCount } from '../../../src/engine/measure/guest-count.ts';
import type { Quantity } from '../../../src/engine/measure/quantity.ts';
import { add, type Money, money, times } from '../../../src/engine/money/money.ts';

/** Never run: the type checker reads it, and every line marked must fail to compile. */
function mustNotCompile(sum: Money, quantity: Quantity, guests: GuestCount): void {
  // @ts-expect-error a sum is not a number
  const plain: number = sum;
  // @ts-expect-error a number is not a sum
  add(sum, 5);
  // @ts-expect-error a quantity is not a sum
  add(sum, quantity);
  // @ts-expect-error guests are not a sum
  add(sum, guests);
  // @ts-expect-error a sum is not a quantity
  const food: Quantity = sum;
  // @ts-expect-error a sum is not a guest count
  const people: GuestCount = sum;
  // @ts-expect-error two sums cannot be multiplied
  times(sum, sum);
  // @ts-expect-error a binary float is no factor
  times(sum, 0.15);
  // @ts-expect-error a binary float is no amount
  money(12.5, 'USD');
  // @ts-expect-error sums have no order of their own; there is `compare`
  const less: boolean = sum < 5;
  expect([plain, food, people, less]).toBeDefined();
}

it('keeps sums, numbers, quantities and guest counts apart, as the type checker proves', () => {
  expect(mustNotCompile).toBeTypeOf('function');
});
