import { expect, test } from 'vitest';
import { doneEarlier } from '../../../src/engine/food/earlier-recipe.ts';
import type { LineItem, Recipe } from '../../../src/engine/food/recipe.ts';
import { food, line, recipe, step } from '../plan/builders.ts';

const pepper = line(food('pepper'), '1 lb');
const relish = recipe('relish', '1 qt', [pepper], {
  steps: [step('the day before', 'Salt'), step('on the day', 'Stir')],
});
const platter = recipe('platter', '1 gal', [line(relish, '1 cup'), pepper], {
  steps: [step('on the day', 'Set out'), step('at serving', 'Spoon')],
});
const bowl = recipe('bowl', '1 gal', [line(relish, '1 cup')], { steps: [step('on the day', 'Fill')] });
/** What a line or a change takes, where that is a recipe. */
function recipeOf(item: LineItem | undefined): Recipe {
  if (item?.kind !== 'recipe') throw new Error('no recipe');
  return item.recipe;
}
const daysOf = ({ steps }: typeof relish) => steps.map(({ when }) => when.daysBefore);
const partOf = ({ lines: [first] }: typeof relish) => recipeOf(first?.item);

test('the work of the day goes to the day before, all else stays', () => {
  const now = doneEarlier(platter, new Set(['relish']));
  expect([daysOf(now), daysOf(partOf(now))]).toEqual([
    [0, 0],
    [1, 1],
  ]);
  expect(partOf(now).steps.map(({ when }) => when.early)).toEqual([undefined, true]);
  expect(partOf(now).steps.map(({ when }) => when.atServing)).toEqual([false, false]);
  // What is done as guests are served stays.
  expect(daysOf(doneEarlier(platter, new Set(['platter'])))).toEqual([1, 0]);
  expect(daysOf(relish)).toEqual([1, 0]);
});

test('a part is one recipe in all that it goes into, whatever else is moved', () => {
  const one = partOf(doneEarlier(platter, new Set(['relish'])));
  expect(partOf(doneEarlier(bowl, new Set(['relish', 'bowl', 'something else'])))).toBe(one);
  expect(doneEarlier(relish, new Set(['relish']))).toBe(one);
  expect(doneEarlier(bowl, new Set(['platter']))).toBe(bowl);
  expect(doneEarlier(bowl, new Set(['bowl', 'relish']))).toBe(doneEarlier(bowl, new Set(['relish', 'bowl'])));
});

test('what is taken instead for a need is moved with it, one that is made with the recipe itself is not', () => {
  const of = (instead: typeof relish) =>
    recipe('salad', '1 gal', [pepper], {
      changes: [{ item: 'pepper', instead: { kind: 'recipe', recipe: instead }, needs: ['vegan'] }],
      steps: [step('on the day', 'Toss')],
    });
  const instead = (now: typeof relish) => recipeOf(now.changes?.[0]?.instead);
  expect(daysOf(instead(doneEarlier(of(relish), new Set(['relish']))))).toEqual([1, 1]);
  const left = recipe('slaw', '1 gal', [pepper], {
    changes: [{ item: 'pepper', instead: undefined, needs: ['vegan'] }],
    steps: [step('on the day', 'Toss')],
  });
  expect(doneEarlier(left, new Set(['slaw'])).changes).toEqual(left.changes);
  const round = recipe('round', '1 gal', [line(of(relish), '1 cup')], {});
  expect(instead(doneEarlier(of(round), new Set(['salad'])))).toBe(round);
});
