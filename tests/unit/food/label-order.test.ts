import { expect, test } from 'vitest';
import { ingredientsByWeight } from '../../../src/engine/food/label-order.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { food, line, recipe } from '../plan/builders.ts';

/*
 * 21 CFR 101.4(a)(1) and Regulation (EU) No 1169/2011, Article 18: ingredients in descending order of weight as they
 * go in. 1 oz = 28.349523125 g, 1 lb = 453.59237 g exactly (NIST Handbook 44, Appendix C).
 */
const barley = food('barley');
const oil = food('oil', { name: 'Oil', sold: ['1 cup = 200 g'] });
const leek = food('leek', { name: 'Leeks' });
const pepper = food('pepper', { name: 'Pepper' });
const bay = food('bay', { name: 'Bay leaves' });

const listed = (of: Recipe) =>
  ingredientsByWeight(of).map(({ ingredient, grams }) => `${ingredient.id} ${grams?.toFraction() ?? '?'}`);

test('a label lists heaviest first, down to the bottom, each ingredient once with all its lines', () => {
  const dressing = recipe('dressing', '500 g', [line(oil, '2 cups'), line(leek, '100 g')]);
  const salad = recipe('salad', '2 kg', [
    line(barley, '1 kg'),
    line(dressing, '250 g'),
    line(leek, '600 g'),
    line(oil, '1 cup', 'warmed'),
  ]);
  // Half a batch of dressing: 200 g of oil and 50 g of leeks.
  expect(listed(salad)).toEqual(['barley 1000', 'leek 650', 'oil 400']);
});

test('what weighs the same goes by name, and so does what nobody can weigh, after all that has a weight', () => {
  const stew = recipe('stew', '1 kg', [
    line(pepper, '1 each'),
    line(leek, '10 g'),
    line(bay, '2 each'),
    line(oil, '10 g'),
    line(barley, '11 g'),
  ]);
  expect(listed(stew)).toEqual(['barley 11', 'leek 10', 'oil 10', 'bay ?', 'pepper ?']);
  const reversed = recipe('stew', '1 kg', stew.lines.toReversed());
  expect(listed(reversed)).toEqual(listed(stew));
});

test('a food of which one line has no weight has none, wherever that line stands', () => {
  const lines = [line(leek, '900 g'), line(barley, '5 g'), line(leek, '2 each')];
  for (const each of [lines, lines.toReversed()])
    expect(listed(recipe('soup', '1 kg', each))).toEqual(['barley 5', 'leek ?']);
});

test('a part in a unit that it is not made in is listed with no share of its own', () => {
  const dressing = recipe('dressing', '500 g', [line(oil, '2 cups')]);
  const salad = recipe('salad', '2 kg', [line(barley, '1 g'), line(dressing, '1 each')]);
  expect(listed(salad)).toEqual(['barley 1', 'oil 0']);
});

test('a part used twice side by side counts twice, and a recipe within itself is refused', () => {
  const dressing = recipe('dressing', ['500 g', '10 servings'], [line(oil, '500 g')]);
  const salad = recipe('salad', '2 kg', [line(dressing, '100 g'), line(dressing, '1 serving')]);
  expect(listed(salad)).toEqual(['oil 150']);
  const lines = [line(oil, '1 g')];
  const ring = recipe('ring', '1 g', lines);
  lines.push(line(ring, '1 g'));
  expect(() => ingredientsByWeight(ring)).toThrow('recipe ring contains itself');
});
