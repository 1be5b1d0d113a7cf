import { describe, expect, test } from 'vitest';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { dishDifference, needsMissed } from '../../../src/offers/event/dish-difference.ts';
import { recipeFacts } from '../../../src/offers/issue/dish-terms.ts';
import { dish, food, line, must, recipe } from '../plan/builders.ts';

const leek = food('leek');
const butter = food('butter', { from: ['milk'], allergens: ['milk'] });
const tahini = food('tahini', { allergens: ['sesame'], mayContain: [must(parseAllergen('almond'))] });
const crumbs = food('crumbs', { mayContain: [must(parseAllergen('sesame'))] });
const made = (id: string, foods: readonly Ingredient[], facts: Partial<Pick<Recipe, 'containsRaw'>> = {}) =>
  recipe(
    id,
    '1 lb',
    foods.map((each) => line(each, '1 lb')),
    {
      name: id === 'tart' ? 'Leek tart' : 'Bean stew',
      ...facts,
    },
  );
const pair = (before: Recipe, after: Recipe) => ({
  before: { name: before.name, recipe: before, ...recipeFacts(before) },
  after: dish(after, '1 lb per guest'),
});
const difference = (before: Recipe, after: Recipe) =>
  dishDifference(pair(before, after), before.id !== after.id, 'en-US');

describe('how a dish differs after a substitution', () => {
  test('is told allergen by allergen, warning by warning, diet by diet', () => {
    expect(difference(made('tart', [butter]), made('tart', [tahini]))).toEqual({
      dish: 'Leek tart',
      contains: ['sesame'],
      mayContain: ['almond'],
      without: ['milk'],
      dietsLost: [],
      dietsGained: ['vegan'],
      tell: 'Leek tart contains sesame since the change. Leek tart may contain almond.',
    });
    expect(difference(made('tart', [leek]), made('tart', [butter]))).toMatchObject({
      contains: ['milk'],
      mayContain: [],
      without: [],
      dietsLost: ['vegan'],
      dietsGained: [],
      tell: 'Leek tart contains milk since the change. Leek tart can’t be called vegan.',
    });
  });

  test('leaves out what was in it before', () => {
    const rye = food('rye', { allergens: ['rye'] });
    expect(difference(made('tart', [rye, butter]), made('tart', [rye, tahini]))).toMatchObject({
      contains: ['sesame'],
      without: ['milk'],
    });
  });

  test('is nothing to tell where it is only safer', () => {
    expect(difference(made('tart', [butter]), made('tart', [leek]))).toMatchObject({
      without: ['milk'],
      tell: '',
    });
  });

  test('of a warning made certain is contained, of certainty made a warning nothing that was not known', () => {
    expect(difference(made('tart', [crumbs]), made('tart', [tahini]))).toMatchObject({
      contains: ['sesame'],
      mayContain: ['almond'],
      without: [],
    });
    expect(difference(made('tart', [tahini]), made('tart', [crumbs]))).toMatchObject({
      contains: [],
      mayContain: [],
      without: ['almond'],
      tell: '',
    });
  });

  test('of another dish says whose allergens are new, and always that it is another', () => {
    expect(difference(made('tart', [leek]), made('stew', [butter])).tell).toBe(
      'Bean stew is served instead of Leek tart. Bean stew contains milk, which Leek tart did not. Bean stew can’t be called vegan.',
    );
    expect(difference(made('tart', [leek]), made('stew', [leek])).tell).toBe(
      'Bean stew is served instead of Leek tart.',
    );
  });

  test('says so where raw animal food is new, and not where it was there', () => {
    const raw = { containsRaw: true };
    expect(difference(made('tart', [leek]), made('tart', [leek], raw)).tell).toContain('Leek tart');
    expect(difference(made('tart', [leek], raw), made('tart', [leek], raw)).tell).toBe('');
    const gone = { ...pair(made('tart', [leek]), made('tart', [leek], raw)) };
    const unread = { ...gone, before: { ...gone.before, recipe: undefined } };
    expect(dishDifference(unread, false, 'en-US').tell).toContain('Leek tart');
  });
});

test('a need that a dish met and no longer does is named with its guests, and nothing else is', () => {
  const change = pair(made('tart', [leek]), made('tart', [butter]));
  const needs = { vegan: 3, milk: 1, vegetarian: 4, sesame: 2, egg: 0, kiwi: 5, 'vegan + milk': 0 };
  expect(needsMissed(change, needs)).toEqual([
    '3 × vegan: Leek tart no longer suits',
    '1 × milk: Leek tart no longer suits',
  ]);
  expect(needsMissed(pair(made('tart', [butter]), made('tart', [butter])), needs)).toEqual([]);
  expect(needsMissed({ ...change, before: { ...change.before, recipe: undefined } }, needs)).toEqual([]);
});
