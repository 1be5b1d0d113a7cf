import { describe, expect, it } from 'vitest';
import { plural, singular } from '../../../src/engine/measure/count-words.ts';

describe('words for what is counted', () => {
  // As English spells them.
  it.each([
    ['can', 'cans'],
    ['loaf', 'loaves'],
    ['leaf', 'leaves'],
    ['half', 'halves'],
    ['bunch', 'bunches'],
    ['radish', 'radishes'],
    ['box', 'boxes'],
    ['glass', 'glasses'],
    ['fizz', 'fizzes'],
    ['potato', 'potatoes'],
    ['tomato', 'tomatoes'],
    ['mango', 'mangoes'],
    ['berry', 'berries'],
    ['patty', 'patties'],
    ['tray', 'trays'],
    ['pie', 'pies'],
    ['cookie', 'cookies'],
    ['quiche', 'quiches'],
    ['slice', 'slices'],
    ['sausage', 'sausages'],
    ['cheese', 'cheeses'],
    ['shell', 'shells'],
    ['gyro', 'gyros'],
    ['pc', 'pcs'],
    ['lens', 'lenses'],
    ['person', 'people'],
    ['woman', 'women'],
    ['half pan', 'half pans'],
    ['bay leaf', 'bay leaves'],
    ['box lunch', 'box lunches'],
  ])('are one %s and many %s', (one, many) => {
    expect([plural(one), singular(many)]).toEqual([many, one]);
    // One stays one.
    expect(singular(one)).toBe(one);
  });

  it.each(['molasses', 'fish', 'couscous', 'hummus', 'dozen', 'each', 'asparagus'])(
    'are %s for one and for many',
    (word) => {
      expect([plural(word), singular(word)]).toEqual([word, word]);
    },
  );

  it('are left as they are where no plural would lead back to them', () => {
    expect([plural('avocado'), plural('canvas'), singular('as')]).toEqual(['avocados', 'canvas', 'as']);
  });
});
