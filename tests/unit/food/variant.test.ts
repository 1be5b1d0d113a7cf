import { describe, expect, test } from 'vitest';
import { mayHelp, parseNeed } from '../../../src/engine/food/need.ts';
import type { RecipeChange } from '../../../src/engine/food/recipe.ts';
import { recipeCalled } from '../../../src/engine/food/recipe-called.ts';
import { itemId } from '../../../src/engine/food/swap-item.ts';
import {
  changedFor,
  needsOnRequest,
  recipeSuits,
  rulingOut,
  variantFor,
} from '../../../src/engine/food/variant.ts';
import type { Statement } from '../../../src/engine/text/statement.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import { callChangedIn } from '../../../src/offers/event/call-changed.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

const told = (changes: readonly Statement[] = []) => changes.map(statementsIn('en-US'));

const need = (text: string) => must(parseNeed(text));
const butter = food('butter', { name: 'Butter, unsalted', from: ['milk'], allergens: ['milk'] });
const oil = food('oil', { name: 'Olive oil' });
const bread = food('bread', { name: 'Rye bread', allergens: ['rye', 'wheat'] });
const cornBread = recipe('corn-bread', '12 slices', [line(food('cornmeal'), '1 lb')], { name: 'Corn bread' });
const honey = food('honey', { name: 'Honey', from: ['honey'] });

const without = (item: string, ...needs: string[]): RecipeChange => ({ item, instead: undefined, needs });
const swap = (item: string, instead: typeof oil | typeof cornBread, ...needs: string[]): RecipeChange => ({
  item,
  instead:
    'lines' in instead ? { kind: 'recipe', recipe: instead } : { kind: 'ingredient', ingredient: instead },
  needs,
});

const toast = recipe('toast', '20 pieces', [line(bread, '10 slices'), line(butter, '4 oz')], {
  name: 'Toast',
  batches: 'whole',
  changes: [swap('bread', cornBread, 'no gluten'), without('butter', 'vegan')],
});

describe('a need', () => {
  test('may be several things that one guest needs together', () => {
    expect(need('Vegan +  no gluten')).toEqual({
      kind: 'all',
      of: [
        { kind: 'diet', diet: 'vegan' },
        { kind: 'diet', diet: 'no gluten' },
      ],
    });
    expect(parseNeed('vegan + kiwi')).toMatchObject({
      ok: false,
      what: '“kiwi” is not a diet or allergy that Salver knows',
    });
    expect(parseNeed('vegan +').ok).toBe(false);
  });

  test('is known in the plural, as people write it', () => {
    expect(need('almonds')).toEqual(need('almond'));
    expect(need('brazil nuts')).toEqual(need('brazil nut'));
    expect(['cashews', 'pistachios', 'hazelnuts'].map(need)).toEqual(
      ['cashew', 'pistachio', 'hazelnut'].map(need),
    );
  });

  test('is helped by what is done for a stricter diet, or an allergen that both are about', () => {
    const helps = (done: string, asked: string) => mayHelp(need(done), need(asked));
    expect(helps('vegan', 'vegetarian')).toBe(true);
    expect(helps('vegetarian', 'vegan')).toBe(false);
    expect(helps('tree nuts', 'almond')).toBe(true);
    expect(helps('almond', 'nuts')).toBe(true);
    expect(helps('spelt', 'wheat')).toBe(true);
    // For a diet traces do not matter, for an allergy they do: the cook must have meant it.
    expect(helps('vegan', 'milk')).toBe(false);
    expect(helps('no gluten', 'vegan + no gluten')).toBe(true);
  });
});

describe('a recipe made for a need', () => {
  test('leaves out what stands against it, and is another recipe in exact batches', () => {
    const made = variantFor(toast, need('vegan'));
    expect(told(made?.changes)).toEqual(['without butter']);
    expect(made?.recipe).toMatchObject({
      id: 'toast--without-butter',
      batches: 'exact',
    });
    expect(recipeCalled(made!.recipe, callChangedIn('en-US')).name).toBe('Toast (without butter)');
    expect(made?.recipe.lines.map(({ item }) => itemId(item))).toEqual(['bread']);
  });

  test('swaps in the same amount, with the name of what it replaces, and leaves alone what suits anyway', () => {
    const made = variantFor(toast, need('no gluten'));
    expect(made?.recipe.id).toBe('toast--corn-bread-for-bread');
    expect(
      made?.recipe.lines.map(({ item, amount, insteadOf }) => [itemId(item), amount.unit, insteadOf]),
    ).toEqual([
      ['corn-bread', 'slice', ['rye bread']],
      ['butter', 'oz', undefined],
    ]);
  });

  test('meets several needs of one guest at once, or is not made', () => {
    expect(told(variantFor(toast, need('vegan + no gluten'))?.changes)).toEqual([
      'corn bread instead of rye bread',
      'without butter',
    ]);
    expect(variantFor(toast, need('vegan + sesame'))?.recipe.id).toBe('toast--without-butter');
    expect(variantFor(toast, need('no gluten + milk'))).toBeUndefined();
  });

  test('reaches down into the recipes it is made of', () => {
    const dressing = recipe('dressing', '1 qt', [line(honey, '1 oz'), line(oil, '1 cup')], {
      changes: [without('honey', 'vegan')],
    });
    const salad = recipe('salad', '10 servings', [line(dressing, '1 cup'), line(food('leaves'), '1 lb')]);
    const made = variantFor(salad, need('vegan'));
    expect(made?.recipe.id).toBe('salad--dressing--without-honey');
    expect(told(made?.changes)).toEqual(['without honey']);
    expect(itemId(made!.recipe.lines[0]!.item)).toBe('dressing--without-honey');
    expect(itemId(salad.lines[0]!.item)).toBe('dressing');
  });

  test('is the same recipe for every need that asks for the same changes', () => {
    expect(variantFor(toast, need('vegetarian'))).toBeUndefined();
    const tart = recipe(
      'tart',
      '8 pieces',
      [line(food('bacon', { from: ['pork'] }), '4 oz'), line(oil, '1 cup')],
      {
        changes: [without('bacon', 'vegan, no pork'.split(', ')[0]!, 'no pork')],
      },
    );
    expect(variantFor(tart, need('vegetarian'))?.recipe.id).toBe(
      variantFor(tart, need('no pork'))?.recipe.id,
    );
  });

  test('is never made where something is left that stands against the need, or nobody has said', () => {
    const relish = food('relish', { contains: undefined });
    const dish = recipe('dish', '1 lb', [line(butter, '1 oz'), line(relish, '1 oz')], {
      changes: [without('butter', 'vegan', 'milk')],
    });
    expect(variantFor(dish, need('milk'))).toBeUndefined();
    expect(changedFor(dish, need('milk'))?.recipe.lines).toHaveLength(1);
    expect(recipeSuits(dish, need('sesame'))).toBe('unknown');
    expect(rulingOut(changedFor(dish, need('milk'))!.recipe, need('milk'))).toEqual(['relish']);
  });

  test('is never made of nothing', () => {
    const plate = recipe('plate', '1 lb', [line(butter, '1 lb')], { changes: [without('butter', 'milk')] });
    expect(variantFor(plate, need('milk'))).toBeUndefined();
  });

  test('counts a warning like the allergen for an allergy', () => {
    const spread = food('spread', { mayContain: [{ group: 'milk', kind: null }] });
    const dish = recipe('dish', '1 lb', [line(butter, '1 oz'), line(oil, '1 oz')], {
      changes: [swap('butter', spread, 'milk', 'vegan')],
    });
    expect(variantFor(dish, need('milk'))).toBeUndefined();
    expect(told(variantFor(dish, need('vegan'))?.changes)).toEqual(['spread instead of butter']);
  });
});

test('what a recipe can be made for is asked of every need its changes name, and of those besides', () => {
  expect(needsOnRequest(toast)).toEqual(['no gluten', 'vegan']);
  expect(needsOnRequest(toast, ['vegan', 'vegetarian', 'no pork'])).toEqual(['vegan', 'no gluten']);
});
