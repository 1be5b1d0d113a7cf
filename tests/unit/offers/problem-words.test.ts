import { describe, expect, test } from 'vitest';
import { type ChoiceProblem, problemAt } from '../../../src/engine/quote/choice-problem.ts';
import { problemWords } from '../../../src/offers/problem-words.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';

/** One of each kind, with the sentence that an American client reads. */
const SENTENCES: readonly (readonly [ChoiceProblem['code'], ChoiceProblem['values'], string])[] = [
  [
    'problem.no-menu',
    { menus: 'Quay Supper, Harvest table' },
    'This offer doesn’t have that menu. Choose one of: Quay Supper, Harvest table.',
  ],
  ['problem.people', { most: 100_000 }, 'Enter a whole number from 0 to 100000.'],
  ['problem.nobody', {}, 'Enter the number of guests: at least one adult or child.'],
  [
    'problem.prices',
    { menu: 'Quay Supper', most: 80, guests: 81 },
    'Quay Supper is priced for up to 80 guests, and this comes to 81. Please ask us for a price.',
  ],
  ['problem.no-course', { menu: 'Quay Supper' }, 'Quay Supper doesn’t have that course to choose from.'],
  ['problem.twice', { course: 'Sweets' }, 'A dish is chosen twice for Sweets. Choose different dishes.'],
  ['problem.no-dish', { course: 'Sweets' }, 'A dish you chose isn’t offered for Sweets. Choose again.'],
  ['problem.choose', { course: 'Sweets', due: 1, chosen: 3 }, 'Choose 1 dish for Sweets; you chose 3.'],
  ['ask.number', {}, 'Enter a whole number, such as 12.'],
  [
    'problem.too-few',
    { course: 'Mains', due: 10, gap: 2 },
    'The counts for Mains must add up to 10, one for each guest: 2 too few.',
  ],
  [
    'problem.too-many',
    { course: 'Mains', due: 10, gap: 3 },
    'The counts for Mains must add up to 10, one for each guest: 3 too many.',
  ],
  ['problem.no-add-on', {}, 'This add-on isn’t available with this menu.'],
  ['problem.hours', { addOn: 'Bar', most: 72 }, 'Enter from 0 to 72 hours for Bar, in quarter hours.'],
  [
    'problem.taken',
    { addOn: 'Bar' },
    'For Bar, enter 1 to add it or 0 to leave it out; its price goes by the guest count.',
  ],
  ['ask.need-count', { need: 'vegan' }, 'Enter how many guests have “vegan”.'],
  [
    'ask.need-again',
    { wrong: 'hidden', sign: 'U+200B' },
    'Please type this need again: it has an invisible character (U+200B).',
  ],
  [
    'ask.need-again',
    { wrong: 'blank', sign: '' },
    'Please type this need again: it has no visible character in it.',
  ],
  [
    'ask.need-again',
    { wrong: 'loose', sign: '' },
    'Please type this need again: it has letters we can’t read safely.',
  ],
  [
    'problem.need-guests',
    { need: 'vegan', guests: 2, people: 1 },
    '“vegan” is down for 2 guests, but only 1 is coming.',
  ],
  ['problem.crew', { recorded: 4, given: 0 }, 'The caterer sets the number of crew meals: 4, not 0.'],
  [
    'problem.asking',
    { most: 200, guests: 201 },
    'You can enter up to 200 guests here, and you entered 201. Please ask us for a new proposal.',
  ],
  [
    'problem.vendors',
    { vendors: 3, guests: 1 },
    'That is 3 vendor meals for 1 guest at the table. Please ask us.',
  ],
];

describe('why a choice cannot be accepted', () => {
  test.each(SENTENCES)('%s of %o', (code, values, sentence) => {
    expect(problemWords(scriptWordsIn('en-US'), problemAt('somewhere', code, values))).toBe(sentence);
    for (const locale of ['en-GB', 'de-DE'])
      expect(problemWords(scriptWordsIn(locale), problemAt('somewhere', code, values))).toMatch(
        /^[A-Z“].*\.$/,
      );
  });
});
