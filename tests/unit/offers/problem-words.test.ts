import { describe, expect, test } from 'vitest';
import type { ChoiceProblem, ProblemFacts } from '../../../src/engine/quote/choice-problem.ts';
import { problemWords } from '../../../src/offers/problem-words.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';

const at = (facts: ProblemFacts): ChoiceProblem => ({ path: 'somewhere', ...facts });

/** One of each kind, with the sentence that an American client reads. */
const SENTENCES: readonly (readonly [ProblemFacts, string])[] = [
  [
    { of: 'no such menu', menus: ['Quay Supper', 'Harvest table'] },
    'This offer doesn’t have that menu. Choose one of: Quay Supper, Harvest table.',
  ],
  [
    { of: 'no count of people', group: 'vendors', most: 100_000 },
    'The number of vendor meals must be a whole number from 0 to 100000.',
  ],
  [{ of: 'nobody comes' }, 'Enter the number of guests: at least one adult or child.'],
  [
    { of: 'beyond prices', menu: 'Quay Supper', most: 80, guests: 81 },
    'Quay Supper is priced for up to 80 guests, and this comes to 81. Please ask us for a price.',
  ],
  [
    { of: 'no such course', menu: 'Quay Supper', eachGuest: false },
    'Quay Supper doesn’t have that course to choose from.',
  ],
  [
    { of: 'no such course', menu: 'Quay Supper', eachGuest: true },
    'Quay Supper doesn’t have that course for each guest to choose from.',
  ],
  [{ of: 'dish twice', course: 'Sweets' }, 'A dish is chosen twice for Sweets. Choose different dishes.'],
  [
    { of: 'dish not offered', course: 'Sweets', eachGuest: false },
    'A dish you chose isn’t offered for Sweets. Choose again.',
  ],
  [{ of: 'dish not offered', course: 'Sweets', eachGuest: true }, 'This dish isn’t offered for Sweets.'],
  [{ of: 'dishes to choose', course: 'Sweets', due: 1, chosen: 3 }, 'Choose 1 dish for Sweets; you chose 3.'],
  [{ of: 'no count of a dish' }, 'Enter a whole number for each dish, 0 or more.'],
  [
    { of: 'counts do not add up', course: 'Mains', due: 10, sum: 8 },
    'The counts for Mains must add up to 10, one for each guest: 2 too few.',
  ],
  [
    { of: 'counts do not add up', course: 'Mains', due: 10, sum: 13 },
    'The counts for Mains must add up to 10, one for each guest: 3 too many.',
  ],
  [{ of: 'no such add-on' }, 'This add-on isn’t available with this menu.'],
  [{ of: 'no such hours', addOn: 'Bar', most: 72 }, 'Enter from 0 to 72 hours for Bar, in quarter hours.'],
  [
    { of: 'more than once', addOn: 'Bar' },
    'Bar is either taken (1) or not (0); its price goes by the guest count.',
  ],
  [{ of: 'no count of a need', need: 'vegan' }, 'Enter a whole number of guests for “vegan”.'],
  [
    { of: 'name of a need', wrong: { is: 'hidden', sign: 'U+200B' } },
    'The name of a need has an invisible character (U+200B).',
  ],
  [{ of: 'name of a need', wrong: { is: 'blank' } }, 'The name of a need has no visible character in it.'],
  [
    { of: 'name of a need', wrong: { is: 'loose' } },
    'The name of a need has letters that are not composed (Unicode NFC).',
  ],
  [
    { of: 'more with a need', need: 'vegan', guests: 2, people: 1 },
    '“vegan” is down for 2 guests, but only 1 is coming.',
  ],
  [{ of: 'crew', recorded: 4, given: 0 }, 'The caterer sets the number of crew meals: 4, not 0.'],
  [
    { of: 'beyond asking', most: 200, guests: 201 },
    'You can enter up to 200 guests here, and you entered 201. Please ask us for a new proposal.',
  ],
  [
    { of: 'many vendors', vendors: 3, guests: 1 },
    'That is 3 vendor meals for 1 guest at the table. Please ask us.',
  ],
];

describe('why a choice cannot be accepted', () => {
  test.each(SENTENCES)('%o', (facts, sentence) => {
    expect(problemWords(scriptWordsIn('en-US'), at(facts))).toBe(sentence);
    for (const locale of ['en-GB', 'de-DE'])
      expect(problemWords(scriptWordsIn(locale), at(facts))).toMatch(/^[A-Z“].*\.$/);
  });
});
