import { expect, test } from 'vitest';
import { CATALOGUE, type FindingCode } from '../../../src/book/findings/catalogue.ts';
import { FOOD_CATALOGUE } from '../../../src/book/findings/food-catalogue.ts';
import { FORM_CATALOGUE } from '../../../src/book/findings/form-catalogue.ts';

test('no code of a finding is given twice, in one part of the catalogue or in two', () => {
  for (const part of [FORM_CATALOGUE, FOOD_CATALOGUE])
    for (const [code, entry] of Object.entries(part))
      expect([code, CATALOGUE[code as FindingCode] === entry]).toEqual([code, true]);
});
