import { describe, expect, test } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { parseHeldTemperature } from '../../../src/engine/measure/temperature.ts';
import { coldRoomCheck, kitchenChecks, thawingCheck } from '../../../src/engine/safety/kitchen-checks.ts';
import { FOOD_CODE_2022 } from '../../../src/engine/safety/limits.ts';
import { CHECK_STAGES } from '../../../src/engine/safety/safety-check.ts';
import { allInWords, inWords } from '../../in-words.ts';
import { food, line, must, recipe, step } from '../plan/builders.ts';

const lamb = food('lamb', { from: ['lamb'] });
const duck = food('duck', { from: ['poultry'] });
const hake = food('hake', { from: ['fish'] });
const beans = food('beans');

const to = (temperature: string, when = 'on the day') =>
  step(when, 'Heat it', { cookTo: must(parseHeldTemperature(temperature)) });
const cut = (when = 'on the day') => step(when, 'Cut it');

function dishOf(
  foods: readonly (Ingredient | Recipe)[],
  steps: Recipe['steps'],
  facts: Parameters<typeof recipe>[3] = {},
): Recipe {
  return recipe(
    'dish',
    '10 lb',
    foods.map((each) => line(each, '5 lb')),
    { hold: 'hot', steps, ...facts },
  );
}

const checks = (of: Recipe, batches = 1) =>
  kitchenChecks({ recipe: of, batches }, FOOD_CODE_2022, 'F').map((each) => [
    each.stage,
    each.when && `${each.when.daysBefore}${each.when.atServing ? ' at serving' : ''}`,
    inWords(each.what),
    inWords(each.limit),
  ]);
const stages = (of: Recipe) => checks(of).map(([stage]) => stage);

/* Figures: FDA Food Code 3-401.11, 3-401.13, 3-403.11, 3-501.14, as `tests/reference/safety/limits.test.ts` holds them. */
describe('what is measured of a recipe', () => {
  test('that is cooked raw: each food whose figure differs, at the step that is enough for it', () => {
    const pot = dishOf([lamb, duck, hake], [to('145 °F', 'the day before'), to('165 °F')], { reheat: false });
    expect(checks(pot)).toEqual([
      ['cooking', '0', 'dish: duck, where it is thickest', '165 °F or above; the recipe says 165 °F'],
      [
        'cooking',
        '1',
        'dish: lamb and hake, where it is thickest',
        '145 °F or above for 15 s; the recipe says 145 °F',
      ],
    ]);
  });

  test('that says too little, or nothing: the code’s figure at its hottest or last step', () => {
    expect(checks(dishOf([duck], [to('150 °F', 'the day before'), to('140 °F')]))).toEqual([
      ['cooking', '1', 'dish: duck, where it is thickest', '165 °F or above; the recipe says 150 °F'],
    ]);
    expect(checks(dishOf([duck], [cut('the day before'), cut('at serving')]))).toEqual([
      ['cooking', '0 at serving', 'dish: duck, where it is thickest', '165 °F or above'],
    ]);
    expect(checks(dishOf([duck], []))).toEqual([
      ['cooking', undefined, 'dish: duck, where it is thickest', '165 °F or above'],
    ]);
  });

  test('is one reading for foods of one figure, and two where other sections set them', () => {
    const egg = food('egg', { from: ['egg'] });
    const patty = dishOf([{ ...lamb, soldAs: 'ground' }, egg], [to('155 °F for 17 s')]);
    const limit = '155 °F or above for 17 s; the recipe says 155 °F for 17 s';
    expect(checks(patty)).toEqual([['cooking', '0', 'dish: lamb and egg, where it is thickest', limit]]);
    const { eggs } = FOOD_CODE_2022.limits;
    const own = {
      ...FOOD_CODE_2022,
      limits: { ...FOOD_CODE_2022.limits, eggs: { ...eggs, section: '4-2' } },
    };
    const split = kitchenChecks({ recipe: patty, batches: 1 }, own, 'F');
    expect(split.map(({ what, section }) => [inWords(what), section])).toEqual([
      ['dish: lamb, where it is thickest', '3-401.11(A)(2)'],
      ['dish: egg, where it is thickest', '4-2'],
    ]);
  });

  test('that is kept cold is cooking and cooling', () => {
    expect(stages(dishOf([lamb], [to('165 °F')], { hold: 'cold' }))).toEqual(['cooking', 'cooling']);
  });

  test('by another of the code’s ways, where its own is that', () => {
    expect(checks(dishOf([{ ...lamb, soldAs: 'ground' }], [to('145 °F for 3 min')]))).toEqual([
      [
        'cooking',
        '0',
        'dish: lamb, where it is thickest',
        '145 °F or above for 3 min; the recipe says 145 °F for 3 min',
      ],
    ]);
  });

  test('is nothing of what goes raw into another dish or is meant to be raw', () => {
    expect(stages(dishOf([lamb], [cut()], { hold: 'cold' }))).toEqual([]);
    expect(stages(dishOf([lamb], [cut()], { hold: 'hot' }))).toEqual(['cooking']);
    expect(stages(dishOf([lamb], [to('120 °F')], { hold: 'hot', containsRaw: true }))).toEqual([]);
  });

  test('of plants is measured where they are held hot and heated', () => {
    expect(checks(dishOf([beans], [to('180 °F')]))).toEqual([
      ['cooking', '0', 'dish', '135 °F or above; the recipe says 180 °F'],
    ]);
    expect(stages(dishOf([beans], [cut()]))).toEqual([]);
    expect(stages(dishOf([beans], [to('180 °F')], { hold: 'room' }))).toEqual([]);
  });

  test('that is safe without heat or cold is nothing, unless it holds raw animal food', () => {
    expect(stages(dishOf([beans], [to('180 °F')], { temperatureControl: false }))).toEqual([]);
    expect(stages(dishOf([lamb], [to('180 °F')], { temperatureControl: false }))).toEqual(['cooking']);
  });

  test('that is cooled is cooling after its last cooking', () => {
    expect(
      checks(
        dishOf([beans], [to('180 °F', '2 days before'), to('150 °F', 'the day before'), cut()], {
          hold: 'cold',
        }),
      ),
    ).toEqual([['cooling', '1', 'dish', '70 °F within 2 h and 41 °F within 6 h']]);
  });

  test('that is cooled after its one cooking, though other work comes later', () => {
    expect(checks(dishOf([beans], [to('180 °F', '2 days before'), cut()], { hold: 'cold' }))).toEqual([
      ['cooling', '2', 'dish', '70 °F within 2 h and 41 °F within 6 h'],
    ]);
    const stew = dishOf([lamb], [to('165 °F', 'the day before'), cut()], { reheat: true, hold: 'room' });
    expect(checks(stew).find(([stage]) => stage === 'cooling')?.[1]).toBe('1');
  });

  test('that is cooked, chilled and heated again on one day is measured at each, and plants where they are heated again', () => {
    const facts = { reheat: true, pack: { chill: 'pan' } };
    expect(checks(dishOf([lamb], [to('160 °F'), cut('at serving')], facts))).toEqual([
      [
        'cooking',
        '0',
        'dish: lamb, where it is thickest',
        '145 °F or above for 15 s; the recipe says 160 °F',
      ],
      ['cooling', '0', 'dish', '70 °F within 2 h and 41 °F within 6 h'],
      ['reheating', '0 at serving', 'dish', '165 °F or above for 15 s, within 2 h'],
    ]);
    expect(checks(dishOf([beans], [to('170 °F'), cut('at serving')], { reheat: true }))).toEqual([
      ['reheating', '0', 'dish', '165 °F or above for 15 s, within 2 h; the recipe says 170 °F'],
    ]);
    const [, , reheating] = kitchenChecks(
      { recipe: dishOf([lamb], [to('160 °F')], facts), batches: 2 },
      FOOD_CODE_2022,
      'F',
    );
    expect(allInWords(reheating?.blanks)).toEqual(['started', 'batch 1', 'batch 2', 'time', 'initials']);
  });

  test('that is chilled and never says that it was hot may have been either', () => {
    const both = 'heated: 70 °F within 2 h and 41 °F within 6 h; made at room temperature: 41 °F within 4 h';
    const salad = dishOf([beans], [cut('the day before'), cut('2 days before'), cut()], {
      hold: 'cold',
      pack: { chill: 'pan' },
    });
    // From its first step on.
    expect(checks(salad)).toEqual([['cooling', '2', 'dish', both]]);
    expect(stages({ ...salad, pack: {} })).toEqual([]);
    expect(stages({ ...salad, temperatureControl: false })).toEqual([]);
    // Raw food that waits for the oven is watched with the cold room; raw food that is served cold is not.
    const raw = dishOf([lamb], [cut('the day before'), to('165 °F')], { pack: { chill: 'pan' } });
    expect(stages(raw)).toEqual(['cooking']);
    expect(stages({ ...raw, hold: 'cold', steps: [cut()] })).toEqual(['cooling']);
    expect(stages({ ...raw, hold: 'cold', steps: [cut()], temperatureControl: false })).toEqual([]);
    // Plants held hot of which no step says a temperature may have been hot as well.
    expect(stages({ ...salad, hold: 'hot' })).toEqual(['cooling']);
    const [first] = kitchenChecks({ recipe: salad, batches: 1 }, FOOD_CODE_2022, 'F');
    expect([first?.section, allInWords(first?.blanks)]).toEqual([
      '3-501.14(A), 3-501.14(B)',
      ['started', 'after 2 h', 'after 6 h', 'initials'],
    ]);
  });

  test('that is heated again is measured there, though no step says how hot', () => {
    const stew = dishOf([lamb], [to('195 °F', 'the day before')], { reheat: true });
    expect(checks(stew).at(-1)).toEqual(['reheating', '1', 'dish', '165 °F or above for 15 s, within 2 h']);
  });

  test('has a blank for each of up to six batches', () => {
    const blanks = (batches: number) =>
      kitchenChecks({ recipe: dishOf([duck], [to('165 °F')]), batches }, FOOD_CODE_2022, 'F')[0]?.blanks.map(
        inWords,
      );
    expect(blanks(1)).toEqual(['reading', 'time', 'initials']);
    expect(blanks(2)).toEqual(['batch 1', 'batch 2', 'time', 'initials']);
    expect(blanks(6)).toHaveLength(8);
    expect(blanks(7)).toEqual(['lowest of all batches', 'time', 'initials']);
  });
});

describe('what is measured of the kitchen', () => {
  test('is the cold room twice each day, and what thaws', () => {
    const cold = coldRoomCheck(2, FOOD_CODE_2022, 'C');
    expect({
      ...cold,
      what: inWords(cold.what),
      limit: inWords(cold.limit),
      blanks: allInWords(cold.blanks),
    }).toEqual({
      stage: 'cold room',
      when: { daysBefore: 2, atServing: false },
      recipe: '',
      what: 'Cold room and refrigerators',
      limit: 'food at 5 °C or below',
      section: '3-501.16(A)(2)',
      blanks: ['morning', 'evening', 'initials'],
    });
    const thawing = thawingCheck(['hake', 'peas'], FOOD_CODE_2022, 'F');
    expect([thawing?.what, allInWords(thawing?.blanks)]).toEqual([
      'hake; peas',
      ['started', 'how', 'reading', 'initials'],
    ]);
  });

  test('goes from the delivery to what is left over', () => {
    expect(CHECK_STAGES.indexOf('receiving')).toBe(0);
    expect(CHECK_STAGES.at(-1)).toBe('end of service');
  });
});
