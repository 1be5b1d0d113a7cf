import { expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { recipeCalled } from '../../../src/engine/food/recipe-called.ts';
import { callsFor, linesCallingFor, withItemSwapped } from '../../../src/engine/food/swap-item.ts';
import { callChangedIn } from '../../../src/offers/event/call-changed.ts';
import { food, line, recipe } from '../plan/builders.ts';

const butter = food('butter', { name: 'Butter', from: ['milk'], allergens: ['milk'] });
const oil = food('oil', { name: 'Olive oil' });
const leek = food('leek', { name: 'Leeks' });
const ghee = recipe('ghee', '1 lb', [line(butter, '1 lb')], { name: 'Ghee' });
const called = (of: Recipe) => recipeCalled(of, callChangedIn('en-US'));
const item = (of: typeof oil) => ({ kind: 'ingredient' as const, ingredient: of });

const crust = recipe('crust', '1 lb', [line(butter, '6 oz', 'melted'), line(food('flour'), '1 lb')], {
  name: 'Crust',
});
const filling = recipe('filling', '1 qt', [line(leek, '2 lb')], { name: 'Filling' });
const noted = { ...line(butter, '1 tbsp'), note: 'to brush' };
const tart = recipe('tart', '8 pieces', [line(crust, '1 lb'), line(filling, '1 qt'), noted], {
  name: 'Leek tart',
  changes: [
    { item: 'butter', instead: undefined, needs: ['vegan'] },
    { item: 'leek', instead: item(butter), needs: ['celery'] },
    { item: 'crust', instead: item(leek), needs: ['no gluten'] },
  ],
});

test('who calls for an item is found down to the bottom, each line with its recipe', () => {
  expect(linesCallingFor(tart, 'butter').map((each) => [each.recipe.id, each.line.amount.unit])).toEqual([
    ['crust', 'oz'],
    ['tart', 'tbsp'],
  ]);
  expect(linesCallingFor(tart, 'crust').map((each) => each.recipe.id)).toEqual(['tart']);
  expect([callsFor(tart, 'leek'), callsFor(tart, 'oil'), callsFor(filling, 'butter')]).toEqual([
    true,
    false,
    false,
  ]);
});

test('a part used twice is searched once, and parts inside the item itself are not', () => {
  const twice = recipe('twice', '1 lb', [line(crust, '1 lb'), line(crust, '2 lb'), line(ghee, '1 oz')]);
  expect(linesCallingFor(twice, 'butter').map((each) => each.recipe.id)).toEqual(['crust', 'ghee']);
  expect(linesCallingFor(twice, 'ghee').map((each) => each.recipe.id)).toEqual(['twice']);
});

test('an item is swapped in every line, with its amount, its preparation and the name of what it replaces', () => {
  const swapped = withItemSwapped(tart, 'butter', item(oil));
  expect(
    linesCallingFor(swapped, 'oil').map((each) => [
      each.recipe.id,
      each.line.amount.amount.toFraction(),
      each.line.amount.unit,
      each.line.preparation,
      each.line.note,
      each.line.insteadOf,
    ]),
  ).toEqual([
    ['crust', '6', 'oz', 'melted', undefined, ['Butter']],
    ['tart', '1', 'tbsp', null, 'to brush', ['Butter']],
  ]);
  expect(callsFor(swapped, 'butter')).toBe(false);
  const [first, second] = called(swapped).lines;
  expect(first!.item).toMatchObject({ recipe: { name: 'Crust (Olive oil instead of Butter)' } });
  // What does not call for it is the same object.
  expect(second).toBe(tart.lines[1]);
  expect(called(swapped).name).toBe('Leek tart (Olive oil instead of Butter)');
});

test('so are the changes that a recipe allows: what is left out or taken instead is what stands there now', () => {
  expect(withItemSwapped(tart, 'butter', item(oil)).changes).toEqual([
    { item: 'oil', instead: undefined, needs: ['vegan'] },
    { item: 'leek', instead: item(oil), needs: ['celery'] },
    tart.changes![2],
  ]);
  expect(withItemSwapped(tart, 'butter', item(oil)).changes![2]).toBe(tart.changes![2]);
  const byRecipe = withItemSwapped(tart, 'crust', { kind: 'recipe', recipe: ghee });
  expect(byRecipe.changes!.map((change) => change.item)).toEqual(['butter', 'leek', 'ghee']);
  expect(called(byRecipe).name).toBe('Leek tart (Ghee instead of Crust)');
});

test('a recipe that has the item only in its changes, or only inside a part, keeps its own name', () => {
  const onlyChanges = recipe('slaw', '1 lb', [line(leek, '1 lb')], {
    name: 'Slaw',
    changes: [{ item: 'leek', instead: item(butter), needs: ['celery'] }],
  });
  expect(withItemSwapped(onlyChanges, 'butter', item(oil))).toMatchObject({
    name: 'Slaw',
    changes: [{ item: 'leek', instead: { ingredient: { id: 'oil' } } }],
  });
  const outer = recipe('outer', '1 lb', [line(crust, '1 lb')], { name: 'Outer' });
  const swapped = withItemSwapped(outer, 'butter', item(oil));
  expect(called(swapped).name).toBe('Outer');
  expect(callsFor(swapped, 'oil')).toBe(true);
  expect('changes' in swapped).toBe(false);
});

test('a recipe without the item is the same object, one with itself inside is refused', () => {
  expect(withItemSwapped(filling, 'butter', item(oil))).toBe(filling);
  expect(withItemSwapped(tart, 'oil', item(leek))).toBe(tart);
  const lines = [line(leek, '1 g')];
  const inner = recipe('inner', '1 g', lines);
  const ring = recipe('ring', '1 g', [line(inner, '1 g')]);
  lines.push(line(ring, '1 g'));
  expect(() => withItemSwapped(ring, 'leek', item(oil))).toThrow(
    'recipe ring contains itself: ring → inner → ring',
  );
});

test('what is taken instead stays as it is, even where it calls for the item itself', () => {
  const swapped = withItemSwapped(crust, 'butter', { kind: 'recipe', recipe: ghee });
  expect(linesCallingFor(swapped, 'butter').map((each) => each.recipe)).toEqual([ghee]);
});

test('a part that is used side by side is swapped once, so that both are one recipe', () => {
  const both = recipe('both', '1 lb', [line(crust, '1 lb'), line(crust, '2 lb')]);
  const [first, second] = withItemSwapped(both, 'butter', item(oil)).lines;
  expect(first!.item.kind === 'recipe' && first!.item.recipe).toBe(
    second!.item.kind === 'recipe' && second!.item.recipe,
  );
});
