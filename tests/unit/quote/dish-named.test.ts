import { expect, test } from 'vitest';
import { dishNamed } from '../../../src/engine/quote/dish-named.ts';
import { sampleDish } from './sample-terms.ts';

const dishes = [
  sampleDish({ recipe: 'lamb-shoulder', name: 'Slow lamb with mint' }),
  sampleDish({ recipe: 'barley', name: 'Slow barley with mushrooms' }),
  sampleDish({ recipe: 'hake', name: 'Hake with mint and lemon' }),
  sampleDish({ recipe: 'minted-pea-cake', name: 'Mint' }),
  sampleDish({ recipe: 'mint-ice', name: 'Mint ice' }),
  // A dish that stands in its course under two names, as it is and for a need.
  sampleDish({ recipe: 'tart', name: 'Leek tart' }),
  sampleDish({ recipe: 'tart', name: 'Leek tart without cream' }),
];

test.each([
  ['Slow lamb with mint', 'lamb-shoulder'],
  [' HAKE ', 'hake'],
  ['lamb-shoulder', 'lamb-shoulder'],
  ['slow l', 'lamb-shoulder'],
  ['slow', undefined],
  ['mushrooms', 'barley'],
  ['mush', 'barley'],
  // The whole name goes before the beginning of a word in others.
  ['mint', 'minted-pea-cake'],
  ['with', undefined],
  ['ushrooms', undefined],
  ['leek', 'tart'],
  ['trout', undefined],
  ['', ''],
  ['  ', ''],
])('“%s” names %s', (text, recipe) => {
  expect(dishNamed(text, { dishes })).toBe(recipe);
});
