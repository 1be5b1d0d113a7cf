import { expect, test } from 'vitest';
import { linesFact } from '../../../src/components/kitchen/lines-fact.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const say = wordsIn('en-US');

test('guests are served from lines, and plates of a plated menu are made on them', () => {
  expect(linesFact('buffet', 2, say)).toEqual(['Serving lines', '2']);
  expect(linesFact('stations', 1, say)).toEqual(['Serving lines', '1']);
  expect(linesFact('plated', 2, say)).toEqual(['Plating lines', '2']);
  expect(linesFact('family style', 1, say)).toEqual(['Dish-up lines', '1']);
});
