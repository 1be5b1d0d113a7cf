import { describe, expect, it } from 'vitest';
import { kitchenAmount } from '../../../src/engine/measure/kitchen-amount.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { quantity } from '../../../src/engine/measure/quantity.ts';
import { understood } from './understood.ts';

const us = (text: string, rule: 'line' | 'at-least' = 'line') =>
  kitchenAmount(understood(parseQuantity(text)), 'us', rule);
const metric = (text: string, rule: 'line' | 'at-least' = 'line') =>
  kitchenAmount(understood(parseQuantity(text)), 'metric', rule);

describe('a kitchen amount in US measures', () => {
  it.each([
    ['6 tbsp', '¼ cup 2 tbsp'],
    ['17 tsp', '⅓ cup 1 tsp'],
    ['11 tbsp', '½ cup 3 tbsp'],
    ['5 pt', '2 qt 2 cups'],
    ['3 pt', '1 qt 2 cups'],
    ['1 gal 1 tbsp', '1 gal 1 tbsp'],
    ['0.5 oz', '½ oz'],
    ['2.5 lb', '2 lb 8 oz'],
    ['100½ lb', '100 lb 8 oz'],
  ])('holds %s exactly as %s', (exact, shown) => {
    expect(us(exact)).toBe(shown);
    expect(us(exact, 'at-least')).toBe(shown);
  });

  it.each([
    ['240 ml', '1 cup', '1 cup 1 tsp'],
    ['4.09 cups', '1 qt 1 tbsp', '1 qt 2 tbsp'],
    ['1 kg', '2 lb 3¼ oz', '2 lb 3⅓ oz'],
    ['1.01 lb', '1 lb ¼ oz', '1 lb ¼ oz'],
    ['1.01 gal', '1 gal ¼ cup', '1 gal ¼ cup'],
    ['1.36 tsp', '1⅜ tsp', '1⅜ tsp'],
    ['0.34 tsp', '⅓ tsp', '0.34 tsp'],
    ['300.01 gal', '300 gal', '301 gal'],
  ])('prints %s as %s on a line, and %s to hold at least as much', (exact, line, atLeast) => {
    expect([us(exact), us(exact, 'at-least')]).toEqual([line, atLeast]);
  });

  it('keeps the ratio of salt and leavening where spoons are too coarse', () => {
    expect(us('3/16 tsp')).toBe('3/16 tsp');
    expect(us('1/3 tsp')).toBe('⅓ tsp');
    expect(us('1.05 tsp')).toBe('1 1/16 tsp');
  });
});

describe('a kitchen amount in metric measures', () => {
  it.each([
    ['0.7 g', '0.7 g', '0.7 g'],
    ['12.44 g', '12.4 g', '12.5 g'],
    ['250.2 g', '250 g', '251 g'],
    ['250.5 g', '251 g', '251 g'],
    ['999.6 g', '1 kg', '1 kg'],
    ['1234 g', '1.23 kg', '1.24 kg'],
    ['2.5 kg', '2.5 kg', '2.5 kg'],
    ['0.004 kg', '4 g', '4 g'],
    ['1 lb', '454 g', '454 g'],
    ['1 gal', '3.79 l', '3.79 l'],
    ['1 tsp', '5 ml', '5 ml'],
    ['3 cl', '30 ml', '30 ml'],
  ])('prints %s as %s on a line, and %s to hold at least as much', (exact, line, atLeast) => {
    expect([metric(exact), metric(exact, 'at-least')]).toEqual([line, atLeast]);
  });
});

describe('a kitchen amount of things counted', () => {
  it.each([
    ['1 loaf', '1 loaf', '1 loaf'],
    ['10 loaves', '10 loaves', '10 loaves'],
    ['5/2 bunches', '2½ bunches', '2½ bunches'],
    ['½ head', '½ head', '½ head'],
    ['50/3 roasts', '16⅔ roasts', '16⅔ roasts'],
    ['3.01 heads', '3 heads', '3 1/16 heads'],
    ['99.9 pieces', '100 pieces', '100 pieces'],
  ])('prints %s as %s on a line, and %s to hold at least as much', (exact, line, atLeast) => {
    for (const print of [us, metric])
      expect([print(exact), print(exact, 'at-least')]).toEqual([line, atLeast]);
  });
});

it('prints nothing as nothing, and refuses less than nothing', () => {
  expect(kitchenAmount(quantity(0n, 'gal'), 'us', 'line')).toBe('0 gal');
  expect(() => kitchenAmount(quantity(-1n, 'gal'), 'us', 'line')).toThrow('-1 gal is negative');
});
