import { describe, expect, test } from 'vitest';
import type { Counts, Guests } from '../../../src/engine/quote/counts.ts';
import { classWords } from '../../../src/exports/words/class-words.ts';
import { countedText, groupsText, listText } from '../../../src/exports/words/counted-text.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';

const say = scriptWordsIn('en-US');
const people = (adults: number, children = 0, vendors = 0, staff = 0): Guests => ({
  adults,
  children,
  vendors,
  staff,
});
const BOTH: Counts = { adults: '1', children: '1' };

describe('whom a figure counts, as the client reads it', () => {
  test.each([
    [people(90, 6), BOTH, '96 adults and children'],
    [people(118), BOTH, '118 adults'],
    [people(1), BOTH, '1 adult'],
    [people(0, 1), BOTH, '1 child'],
    [people(84, 12), { adults: '1', children: '1/2' }, '90 guests, adults and children at 1/2'],
    [people(2, 0, 1, 3), { ...BOTH, staff: '1' }, '5 adults and crew'],
    [people(0), BOTH, '0 guests'],
  ])('%o by %o is %s', (guests, counts, words) => {
    expect(countedText(say, guests, counts)).toBe(words);
  });

  test('is a list with its last item after “and”, and nobody where nobody is counted', () => {
    expect(groupsText(say, { adults: '1', children: '1', vendors: '1' })).toBe(
      'adults, children and vendor meals',
    );
    expect(groupsText(say, {})).toBe('nobody');
    expect(['', 'a', 'a and b'].map((_, index) => listText(say, ['a', 'b'].slice(0, index)))).toEqual([
      '',
      'a',
      'a and b',
    ]);
  });

  test('what a line is for is spelled as the country spells it', () => {
    expect(classWords(['food', 'labour'], 'en-US')).toBe('food and labor');
    expect(classWords(['food', 'labour'], 'en-GB')).toBe('food and labour');
  });
});
