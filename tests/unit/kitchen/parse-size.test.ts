import { describe, expect, test } from 'vitest';
import { parseGrams } from '../../../src/engine/kitchen/parse-grams.ts';
import { parseBoxSize } from '../../../src/engine/kitchen/parse-size.ts';

describe('the size of a box', () => {
  test('is read in inches and metric units, by either sign, exactly', () => {
    const read = (text: string) => {
      const size = parseBoxSize(text);
      if (!size.ok) return size.what;
      const { length, width, height } = size.value;
      return [length, width, height].map((side) => side.toFraction());
    };
    expect(read('25 × 17 × 24½ in')).toEqual(['635', '2159/5', '6223/10']);
    expect(read('60x40x50 cm')).toEqual(['600', '400', '500']);
    for (const slip of [
      '25 × 17 in',
      '25 in × 17 in × 24 in',
      '25 × 17 × 24',
      '0 × 17 × 24 in',
      'wide',
      '25 × 17 × 24 × 2 in',
    ])
      expect(read(slip)).toBe(`“${slip}” is not the size of a box`);
  });

  test('a weight is read in the units of weights alone', () => {
    const read = parseGrams('2 lb');
    expect(read.ok && read.value.toFraction()).toBe('45359237/50000');
    expect(parseGrams('2 cups').ok).toBe(false);
  });
});
