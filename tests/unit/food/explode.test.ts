import { expect, test } from 'vitest';
import { roundBatches } from '../../../src/engine/food/batches.ts';
import { explode } from '../../../src/engine/food/explode.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { food, line, q, recipe } from '../plan/builders.ts';

const oil = food('oil');
const dressing = recipe('dressing', ['1 qt', '16 servings'], [line(oil, '3 cups')], {
  name: 'Dressing',
  batches: 'half',
});
const salad = recipe('salad', '20 servings', [line(dressing, '2 cups'), line(food('leaves'), '2 lb')], {
  name: 'Salad',
  batches: 'whole',
});
const slaw = recipe('slaw', '10 servings', [line(dressing, '4 servings'), line(oil, '1 cup')], {
  name: 'Slaw',
});

test('the needs of a part are summed over all that use it, and rounded to batches once', () => {
  const { recipes, ingredients, gaps } = explode(
    [
      { recipe: salad, need: q('50 servings'), by: 'Salad' },
      { recipe: slaw, need: q('15 servings'), by: 'Slaw' },
      { recipe: dressing, need: q('1 cup'), by: 'Table' },
    ],
    roundBatches,
  );
  expect(gaps).toEqual([]);
  expect(recipes.map((each) => each.recipe.id)).toEqual(['dressing', 'salad', 'slaw']);
  const [first, second, third] = recipes.map((each) => ({
    usedBy: each.usedBy.map(({ by, need }) => `${by} ${exactText(need)}`),
    need: exactText(each.need),
    exact: each.exactBatches.toFraction(),
    batches: each.batches.toFraction(),
    makes: exactText(each.makes),
    lines: each.lines.map(({ amount }) => exactText(amount)),
  }));
  // 2½ batches of salad are cooked as 3; 1½ of slaw as they are.
  expect(second).toEqual({
    usedBy: ['Salad 50 serving'],
    need: '50 serving',
    exact: '5/2',
    batches: '3',
    makes: '60 serving',
    lines: ['6 cup', '6 lb'],
  });
  expect(third).toMatchObject({ exact: '3/2', batches: '3/2', lines: ['6 serving', '3/2 cup'] });
  // ¼ qt for the table, 6 servings of a sixteenth for the slaw, 6 cups for the salad: 2⅛ qt, cooked as 2½.
  expect(first).toEqual({
    usedBy: ['Table 1/4 qt', 'Slaw 3/8 qt', 'Salad 3/2 qt'],
    need: '17/8 qt',
    exact: '17/8',
    batches: '5/2',
    makes: '5/2 qt',
    lines: ['15/2 cup'],
  });
  expect([...ingredients.keys()]).toEqual(['oil', 'leaves']);
  expect(ingredients.get('oil')!.uses.map((use) => `${use.recipe.id} ${exactText(use.amount)}`)).toEqual([
    'dressing 15/2 cup',
    'slaw 3/2 cup',
  ]);
});

test('a need in a unit that the recipe is not made in is left out and told, whoever has it', () => {
  const odd = recipe('odd', '10 servings', [line(dressing, '1 each')], { name: 'Odd' });
  const need = q('3 lb');
  const { recipes, ingredients, gaps } = explode(
    [
      { recipe: odd, need: q('10 servings'), by: 'Dish' },
      { recipe: salad, need, by: 'Other' },
    ],
    roundBatches,
  );
  expect(gaps).toEqual([
    { by: 'Other', recipe: salad, need, unit: 'serving' },
    { by: 'Odd', recipe: dressing, need: q('1 each'), unit: 'qt' },
  ]);
  expect(recipes.map((each) => [each.recipe.id, each.usedBy.length, exactText(each.need)])).toEqual([
    ['dressing', 1, '0 qt'],
    ['odd', 1, '10 serving'],
    ['salad', 0, '0 serving'],
  ]);
  // Of nothing, nothing is used.
  expect([...ingredients.keys()]).toEqual([]);
});
