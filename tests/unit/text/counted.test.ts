import { expect, test } from 'vitest';
import { counted } from '../../../src/engine/text/counted.ts';

test.each([
  [0, '0 guests'],
  [1, '1 guest'],
  [1n, '1 guest'],
  [21, '21 guests'],
])('%s is “%s”', (count, words) => {
  expect(counted(count, 'guest')).toBe(words);
});

test('has the noun’s own plural where it is given', () => {
  expect([counted(1, 'child', 'children'), counted(2, 'child', 'children')]).toEqual([
    '1 child',
    '2 children',
  ]);
});
