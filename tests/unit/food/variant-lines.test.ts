import { describe, expect, test } from 'vitest';
import { parseNeed } from '../../../src/engine/food/need.ts';
import type { Recipe, RecipeChange } from '../../../src/engine/food/recipe.ts';
import { recipeCalled } from '../../../src/engine/food/recipe-called.ts';
import { itemId } from '../../../src/engine/food/swap-item.ts';
import {
  changedFor,
  changesIn,
  needsOnRequest,
  rulingOut,
  variantFor,
} from '../../../src/engine/food/variant.ts';
import type { Statement } from '../../../src/engine/text/statement.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import { callChangedIn } from '../../../src/offers/event/call-changed.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

const told = (changes: readonly Statement[] = []) => changes.map(statementsIn('en-US'));

const need = (text: string) => must(parseNeed(text));
const item = (of: ReturnType<typeof food> | Recipe): RecipeChange['instead'] =>
  'lines' in of ? { kind: 'recipe', recipe: of } : { kind: 'ingredient', ingredient: of };
const change = (id: string, instead: RecipeChange['instead'], ...needs: string[]): RecipeChange => ({
  item: id,
  instead,
  needs,
});
const ids = (of: Recipe | undefined) => of?.lines.map((each) => itemId(each.item));

const butter = food('butter', { name: 'Butter, unsalted', from: ['milk'], allergens: ['milk'] });
const cream = food('cream', { name: 'Cream', from: ['milk'], allergens: ['milk'] });
const oil = food('oil', { name: 'Olive oil' });
const bread = food('bread', { name: 'Rye bread', allergens: ['rye'] });
const tahini = food('tahini', { name: 'Tahini', allergens: ['sesame'] });

describe('a line that suits a need', () => {
  test('stays, though its recipe would change it for that need', () => {
    const toast = recipe('toast', '1 lb', [line(bread, '1 lb'), line(butter, '1 oz')], {
      changes: [change('bread', item(oil), 'vegan', 'no gluten'), change('butter', undefined, 'vegan')],
    });
    const made = variantFor(toast, need('vegan'));
    expect(ids(made?.recipe)).toEqual(['bread']);
    expect(told(made?.changes)).toEqual(['without butter']);
  });

  test('of a recipe stays as well, with all that is in it', () => {
    const spread = recipe('spread', '1 lb', [line(oil, '1 lb')], {
      changes: [change('oil', undefined, 'vegan')],
    });
    const plate = recipe('plate', '1 lb', [line(spread, '1 lb'), line(butter, '1 oz')], {
      changes: [change('spread', undefined, 'vegan'), change('butter', undefined, 'vegan')],
    });
    expect(ids(variantFor(plate, need('vegan'))?.recipe)).toEqual(['spread']);
  });
});

describe('of several changes to one item', () => {
  test('the first whose food suits is made, wherever it stands', () => {
    const dish = recipe('dish', '1 lb', [line(butter, '1 lb'), line(oil, '1 oz')], {
      changes: [
        change('butter', item(cream), 'vegan', 'milk'),
        change('butter', item(tahini), 'vegan', 'milk'),
        change('butter', undefined, 'vegan', 'milk'),
      ],
    });
    expect(told(variantFor(dish, need('milk'))?.changes)).toEqual(['tahini instead of butter']);
    expect(told(variantFor(dish, need('milk + sesame'))?.changes)).toEqual(['without butter']);
  });

  test('the first is made where none suits, and then it is no variant', () => {
    const dish = recipe('dish', '1 lb', [line(butter, '1 lb'), line(oil, '1 oz')], {
      changes: [change('butter', item(cream), 'milk'), change('butter', item(bread), 'no gluten')],
    });
    expect(told(changedFor(dish, need('milk'))?.changes)).toEqual(['cream instead of butter']);
    expect(variantFor(dish, need('milk'))).toBeUndefined();
  });

  test('leaving an item out goes before what is swapped in where it is written first', () => {
    const dish = recipe('dish', '1 lb', [line(butter, '1 lb'), line(oil, '1 oz')], {
      changes: [change('butter', undefined, 'milk'), change('butter', item(tahini), 'milk')],
    });
    expect(told(variantFor(dish, need('milk'))?.changes)).toEqual(['without butter']);
  });

  test('one that is another item’s, or for another need, is not made', () => {
    const dish = recipe('dish', '1 lb', [line(butter, '1 lb'), line(bread, '1 oz')], {
      changes: [change('bread', undefined, 'milk'), change('butter', undefined, 'no gluten')],
    });
    expect(changedFor(dish, need('milk'))).toBeUndefined();
  });
});

describe('a part that is changed', () => {
  const dressing = recipe('dressing', '1 qt', [line(cream, '1 oz'), line(oil, '1 cup')], {
    name: 'Dressing',
    changes: [change('cream', undefined, 'milk')],
  });

  test('takes the place of the part, with its amount and note, and allows no further change', () => {
    const salad = recipe(
      'salad',
      '10 servings',
      [{ ...line(dressing, '2 cups', 'warmed'), note: 'at the last moment' }, line(tahini, '1 oz')],
      { name: 'Salad', batches: 'whole' },
    );
    const made = variantFor(salad, need('milk'))!.recipe;
    expect(made.lines[0]).toMatchObject({
      item: { kind: 'recipe', recipe: { id: 'dressing--without-cream', changes: [], batches: 'exact' } },
      preparation: 'warmed',
      note: 'at the last moment',
    });
    expect(made.lines[0]!.amount).toEqual(salad.lines[0]!.amount);
    expect(made).toMatchObject({ name: 'Salad', batches: 'exact', changes: [] });
    const called = recipeCalled(made, callChangedIn('en-US'));
    expect([called.name, called.lines[0]!.item]).toMatchObject([
      'Salad (without cream)',
      { recipe: { id: 'dressing--without-cream', name: 'Dressing (without cream)' } },
    ]);
    expect(recipeCalled(salad, callChangedIn('en-US'))).toBe(salad);
    expect(recipeCalled(made, callChangedIn('en-US'))).toBe(called);
    // A recipe that itself is as ever, of one part that is changed and one that is not.
    const plate = recipe('plate', '1 each', [line(made, '1 cup'), line(oil, '1 oz')]);
    expect(recipeCalled(plate, callChangedIn('en-US')).lines.map(({ item }) => item)).toMatchObject([
      { recipe: { name: 'Salad (without cream)' } },
      { kind: 'ingredient' },
    ]);
    expect(changesIn(made)).toEqual([]);
  });

  test('is not made where the line itself is changed', () => {
    const salad = recipe('salad', '1 lb', [line(dressing, '1 cup'), line(oil, '1 oz')], {
      changes: [change('dressing', item(tahini), 'milk')],
    });
    expect(told(variantFor(salad, need('milk'))?.changes)).toEqual(['tahini instead of dressing']);
  });

  test('and a line changed beside it are both told', () => {
    const salad = recipe('salad', '1 lb', [line(dressing, '1 cup'), line(butter, '1 oz')], {
      changes: [change('butter', item(oil), 'milk')],
    });
    const made = variantFor(salad, need('milk'))!;
    expect(told(made.changes)).toEqual(['without cream', 'olive oil instead of butter']);
    expect(made.recipe.id).toBe('salad--dressing--without-cream--oil-for-butter');
  });
});

test('a note of the line stays, beside the name of what it replaces', () => {
  const dish = recipe('dish', '1 lb', [{ ...line(butter, '1 lb'), note: 'soft' }, line(bread, '1 oz')], {
    changes: [change('butter', item(oil), 'milk')],
  });
  expect(variantFor(dish, need('milk'))?.recipe.lines.map((each) => [each.note, each.insteadOf])).toEqual([
    ['soft', ['butter']],
    [undefined, undefined],
  ]);
});

test('a name in the middle of a sentence keeps its capitals where they are its own', () => {
  const named = (name: string) => {
    const dish = recipe('dish', '1 lb', [line({ ...butter, name }, '1 lb'), line(oil, '1 oz')], {
      changes: [change('butter', undefined, 'milk')],
    });
    return told(variantFor(dish, need('milk'))?.changes)[0];
  };
  expect(['Butter, unsalted', 'UHT cream', 'crème Chantilly', 'Émulsion'].map(named)).toEqual([
    'without butter',
    'without UHT cream',
    'without crème Chantilly',
    'without émulsion',
  ]);
});

describe('a recipe that allows no change', () => {
  test('is made for no need, whatever it holds', () => {
    const plain = recipe('plain', '1 lb', [line(butter, '1 oz'), line(oil, '1 oz')]);
    expect(variantFor(plain, need('milk'))).toBeUndefined();
    expect(changedFor(plain, need('milk'))).toBeUndefined();
    expect(needsOnRequest(plain, ['milk', 'vegan'])).toEqual([]);
    expect(changesIn(plain)).toEqual([]);
  });

  test('for the need asked is left alone where it suits anyway', () => {
    const dish = recipe('dish', '1 lb', [line(butter, '1 lb'), line(bread, '1 oz')], {
      changes: [change('butter', undefined, 'milk')],
    });
    expect(variantFor(dish, need('sesame'))).toBeUndefined();
  });
});

test('a change for what is no need at all is the linker’s mistake, and is not passed over', () => {
  const dish = recipe('dish', '1 lb', [line(butter, '1 lb'), line(oil, '1 oz')], {
    changes: [change('butter', undefined, 'kiwi')],
  });
  expect(() => variantFor(dish, need('milk'))).toThrow(
    'a linked recipe names a need that is none: “kiwi” is not a diet or allergy that Salver knows',
  );
});

test('a food that nobody knows the allergens of is changed like one that stands against the need', () => {
  const relish = food('relish', { name: 'Relish', contains: undefined });
  const dish = recipe('dish', '1 lb', [line(relish, '1 lb'), line(oil, '1 oz')], {
    changes: [change('relish', undefined, 'milk', 'vegan')],
  });
  expect(told(variantFor(dish, need('milk'))?.changes)).toEqual(['without relish']);
  expect(told(variantFor(dish, need('vegan'))?.changes)).toEqual(['without relish']);
  expect(rulingOut(dish, need('milk'))).toEqual(['relish']);
});

test('what stands against a need is told of each food, a warning beside another that contains it too', () => {
  const crackers = food('crackers', { name: 'Crackers', mayContain: [{ group: 'milk', kind: null }] });
  const board = recipe('board', '1 lb', [line(butter, '1 oz'), line(crackers, '1 lb'), line(oil, '1 oz')]);
  expect(rulingOut(board, need('milk'))).toEqual(['butter', 'crackers']);
  expect(rulingOut(board, need('vegan'))).toEqual(['butter']);
  expect(rulingOut(board, need('vegan + milk + sesame'))).toEqual(['butter', 'crackers']);
  expect(rulingOut(board, need('sesame'))).toEqual([]);
});
