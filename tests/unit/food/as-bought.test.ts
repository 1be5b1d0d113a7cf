import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { isWholePiece } from '../../../src/engine/food/as-bought.ts';
import { explode, purchasedIn } from '../../../src/engine/food/explode.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { RecipeLine } from '../../../src/engine/food/recipe.ts';
import { yieldOf } from '../../../src/engine/food/yield.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { food, line, recipe } from '../plan/builders.ts';

/** What one recipe line comes to as bought in a unit, exact. */
function bought(of: Ingredient, each: RecipeLine, unit: string): string {
  const dish = recipe('dish', '1 serving', [each]);
  const { ingredients } = explode([{ recipe: dish, need: dish.makes[0], by: 'test' }], (exact) => exact);
  const [use] = ingredients.get(of.id)?.uses ?? [];
  const need = use && purchasedIn(use, unit, of);
  return need ? exactText(need) : 'there is no conversion';
}

const share = (text: string) => new Fraction(text);
const lettuce = food('butter-lettuce', {
  sold: ['1 head = 8 oz', '1 leaf = 1/2 oz', '1 cup = 2 oz'],
  yield: share('3/4'),
});
const lemon = food('lemon', {
  sold: ['1 each = 4 oz', '1 cup = 8 oz'],
  yields: new Map([['juiced', share('2/5')]]),
});
const beans = food('canned-beans', {
  sold: ['1 can = 100 oz'],
  yields: new Map([['drained', share('13/20')]]),
});
const garlic = food('garlic', {
  sold: ['1 head = 12 cloves', '1 clove = 1/8 oz', '1 head = 2 oz'],
  yield: share('7/8'),
});

describe('a recipe line as it is bought', () => {
  test('a counted whole piece, head, bunch, ear or pack is as bought, however it is prepared', () => {
    expect(bought(lettuce, line(lettuce, '8 heads'), 'head')).toBe('8 head');
    expect(bought(lettuce, line(lettuce, '8 heads', 'torn'), 'lb')).toBe('4 lb');
    expect(bought(lemon, line(lemon, '10 each', 'juiced'), 'each')).toBe('10 each');
    expect(bought(lemon, line(lemon, '1 dozen', 'juiced'), 'each')).toBe('12 each');
    expect(bought(beans, line(beans, '4 cans', 'drained'), 'can')).toBe('4 can');
  });

  test('a weight or a volume is of the food made ready, so more is bought', () => {
    expect(bought(lettuce, line(lettuce, '3 lb'), 'head')).toBe('8 head');
    expect(bought(lettuce, line(lettuce, '12 cups', 'torn'), 'head')).toBe('4 head');
    expect(bought(lemon, line(lemon, '2 cups', 'juiced'), 'each')).toBe('10 each');
    // A can of 100 oz leaves 65 oz when drained.
    expect(bought(beans, line(beans, '130 oz', 'drained'), 'can')).toBe('2 can');
  });

  test('a made-ready piece loses its trim where it goes by weight, none where it is counted into a whole one', () => {
    expect(bought(lettuce, line(lettuce, '12 leaves'), 'lb')).toBe('1/2 lb');
    expect(bought(garlic, line(garlic, '24 cloves', 'peeled'), 'head')).toBe('2 head');
    expect(bought(garlic, line(garlic, '28 cloves', 'peeled'), 'oz')).toBe('4 oz');
    expect(bought(garlic, line(garlic, '2 heads', 'peeled'), 'oz')).toBe('4 oz');
    expect(bought(garlic, line(garlic, '28 cloves', 'peeled'), 'clove')).toBe('28 clove');
  });

  test('says otherwise where it is written as purchased or trimmed', () => {
    expect(bought(lettuce, line(lettuce, '3 lb', 'as purchased'), 'head')).toBe('6 head');
    expect(bought(lettuce, { ...line(lettuce, '6 heads'), trimmed: true }, 'head')).toBe('8 head');
    expect(bought(garlic, line(garlic, '28 cloves', 'as purchased'), 'oz')).toBe('7/2 oz');
  });

  test('asks for no yield of what is as bought', () => {
    expect(yieldOf(lemon, line(lemon, '10 each', 'sliced')).basis).toBe('as purchased');
    expect(yieldOf(lemon, line(lemon, '10 oz', 'sliced')).basis).toBe('unsaid');
  });

  test.each(['each', 'dozen', 'head', 'large head', 'bunch', 'ear', 'bulb', 'can', 'loaf', 'sheet', 'egg'])(
    '%s is a whole piece',
    (unit) => expect(isWholePiece(unit)).toBe(true),
  );

  test.each([
    'clove',
    'leaf',
    'outer leaf',
    'sprig',
    'stalk',
    'slice',
    'wedge',
    'floret',
    'lb',
    'cup',
    'fl oz',
  ])('%s is none', (unit) => expect(isWholePiece(unit)).toBe(false));
});
