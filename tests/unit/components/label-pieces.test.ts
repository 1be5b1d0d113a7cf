import { expect, test } from 'vitest';
import { labelPieces } from '../../../src/components/kitchen/cards/label-pieces.ts';
import type { PlanLabel } from '../../../src/exports/form/sheets.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const say = wordsIn('en-US');
const LABEL_CAUTION = say('cautions.label');

const label: PlanLabel = {
  dish: 'Leek tart',
  container: 'Half sheet pan',
  of: '1 of 3',
  job: 'A supper, for the crew',
  date: 'Friday, May 21, 2027',
  amount: '24 pieces',
  guests: '',
  ingredients: 'Leeks, Cream (milk), Salt',
  contains: ['milk', 'wheat'],
  mayContain: [],
  madeOn: 'Thursday, May 20, 2027',
  useBy: 'Sunday, May 23, 2027',
  hold: 'cold',
  finish: '',
};

test('a short label is one piece in the large type', () => {
  expect(labelPieces(label, '', say)).toEqual([
    { label, ingredients: label.ingredients, size: 'large', part: '', prep: false, continued: false },
  ]);
});

test('a long list goes on over as many pieces as it needs, and no word of it is lost', () => {
  const ingredients = Array.from({ length: 200 }, (_, index) => `Ingredient ${index} (of a kind)`).join(', ');
  const pieces = labelPieces({ ...label, ingredients }, LABEL_CAUTION, say);
  expect(pieces.length).toBeGreaterThan(2);
  expect(pieces.map((piece) => piece.ingredients).join(' ')).toBe(ingredients);
  expect(pieces.map(({ part }) => part)).toEqual(pieces.map((_, at) => `${at + 1} of ${pieces.length}`));
});

test('a list that fits only in smaller type is not split', () => {
  const sizes = Array.from({ length: 40 }, (_, count) =>
    labelPieces(
      {
        ...label,
        ingredients: Array.from({ length: count + 1 }, () => 'Black pepper').join(', '),
      },
      LABEL_CAUTION,
      say,
    ),
  );
  const small = sizes.find(([first]) => first?.size === 'small');
  expect(small).toHaveLength(1);
});

test('the standing caution has its room: with a longer one, fewer ingredients stand on a piece', () => {
  const ingredients = Array.from({ length: 60 }, () => 'Black pepper').join(', ');
  const [first] = labelPieces({ ...label, ingredients }, LABEL_CAUTION, say);
  const [other] = labelPieces({ ...label, ingredients }, LABEL_CAUTION.repeat(6), say);
  expect(other!.ingredients.length).toBeLessThan(first!.ingredients.length);
});

test('a label with a long name and many guests goes on over a few pieces, never word by word', () => {
  const pieces = labelPieces(
    {
      ...label,
      dish: 'Smoked trout and horseradish on rye (polenta squares with chives instead of dark rye bread)',
      guests: `Made separately for 3 × no gluten: ${'Somebody Longname, Table 3; '.repeat(3)}`,
      contains: ['FISH (TROUT)', 'MILK', 'MUSTARD', 'SULPHUR DIOXIDE AND SULPHITES'],
      mayContain: ['SESAME'],
      ingredients: Array.from({ length: 24 }, (_, index) => `Ingredient ${index}`).join(', '),
      finish: 'Build on site; do not travel with built toasts.',
    },
    LABEL_CAUTION,
    say,
  );
  expect(pieces.length).toBeGreaterThan(1);
  expect(pieces.length).toBeLessThanOrEqual(4);
  expect(pieces.map(({ continued }) => continued)).toEqual(pieces.map((_, index) => index > 0));
});
