import { expect, test } from 'vitest';
import { recipeOrder } from '../../../src/book/link/recipe/recipe-order.ts';

test('parts come before what they go into, however the files are named', () => {
  const parts = new Map([
    ['a-salad', ['dressing']],
    ['dressing', ['stock']],
    ['stock', []],
  ]);
  expect(recipeOrder(parts)).toEqual({ order: ['stock', 'dressing', 'a-salad'], rings: [] });
});

test('every ring is found, and a recipe outside of it still has its place', () => {
  const parts = new Map([
    ['a', ['b']],
    ['b', ['c', 'd']],
    ['c', ['a']],
    ['d', ['d']],
    ['e', ['a']],
  ]);
  const { order, rings } = recipeOrder(parts);
  expect(rings).toEqual([['a', 'b', 'c'], ['d']]);
  expect(order).toHaveLength(5);
});

test('a chain longer than any stack is walked to its end', () => {
  const length = 200_000;
  const parts = new Map(Array.from({ length }, (_, index) => [`r${index}`, [`r${index + 1}`]]));
  parts.set(`r${length}`, []);
  expect(recipeOrder(parts).order[0]).toBe(`r${length}`);
});
