import { expect, test } from 'vitest';
import { cardWord, cardWords } from '../../../src/engine/food/card-word.ts';

test.each([
  ['Slow barley with mushrooms', undefined, 'SLOW BARLEY'],
  ['Slow barley with mushrooms', 'barley', 'BARLEY'],
  ['The hake, smoked', undefined, 'HAKE'],
  ['An apple tart', undefined, 'APPLE TART'],
  ['Fourteen chars', undefined, 'FOURTEEN CHARS'],
  // A character more than fits: its last word, if it reads like a noun, else the whole name.
  ['Hazelnut praline torte with cream', undefined, 'TORTE'],
  ['Hazelnut praline torte', undefined, 'HAZELNUT PRALINE TORTE'],
  ['Marinated carrots roasted with cumin', undefined, 'MARINATED CARROTS ROASTED WITH CUMIN'],
  ['Breast of guinea fowl with leeks', undefined, 'BREAST OF GUINEA FOWL WITH LEEKS'],
  ['Wintery spiced beetrootandapple with x', undefined, 'WINTERY SPICED BEETROOTANDAPPLE WITH X'],
  ['with mushrooms', undefined, 'WITH MUSHROOMS'],
])('%s (card: %s) is %s on its card', (name, card, word) => {
  expect(cardWord({ name, card })).toBe(word);
});

test('no two dishes of a course have one word: their whole names go first, then numbers', () => {
  const words = (...names: string[]) => cardWords(names.map((name) => ({ name, card: undefined })));
  expect(words('Hake with leeks', 'Hake with peas', 'Barley')).toEqual([
    'HAKE WITH LEEKS',
    'HAKE WITH PEAS',
    'BARLEY',
  ]);
  expect(words('Hake', 'Hake', 'Barley')).toEqual(['HAKE 1', 'HAKE 2', 'BARLEY']);
  expect(words('—', '…', 'Hake')).toEqual(['DISH 1', 'DISH 2', 'HAKE']);
});
