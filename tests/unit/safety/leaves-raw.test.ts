import { describe, expect, test } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { leavesRaw } from '../../../src/engine/safety/leaves-raw.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { travelsAs } from '../../../src/engine/safety/travels-as.ts';
import { planRaw, rawLast } from '../../../src/exports/plan/raw.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { inWords } from '../../in-words.ts';
import { food, line, must, recipe, step } from '../plan/builders.ts';

const duck = food('duck', { from: ['poultry'] });
const lamb = food('lamb', { from: ['lamb'] });
const minced = food('minced-lamb', { from: ['lamb'], soldAs: 'ground' });
const hake = food('hake', { from: ['fish'] });
const egg = food('egg', { from: ['egg'] });
const ham = food('ham', { from: ['pork'], soldAs: 'ready to eat' });

const to = (temperature: string, when: string) =>
  step(when, 'Cook it', { cookTo: must(parseHeldTemperature(temperature)) });
const cold = step('on the day', 'Cut it');

function dishOf(
  foods: readonly (Ingredient | Recipe)[],
  steps: Recipe['steps'],
  facts: Parameters<typeof recipe>[3] = {},
  id = 'dish',
): Recipe {
  return recipe(
    id,
    '10 lb',
    foods.map((each) => line(each, '5 lb')),
    { hold: 'hot', steps, ...facts },
  );
}
const rawOf = (dish: Recipe, scale: 'F' | 'C' = 'F') =>
  planRaw(dish, FOOD_CODE_2022, scale, wordsIn('en-US'), inWords);

describe('food that leaves the kitchen', () => {
  test('is raw where it is cooked at the place, with the temperature its code asks for', () => {
    // FDA Food Code 2022, 3-401.11(A): 145 °F for 15 s fish, 155 °F for 17 s ground meat, 165 °F poultry.
    const code = '; the local food code and a licensed food-safety manager decide';
    expect(rawOf(dishOf([hake], [cold, to('140 °F', 'at serving')]))).toEqual({
      mark: 'RAW',
      next: 'cook to 145 °F for 15 s',
      source: `FDA Food Code 2022, 3-401.11(A)(1) requires 145 °F for 15 s${code}`,
    });
    expect(rawOf(dishOf([minced], [cold, to('154 °F', 'at serving')]))?.next).toBe('cook to 155 °F for 17 s');
    expect(rawOf(dishOf([duck], [cold, to('160 °F', 'at serving')]))?.next).toBe('cook to 165 °F');
    expect(rawOf(dishOf([hake, duck], [cold, to('145 °F', 'at serving')]), 'C')?.next).toBe('cook to 74 °C');
    // The recipe's own, where it is enough for all of it.
    expect(rawOf(dishOf([hake, duck], [cold, to('170 °F', 'at serving')]))?.next).toBe('cook to 170 °F');
  });

  test('is raw by where its cooking step is done, whatever the day says, and travels cold to be cooked there', () => {
    const there = dishOf([duck], [cold, { ...to('165 °F', 'on the day'), at: 'place' }]);
    expect(leavesRaw(there, FOOD_CODE_2022)?.next).toBe('cooked there');
    expect(travelsAs(there)).toBe('cold');
    const here = dishOf([duck], [cold, { ...to('165 °F', 'at serving'), at: 'kitchen' }]);
    expect(leavesRaw(here, FOOD_CODE_2022)).toBeUndefined();
    expect(travelsAs(here)).toBe('hot');
  });

  test('is not raw where a step cooks it before, or where it needs no cooking', () => {
    expect(
      rawOf(dishOf([duck], [to('165 °F', 'the day before'), to('165 °F', 'at serving')])),
    ).toBeUndefined();
    expect(rawOf(dishOf([ham], [cold]))).toBeUndefined();
    expect(rawOf(dishOf([food('beans')], [cold]))).toBeUndefined();
    // Seared is not cooked.
    const seared = dishOf([lamb], [to('120 °F', 'on the day'), to('150 °F', 'at serving')]);
    expect(rawOf(seared)).toMatchObject({ mark: 'RAW', next: 'cook to 150 °F' });
  });

  test('is to be treated as raw where no step tells, and where the one at the place only heats it again', () => {
    const untold = { mark: 'TREAT AS RAW', next: 'no step cooks it enough before it leaves: cook to 165 °F' };
    expect(rawOf(dishOf([duck], [cold]))).toMatchObject(untold);
    expect(rawOf(dishOf([duck], [to('150 °F', 'on the day')]))).toMatchObject(untold);
    expect(rawOf(dishOf([duck], [cold, to('165 °F', 'at serving')], { reheat: true }))).toMatchObject(untold);
    const poached = dishOf([hake], [cold, to('165 °F', 'at serving')], { reheat: true });
    expect(rawOf(poached)?.next).toBe('no step cooks it enough before it leaves: cook to 165 °F');
  });

  test('is said to be served raw where its recipe means it so, by itself or in a part', () => {
    const served = {
      mark: 'RAW',
      next: 'served raw or undercooked',
      source: 'FDA Food Code 2022, 3-603.11; the local food code and a licensed food-safety manager decide',
    };
    const dressing = dishOf([egg], [cold], { containsRaw: true, hold: 'cold' }, 'dressing');
    expect(rawOf(dressing)).toEqual(served);
    expect(rawOf(dishOf([dressing], [cold], { hold: 'cold' }))).toEqual(served);
    expect(rawOf(dishOf([food('beans')], [cold], { containsRaw: true }))).toEqual(served);
  });

  test('is not said to be served raw where only some of it is meant so', () => {
    const dressing = dishOf([egg], [cold], { containsRaw: true, hold: 'cold' }, 'dressing');
    expect(rawOf(dishOf([dressing, duck], [cold], { hold: 'cold' }))).toMatchObject({
      mark: 'TREAT AS RAW',
      next: 'no step cooks it enough before it leaves: cook to 165 °F',
    });
    // Seared in the kitchen and meant to be pink inside.
    expect(rawOf(dishOf([duck], [to('165 °F', 'on the day')], { containsRaw: true }))?.next).toBe(
      'served raw or undercooked',
    );
  });

  test('is named even where the kitchen heats what is meant to be pink', () => {
    const pink = dishOf([duck], [to('165 °F', 'on the day')], { containsRaw: true });
    expect(leavesRaw(pink, FOOD_CODE_2022)?.foods.map(({ limit }) => limit)).toEqual(['poultry']);
  });

  test('stuffed with a part is cooked as stuffed, and its food is named with the innermost part that brings it in', () => {
    const farce = dishOf([hake], [cold], {}, 'farce');
    const roll = dishOf([farce], [cold, to('150 °F', 'at serving')], { cookedAs: 'stuffed' }, 'roll');
    expect(rawOf(roll)?.next).toBe('cook to 165 °F');
    const outer = leavesRaw(dishOf([dishOf([farce], [cold], {}, 'case')], [cold]), FOOD_CODE_2022);
    expect(outer?.foods.map(({ ingredient, from }) => [ingredient.id, from?.id])).toEqual([
      ['hake', 'farce'],
    ]);
  });

  test('is judged through its parts, and what travels beside it for itself', () => {
    const patty = dishOf([minced], [cold, to('155 °F', 'at serving')], {}, 'patty');
    // The part's own step at the place is no cooking before it leaves.
    expect(rawOf(dishOf([patty], [cold]))?.mark).toBe('TREAT AS RAW');
    expect(rawOf(dishOf([patty], [to('155 °F', 'on the day')]))).toBeUndefined();
    expect(rawOf(dishOf([patty], [cold], { beside: ['patty'] }))).toBeUndefined();
  });

  test('stands below what is ready, and the food that asks for the most heat at the bottom', () => {
    const dishes = [
      dishOf([duck], [to('165 °F', 'at serving')], {}, 'duck legs'),
      dishOf([minced], [to('155 °F', 'at serving')], {}, 'patties'),
      dishOf([hake], [to('145 °F', 'at serving')], {}, 'parcels'),
      dishOf([ham], [cold], {}, 'ham'),
    ];
    expect(rawLast(dishes, (each) => leavesRaw(each, FOOD_CODE_2022)).map(({ id }) => id)).toEqual([
      'ham',
      'parcels',
      'patties',
      'duck legs',
    ]);
  });
});
