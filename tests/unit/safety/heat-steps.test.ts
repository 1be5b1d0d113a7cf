import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { isCooled } from '../../../src/engine/safety/cooling.ts';
import { heatSteps, hottestOf } from '../../../src/engine/safety/heat-steps.ts';
import { reheatingLimit } from '../../../src/engine/safety/reheating.ts';
import { travelsAs } from '../../../src/engine/safety/travels-as.ts';
import { food, line, must, recipe, step } from '../plan/builders.ts';

const lamb = food('lamb', { from: ['lamb'] });
const beans = food('beans');
const ham = food('ham', { from: ['pork'], soldAs: 'ready to eat' });

const to = (temperature: string, when = 'on the day') =>
  step(when, 'Heat it', { cookTo: must(parseHeldTemperature(temperature)) });
const cut = (when = 'on the day') => step(when, 'Cut it');

type Facts = Parameters<typeof recipe>[3];

const dishOf = (of: typeof lamb, steps: Recipe['steps'], facts: Facts = {}) =>
  recipe('dish', '10 lb', [line(of, '10 lb')], { hold: 'hot', steps, ...facts });

describe('steps with a temperature', () => {
  const parts = (steps: Recipe['steps'], cooksRaw: boolean, facts: Facts = {}) => {
    const { cooking, reheating, needsReheating } = heatSteps(dishOf(lamb, steps, facts), cooksRaw);
    return [cooking.map(({ index }) => index), reheating?.index, needsReheating];
  };

  test('all cook where nothing is heated again', () => {
    expect(parts([cut(), to('165 °F'), to('120 °F')], true)).toEqual([[1, 2], undefined, false]);
    expect(parts([], true)).toEqual([[], undefined, false]);
    // On an earlier day, but kept cold.
    expect(parts([to('165 °F', 'the day before')], true, { hold: 'cold' })).toEqual([[0], undefined, false]);
  });

  test('cook, and nothing heats again what is held hot from an earlier day', () => {
    expect(parts([to('165 °F', 'the day before')], true)).toEqual([[0], undefined, true]);
    expect(parts([to('165 °F', 'the day before')], true, { reheat: true })).toEqual([[0], undefined, true]);
  });

  test('end with the one that heats again, where the recipe says so', () => {
    const reheat = { reheat: true };
    expect(parts([to('165 °F', 'the day before'), to('165 °F')], true, reheat)).toEqual([[0], 1, true]);
    // Plants may have been cooked in a step without a temperature, meat not.
    expect(parts([cut('the day before'), to('165 °F', 'on the day')], false, reheat)).toEqual([[], 1, true]);
    expect(parts([to('165 °F')], true, reheat)).toEqual([[0], undefined, true]);
    // One that does both: work on a day before, and the temperature on the day itself.
    expect(parts([cut('the day before'), to('165 °F')], true, reheat)).toEqual([[1], 1, true]);
    expect(parts([cut('on the day'), to('165 °F')], true, reheat)).toEqual([[1], undefined, true]);
    const cold = { reheat: true, hold: 'cold' } as const;
    expect(parts([cut('2 days before'), to('165 °F', 'the day before')], true, cold)).toEqual([
      [1],
      undefined,
      true,
    ]);
    expect(parts([cut('the day before')], true, reheat)).toEqual([[], undefined, true]);
  });

  test('have one that gets hottest, whatever scale it is in, the first of equals', () => {
    const { cooking } = heatSteps(dishOf(lamb, [to('160 °F'), to('75 °C'), to('167 °F')]), true);
    expect([hottestOf(cooking)?.index, hottestOf([])]).toEqual([1, undefined]);
  });
});

describe('food that is cooked and then cooled', () => {
  const chilled = { pack: { chill: 'pan' } };
  test.each<[string, Recipe, boolean]>([
    ['cooked and kept cold', dishOf(lamb, [to('165 °F')], { hold: 'cold' }), true],
    ['cooked and frozen', dishOf(lamb, [to('165 °F')], { hold: 'frozen' }), true],
    ['kept cold, and no step says a temperature', dishOf(beans, [cut()], { hold: 'cold' }), false],
    ['safe without cold', dishOf(beans, [to('190 °F')], { hold: 'cold', temperatureControl: false }), false],
    ['cooked and held hot', dishOf(lamb, [to('165 °F')]), false],
    ['cooked and held at room temperature', dishOf(beans, [to('165 °F')], { hold: 'room' }), false],
    ['cooked the day before and left so', dishOf(lamb, [to('165 °F', 'the day before')]), true],
    [
      'cooked ahead and heated again',
      dishOf(lamb, [to('165 °F', 'the day before'), to('165 °F')], { reheat: true }),
      true,
    ],
    [
      'cooked and heated again on the day, chilled between',
      dishOf(lamb, [to('165 °F'), to('165 °F', 'at serving')], { reheat: true, ...chilled }),
      true,
    ],
    [
      'cooked and chilled on the day, and no step says how hot it is heated again',
      dishOf(lamb, [to('165 °F'), cut('at serving')], { reheat: true, ...chilled }),
      true,
    ],
    [
      'cooked ahead and again on the day, and heated again',
      dishOf(lamb, [to('165 °F', 'the day before'), to('165 °F'), to('165 °F', 'at serving')], {
        reheat: true,
      }),
      true,
    ],
    [
      'cooked ahead, heated again and left at room temperature',
      dishOf(lamb, [to('165 °F', 'the day before')], { reheat: true, hold: 'room' }),
      true,
    ],
    [
      'of plants, where the one temperature is that of heating them again',
      dishOf(beans, [to('165 °F', 'the day before')], { reheat: true, hold: 'room' }),
      false,
    ],
    [
      'cooked and heated again on the day, with nothing to chill it in',
      dishOf(lamb, [to('165 °F'), to('165 °F', 'at serving')], { reheat: true }),
      false,
    ],
    [
      'of plants, with the one temperature of its heating again',
      dishOf(beans, [cut('the day before'), to('165 °F')], { reheat: true, ...chilled }),
      false,
    ],
    [
      'raw until the step on the day that does both',
      dishOf(lamb, [cut('the day before'), to('165 °F')], { reheat: true, ...chilled }),
      false,
    ],
  ])('%s', (_, dish, cooled) => {
    expect(isCooled(dish)).toBe(cooled);
  });
});

test('only what is all bought ready to eat is heated again by the lower limit', () => {
  const limit = (...foods: (typeof lamb)[]) =>
    reheatingLimit(
      recipe(
        'dish',
        '10 lb',
        foods.map((each) => line(each, '1 lb')),
      ),
    );
  expect([limit(ham), limit(ham, beans), limit(beans), limit()]).toEqual([
    'reheating ready-to-eat food',
    'reheating',
    'reheating',
    'reheating',
  ]);
});

test('hot food that is heated at the place travels cold, all other food as it is held', () => {
  const there = to('165 °F', 'at serving');
  expect(
    [
      dishOf(lamb, [there]),
      dishOf(lamb, [to('165 °F')]),
      dishOf(lamb, [step('at serving', 'Slice it')]),
      dishOf(lamb, [there], { hold: 'frozen' }),
      dishOf(lamb, [there], { hold: 'room' }),
    ].map(travelsAs),
  ).toEqual(['cold', 'hot', 'hot', 'frozen', 'room']);
});
