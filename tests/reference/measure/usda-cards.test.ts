import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { convert, parseConversion } from '../../../src/engine/measure/conversions.ts';
import { kitchenAmount } from '../../../src/engine/measure/kitchen-amount.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { exactText, timesQuantity } from '../../../src/engine/measure/quantity.ts';
import { understood } from '../../unit/measure/understood.ts';

const GLYPH: Record<string, string> = { '1/4': '¼', '1/3': '⅓', '1/2': '½', '2/3': '⅔', '3/4': '¾' };

/** A card's words in Salver's spelling: the fraction glyphs, `tbsp` in lower case; nothing else. */
function inGlyphs(card: string): string {
  return card
    .replace('Tbsp', 'tbsp')
    .replace(
      /(\d )?(\d\/\d)/g,
      (_, whole: string | undefined, part: string) => (whole ?? '').trim() + GLYPH[part],
    );
}

function scaled(card: string, factor: Fraction, rule: 'line' | 'at-least'): string {
  return kitchenAmount(timesQuantity(understood(parseQuantity(card)), factor), 'us', rule);
}

/*
 * Source: USDA Recipes for Schools, E-09 Potato Salad, and Baked Beans With Canned Vegetarian Beans (public
 * domain): every weight and every measure of both cards, for 50 and for 100 servings. On both cards every
 * line for 100 is exactly twice the line for 50, so each is checked in both directions without tolerance.
 */
const CARDS: readonly [line: string, for50: string, for100: string][] = [
  ['E-09 potatoes, as purchased', '9 lb 5 oz', '18 lb 10 oz'],
  ['E-09 celery, weight', '1 lb 2 oz', '2 lb 4 oz'],
  ['E-09 celery, measure', '1 qt 1/4 cup', '2 qt 1/2 cup'],
  ['E-09 celery, as purchased', '1 lb 6 oz', '2 lb 12 oz'],
  ['E-09 onions, weight', '7 1/2 oz', '15 oz'],
  ['E-09 onions, measure', '1 1/4 cups', '2 1/2 cups'],
  ['E-09 relish, weight', '6 oz', '12 oz'],
  ['E-09 relish, measure', '2/3 cup', '1 1/3 cups'],
  ['E-09 eggs', '12 each', '24 each'],
  ['E-09 dressing, weight', '1 lb 10 oz', '3 lb 4 oz'],
  ['E-09 dressing, measure', '3 cups', '1 qt 2 cups'],
  ['E-09 salt', '1 Tbsp', '2 Tbsp'],
  ['E-09 pepper', '1 tsp', '2 tsp'],
  ['E-09 mustard', '1 Tbsp', '2 Tbsp'],
  ['Baked Beans, beans, weight', '14 lb 10 oz', '29 lb 4 oz'],
  ['Baked Beans, beans, measure', '1 gal 2 qt 1 1/2 cups', '3 gal 3 cups'],
  ['Baked Beans, beans, No. 10 cans', '2 1/4 cans', '4 1/2 cans'],
  ['Baked Beans, onions, weight', '1 lb 8 oz', '3 lb'],
  ['Baked Beans, onions, measure', '1 1/2 cups', '3 cups'],
  ['Baked Beans, peppers, weight', '1 lb', '2 lb'],
  ['Baked Beans, peppers, measure', '3 cups', '1 qt 2 cups'],
  ['Baked Beans, ground mustard', '2 Tbsp', '1/4 cup'],
  ['Baked Beans, yellow mustard, weight', '5 1/3 oz', '10 2/3 oz'],
  ['Baked Beans, yellow mustard, measure', '1/2 cup', '1 cup'],
  ['Baked Beans, brown sugar, weight', '2 lb', '4 lb'],
  ['Baked Beans, brown sugar, measure', '1 qt', '2 qt'],
  ['Baked Beans, granulated sugar, weight', '1 lb', '2 lb'],
  ['Baked Beans, granulated sugar, measure', '2 cups', '1 qt'],
  ['Baked Beans, tomato paste, weight', '10 oz', '1 lb 4 oz'],
  ['Baked Beans, tomato paste, measure', '1 cup 1 Tbsp 1 tsp', '2 cups 2 Tbsp 2 tsp'],
  ['Baked Beans, pineapple, weight', '2 lb 8 oz', '5 lb'],
  ['Baked Beans, pineapple, measure', '1 qt 1 cup', '2 qt 2 cups'],
  ['Baked Beans, vinegar', '2 Tbsp 1 tsp', '1/4 cup 2 tsp'],
  ['Baked Beans, liquid smoke', '2 Tbsp', '1/4 cup'],
  ['Baked Beans, black pepper', '1 tsp', '2 tsp'],
  ['Baked Beans, cinnamon', '1 Tbsp', '2 Tbsp'],
  ['Baked Beans, allspice', '1 tsp', '2 tsp'],
  // Carries printed on further USDA cards.
  ['other cards', '2 1/3 cups', '1 qt 2/3 cup'],
  ['other cards', '3 cups 2 Tbsp', '1 qt 2 1/4 cups'],
  ['other cards', '2 qt 1 cup', '1 gal 2 cups'],
  ['other cards', '1 Tbsp 1 1/2 tsp', '3 Tbsp'],
  // Creamy Coleslaw for Schools, USDA and Institute of Child Nutrition: green onions, purple cabbage.
  ['Creamy Coleslaw, green onions', '10 oz', '1 lb 4 oz'],
];

describe('the lines of USDA recipe cards', () => {
  it.each(CARDS)('%s: %s doubled prints as the card for 100', (_, for50, for100) => {
    for (const rule of ['line', 'at-least'] as const) {
      expect(scaled(for50, new Fraction(2n), rule)).toBe(inGlyphs(for100));
    }
  });

  it.each(CARDS)('%s: halving what the card has for 100 prints %s', (_, for50, for100) => {
    for (const rule of ['line', 'at-least'] as const) {
      expect(scaled(for100, new Fraction(1n, 2n), rule)).toBe(inGlyphs(for50));
    }
  });

  it.each(CARDS)('%s: both amounts of the card print as they stand', (_, for50, for100) => {
    for (const card of [for50, for100]) expect(scaled(card, new Fraction(1n), 'line')).toBe(inGlyphs(card));
  });

  // Baked Beans card: 14 lb 10 oz = 1 gal 2 qt 1½ cups = 2¼ No. 10 cans; published with it, a can is
  // 104 oz and 11.33 cups.
  it("give the canned beans' own conversions: a No. 10 can of 104 oz holds 11.33 cups", () => {
    const beans = ['14 lb 10 oz = 2 1/4 cans', '1 gal 2 qt 1 1/2 cups = 2 1/4 cans'].map((text) =>
      understood(parseConversion(text)),
    );
    const can = understood(parseQuantity('1 can'));
    expect(exactText(convert(can, 'oz', beans)!)).toBe('104 oz');
    const cups = convert(can, 'cup', beans)!.amount;
    expect(cups.round(2).equals('11.33')).toBe(true);
  });

  // USDA cards: a No. 10 can of diced tomatoes, 6 lb 6 oz, is 3 qt ½ cup.
  it('give diced tomatoes a weight for a volume through the can', () => {
    const tomatoes = ['1 can = 6 lb 6 oz', '1 can = 3 qt 1/2 cup'].map((text) =>
      understood(parseConversion(text)),
    );
    const lots = understood(parseQuantity('6 qt 1 cup'));
    expect(kitchenAmount(convert(lots, 'lb', tomatoes)!, 'us', 'line')).toBe('12 lb 12 oz');
    expect(kitchenAmount(convert(lots, 'can', tomatoes)!, 'us', 'line')).toBe('2 cans');
  });
});
