import { expect, test } from 'vitest';
import { countedWords } from '../../../src/engine/quote/counted-words.ts';
import { type Counts, DEFAULT_COUNTS, type Guests } from '../../../src/engine/quote/counts.ts';

const guests = (adults: number, children = 0, vendors = 0): Guests => ({
  adults,
  children,
  vendors,
  staff: 3,
});

test.each<[Guests, Counts, string]>([
  [guests(84, 12, 4), DEFAULT_COUNTS, '96 adults and children'],
  [guests(118, 0, 4), DEFAULT_COUNTS, '118 adults'],
  [guests(1, 0, 4), DEFAULT_COUNTS, '1 adult'],
  [guests(0, 1), DEFAULT_COUNTS, '1 child'],
  [guests(1, 2), DEFAULT_COUNTS, '3 adults and children'],
  [guests(84, 12, 4), { ...DEFAULT_COUNTS, vendors: '1' }, '100 adults, children and vendor meals'],
  [guests(84, 12), { adults: '1', children: '1/2' }, '90 guests, adults and children at 1/2'],
  [guests(84, 0), { adults: '1', children: '1/2' }, '84 adults'],
  [guests(0, 0, 4), DEFAULT_COUNTS, '0 guests'],
])('%j counted by %j are %s', (people, counts, words) => {
  expect(countedWords(people, counts)).toBe(words);
});
