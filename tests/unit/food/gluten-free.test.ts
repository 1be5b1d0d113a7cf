import { describe, expect, test } from 'vitest';
import { GLUTEN_FREE_LIMIT, parseGlutenTested } from '../../../src/engine/food/gluten-free.ts';
import { legendFor } from '../../../src/views/diet-marks.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

const say = wordsIn('en-US');

describe('gluten-free', () => {
  test('is said only where the kitchen states below what it tests', () => {
    const [plain] = legendFor(say, [{ marks: ['no gluten'] }]);
    expect(plain?.meaning).toMatch(/this is not gluten-free$/);
    const [tested] = legendFor(say, [{ marks: ['no gluten', 'vegan'] }], '20 mg/kg').slice(-1);
    expect(tested).toEqual({
      mark: 'no gluten',
      meaning:
        'gluten-free: no ingredient contains gluten, and by our own statement tested below 20 mg/kg of gluten',
    });
  });

  // 21 CFR 101.91 (a) (3) and Implementing Regulation (EU) 828/2014, Annex: 20 parts per million, 20 mg/kg. From memory.
  test('may be stated up to the limit of the law and no further', () => {
    expect(GLUTEN_FREE_LIMIT).toBe(20);
    expect(parseGlutenTested('tested below 20 ppm')).toEqual({ ok: true, value: '20 mg/kg' });
    expect(parseGlutenTested('tested below 5 mg/kg')).toEqual({ ok: true, value: '5 mg/kg' });
    for (const text of ['tested below 21 mg/kg', 'tested below 99.9 ppm', 'yes', 'tested', 'below 20', ''])
      expect(parseGlutenTested(text), text).toMatchObject({ ok: false });
  });
});
