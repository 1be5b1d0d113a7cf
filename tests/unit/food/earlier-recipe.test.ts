import { expect, test } from 'vitest';
import { doneEarlier } from '../../../src/engine/food/earlier-recipe.ts';
import type { LineItem, Recipe } from '../../../src/engine/food/recipe.ts';
import { food, line, recipe, step } from '../plan/builders.ts';

/** The day before for each. */
const early = (...ids: string[]) => new Map(ids.map((id) => [id, 1]));

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
  const now = doneEarlier(platter, early('relish'));
  expect([daysOf(now), daysOf(partOf(now))]).toEqual([
    [0, 0],
    [1, 1],
  ]);
  expect(partOf(now).steps.map(({ when }) => when.early)).toEqual([undefined, true]);
  expect(partOf(now).steps.map(({ when }) => when.atServing)).toEqual([false, false]);
  // What is done as guests are served stays.
  expect(daysOf(doneEarlier(platter, early('platter')))).toEqual([1, 0]);
  expect(daysOf(relish)).toEqual([1, 0]);
});

test('a part is one recipe in all that it goes into, whatever else is moved', () => {
  const one = partOf(doneEarlier(platter, early('relish')));
  expect(partOf(doneEarlier(bowl, early('relish', 'bowl', 'something else')))).toBe(one);
  expect(doneEarlier(relish, early('relish'))).toBe(one);
  expect(doneEarlier(bowl, early('platter'))).toBe(bowl);
  expect(doneEarlier(bowl, early('bowl', 'relish'))).toBe(doneEarlier(bowl, early('relish', 'bowl')));
});

test('what is taken instead for a need is moved with it, one that is made with the recipe itself is not', () => {
  const of = (instead: typeof relish) =>
    recipe('salad', '1 gal', [pepper], {
      changes: [{ item: 'pepper', instead: { kind: 'recipe', recipe: instead }, needs: ['vegan'] }],
      steps: [step('on the day', 'Toss')],
    });
  const instead = (now: typeof relish) => recipeOf(now.changes?.[0]?.instead);
  expect(daysOf(instead(doneEarlier(of(relish), early('relish'))))).toEqual([1, 1]);
  const left = recipe('slaw', '1 gal', [pepper], {
    changes: [{ item: 'pepper', instead: undefined, needs: ['vegan'] }],
    steps: [step('on the day', 'Toss')],
  });
  expect(doneEarlier(left, early('slaw')).changes).toEqual(left.changes);
  const round = recipe('round', '1 gal', [line(of(relish), '1 cup')], {});
  expect(instead(doneEarlier(of(round), early('salad')))).toBe(round);
});

test('a recipe is done as many days before as it is said, each so many as another recipe', () => {
  const two = doneEarlier(platter, new Map([['platter', 2]]));
  expect(two.steps.map(({ when }) => when.daysBefore)).toEqual(
    platter.steps.map(({ when }) => (when.daysBefore === 0 && !when.atServing ? 2 : when.daysBefore)),
  );
  expect(doneEarlier(platter, new Map([['platter', 2]]))).toBe(two);
  expect(doneEarlier(platter, early('platter'))).not.toBe(two);
});
