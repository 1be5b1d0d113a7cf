import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  contradictions,
  conversionPath,
  conversionText,
  convert,
  parseConversion,
  slashReadings,
  unitsAlong,
} from '../../../src/engine/measure/conversions.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { refusal, understood } from './understood.ts';

const food = (...texts: string[]) => texts.map((text) => understood(parseConversion(text)));
const EXACTLY = new Fraction(0n);

function converted(text: string, to: string, ...conversions: string[]): string | undefined {
  const result = convert(understood(parseQuantity(text)), to, food(...conversions));
  return result && exactText(result);
}

describe("a food's own conversions", () => {
  it('read two amounts and are written as such', () => {
    expect(conversionText(food('1 can = 6 lb 6 oz')[0]!)).toBe('1 can = 6⅜ lb');
    expect(conversionText(food('1 loaf=20 pieces')[0]!)).toBe('1 loaf = 20 pieces');
  });

  it.each([
    ['1 can', 'is not a conversion'],
    ['1 can = 2 lb = 3 cups', 'is not a conversion'],
    [`1 can =${' '.repeat(160)}2 lb`, 'is not a conversion'],
    ['can = 2 lb', 'does not start with a number'],
    ['1 can = 0 lb', 'is zero'],
    ['1 case = 6/#10', '“6/#10” names cans by their trade number'],
    ['1 case = 6/#10', 'write 6 can here'],
    ['No. 10 can = 104 oz', 'write 1 can here'],
    ['1 lb = 15 oz', 'contradicts the definition of lb and oz'],
    ['1 can = 2 cans', 'contradicts the definition of can and can'],
    ['1 cup = 240 ml', 'contradicts the definition of cup and ml'],
  ])('refuse "%s"', (text, words) => {
    expect(refusal(parseConversion(text))).toContain(words);
  });

  it.each([
    // A count and a size, as on a price list (common practice, no source): 24 × 12 oz is 288 oz.
    ['1 case = 24/12 oz', '288 oz'],
    ['1 case = 12/8.8 oz', '528/5 oz'],
    ['1 case = 2/10 lb', '20 lb'],
    ['1 case = 4/1 gal', '4 gal'],
    ['1 case = 5/4 lb', '20 lb'],
    ['1 case = 1/1.5 lb', '3/2 lb'],
    // Fractions below one, in lowest terms.
    ['1 case = 1/2 gal', '1/2 gal'],
    ['1 slice = 1/20 loaf', '1/20 loaf'],
    ['1 scoop = 3/16 lb', '3/16 lb'],
    ['1 scoop = 1 1/2 oz', '3/2 oz'],
  ])('read the slash of "%s"', (text, amount) => {
    expect(exactText(food(text)[0]!.right)).toBe(amount);
  });

  it('hand back the readings of a slash that could mean something else, each as it is beyond doubt', () => {
    expect(slashReadings('1 case = 24/12 oz')).toEqual([
      { written: '24/12 oz', taken: '24 × 12 oz = 288 oz', amount: '288 oz', other: '2 oz' },
    ]);
    expect(slashReadings('3/16 lb = 1 scoop')).toEqual([
      { written: '3/16 lb', taken: 'a fraction of 1 lb', amount: '0.1875 lb', other: '48 lb' },
    ]);
    // No decimal ends at a seventh: seven of the other side are told instead.
    expect(slashReadings('1 tray = 3/7 loaf')).toEqual([
      {
        written: '3/7 loaf',
        taken: 'a fraction of 1 loaf',
        amount: '3 loaves, and 7 times the other side,',
        other: '21 loaves',
      },
    ]);
    // A part of a weight may be a pack of it, where a part of a loaf may not.
    expect(slashReadings('1 piece = 1/20 lb').map(({ amount, other }) => [amount, other])).toEqual([
      ['0.05 lb', '20 lb'],
    ]);
    // A fraction that is not in lowest terms, or not below one, is a count and a size.
    expect(slashReadings('2/10 lb = 6/8 oz').map(({ amount, other }) => [amount, other])).toEqual([
      ['20 lb', '⅕ lb'],
      ['48 oz', '¾ oz'],
    ]);
  });

  it.each([
    '1 case = 1/2 gal',
    '1 slice = 1/20 loaf',
    '1 case = 4/1 gal',
    '1/1 can = 2 lb',
    '1 can = 2 lb',
    'a can',
  ])('ask nothing about the slash of "%s"', (text) => {
    expect(slashReadings(text)).toEqual([]);
  });

  it.each(['1 case = 0/5 lb', '5/0 lb = 1 case'])('refuse the nothing in "%s"', (text) => {
    expect(refusal(parseConversion(text))).toContain('write both numbers above zero');
  });

  it('name the unit at which each of them arrives on the way', () => {
    const foods = food('1 can = 104 oz', '6 cans = 1 case', '1 lb = 2 cups');
    expect(unitsAlong('case', 'cup', foods)).toEqual(['can', 'oz', 'cup']);
    expect(unitsAlong('cup', 'case', foods)).toEqual(['lb', 'can', 'case']);
    // The same list asked for other units, and for the same again.
    expect(unitsAlong('case', 'g', foods)).toEqual(['can', 'oz']);
    expect(unitsAlong('cup', 'case', foods)).toEqual(['lb', 'can', 'case']);
    expect([unitsAlong('lb', 'oz', foods), unitsAlong('lb', 'jar', foods)]).toEqual([[], []]);
  });

  it('accept a definition written out', () => {
    food('1 lb = 16 oz', '1 dozen = 12 each', '1 l = 1000 ml');
  });

  it('lead by definition, by one step and through several', () => {
    expect(converted('3 lb', 'oz')).toBe('48 oz');
    expect(converted('18 each', 'dozen')).toBe('3/2 dozen');
    expect(converted('2 can', 'lb', '1 can = 104 oz')).toBe('13 lb');
    expect(converted('13 lb', 'can', '1 can = 104 oz')).toBe('2 can');
    expect(converted('1 case', 'cup', '1 can = 104 oz', '6 cans = 1 case', '1 lb = 2 cups')).toBe('78 cup');
    expect(converted('½ cup', 'g', '1 cup = 220 g')).toBe('110 g');
  });

  it('lead nowhere without a way, and then nothing is guessed', () => {
    expect(converted('1 lb', 'cup')).toBeUndefined();
    expect(converted('1 can', 'lb')).toBeUndefined();
    expect(converted('1 can', 'jar', '1 can = 1 lb', '1 jar = 1 cup')).toBeUndefined();
  });

  it('take the shortest way, and of equal ones the first written', () => {
    const conversions = food('1 case = 6 cans', '1 can = 104 oz', '1 case = 40 lb', '1 bag = 1 lb');
    const path = conversionPath('case', 'bag', conversions)!;
    expect(path.map(conversionText)).toEqual(['1 case = 40 lb', '1 bag = 1 lb']);
    expect(conversionPath('lb', 'kg', conversions)).toEqual([]);
  });

  it('contradict each other where two ways give different factors', () => {
    const off = contradictions(food('1 can = 104 oz', '6 cans = 1 case', '1 case = 40 lb'), EXACTLY);
    expect(off).toHaveLength(1);
    expect(conversionText(off[0]!.conversion)).toBe('1 case = 40 lb');
    expect(off[0]!.route.map(conversionText)).toEqual(['6 cans = 1 case', '1 can = 104 oz']);
    // Half a pound too little is told as half a pound too much is.
    expect(contradictions(food('1 can = 7 lb', '1 can = 6½ lb'), EXACTLY)).toHaveLength(1);
    expect([off[0]!.says.toFraction(), off[0]!.routeSays.toFraction()]).toEqual(['40', '39']);
  });

  it('do not contradict each other within the tolerance asked for', () => {
    const conversions = food('1 can = 104 oz', '6 cans = 1 case', '1 case = 40 lb');
    expect(contradictions(conversions, new Fraction(1n, 39n))).toEqual([]);
    expect(contradictions(conversions, new Fraction(1n, 40n))).toHaveLength(1);
    expect(contradictions(food('1 can = 104 oz', '1 can = 6½ lb'), EXACTLY)).toEqual([]);
  });
});
