import { expect, test } from 'vitest';
import { nearest } from '../../../src/book/findings/nearest.ts';

test.each([
  ['herb-dresing', 'herb-dressing'],
  ['Herb-Dressing', 'herb-dressing'],
  ['bets', 'beet'],
  ['potatos', 'potato'],
  ['lobster', undefined],
  ['potato'.repeat(100_000), undefined],
])('%s means %s', (word, meant) => {
  expect(nearest(word, ['potato', 'beet', 'herb-dressing'])).toBe(meant);
});
