import { describe, expect, test } from 'vitest';
import { losesTrim } from '../../../src/engine/food/as-bought.ts';
import { isCompound } from '../../../src/engine/food/is-compound.ts';
import { isMadeThere } from '../../../src/engine/food/made-there.ts';
import { isAtPlace, type Recipe } from '../../../src/engine/food/recipe.ts';
import { firstStepOf, linesOfStep } from '../../../src/engine/food/step-lines.ts';
import { parseStepText } from '../../../src/engine/food/step-text.ts';
import { isTapWater } from '../../../src/engine/food/tap-water.ts';
import { ingredientsOf, partsFirst } from '../../../src/engine/food/walk.ts';
import { food, line, q, recipe, step } from '../plan/builders.ts';

describe('a food', () => {
  test('is made of several where it lists parts or comes from several, salt, water and cultures not counted', () => {
    const from = (...origins: NonNullable<Parameters<typeof isCompound>[0]['from']>) =>
      isCompound({ from: origins, parts: undefined });
    expect([from('milk', 'mineral'), from('milk', 'water', 'microbe'), from('plant')]).toEqual([
      false,
      false,
      false,
    ]);
    expect([from('milk', 'plant'), from('egg', 'plant', 'mineral')]).toEqual([true, true]);
    expect(isCompound({ from: ['plant'], parts: 'flour, malt' as never })).toBe(true);
    expect(isCompound({ from: undefined, parts: undefined })).toBe(false);
  });

  test('is tap water where it comes from water alone', () => {
    expect(isTapWater(food('water', { from: ['water'] }))).toBe(true);
    expect(isTapWater(food('cordial', { from: ['water', 'plant'] }))).toBe(false);
    expect(isTapWater(food('oil'))).toBe(false);
    expect(isTapWater(food('mystery', { from: undefined }))).toBe(false);
  });

  test('loses its trim where it is weighed made ready, and none where a made-ready piece is counted into a whole one', () => {
    const sold = food('garlic', { sold: ['1 head = 12 cloves', '1 clove = 5 g'] }).conversions;
    const loses = (amount: string, unit: string, facts: object = {}) =>
      losesTrim({ amount: q(amount), asPurchased: false, ...facts }, unit, sold);
    expect([loses('20 cloves', 'g'), loses('100 g', 'head')]).toEqual([true, true]);
    expect([loses('24 cloves', 'head'), loses('2 heads', 'head')]).toEqual([false, false]);
    // From a whole head through its cloves to their weight.
    expect(loses('2 heads', 'g')).toBe(true);
    expect([
      loses('100 g', 'head', { asPurchased: true }),
      loses('24 cloves', 'head', { trimmed: true }),
    ]).toEqual([false, true]);
  });
});

test('a recipe is made at the place where every step of it is', () => {
  const of = (...steps: Parameters<typeof step>[]) =>
    isMadeThere({ steps: steps.map((each) => step(...each)) });
  const there = { at: 'place' } as const;
  expect(of(['on the day', 'Slice', there], ['at serving', 'Plate'])).toBe(true);
  expect(of(['on the day', 'Slice'], ['at serving', 'Plate'])).toBe(false);
  expect(of(['on the day', 'Slice'])).toBe(false);
  expect(of()).toBe(false);
});

describe('a recipe’s lines', () => {
  const [salt, oil, leek] = [food('salt'), food('oil'), food('leek')].map((each) => line(each, '1 lb'));
  const lines = [{ ...salt!, steps: [0, 2] }, { ...oil!, steps: [1] }, leek!];

  test('go into the steps that take them, those that state none into the first', () => {
    expect([0, 1, 2, 3].map((at) => linesOfStep({ lines }, at).length)).toEqual([2, 1, 1, 0]);
    expect(lines.map(firstStepOf)).toEqual([0, 1, 0]);
  });

  test('are walked to the bottom, each part once and before what it goes into', () => {
    const base = recipe('base', '1 qt', [line(food('bones'), '1 lb')]);
    const gravy = recipe('gravy', '1 qt', [line(base, '1 pt'), line(food('flour'), '1 oz')]);
    const pie = recipe('pie', '1 each', [
      line(gravy, '1 cup'),
      line(base, '1 cup'),
      line(food('flour'), '1 lb'),
    ]);
    expect(partsFirst([pie, gravy]).map(({ id }) => id)).toEqual(['base', 'gravy', 'pie']);
    expect(ingredientsOf(pie).map(({ id }) => id)).toEqual(['bones', 'flour']);
  });

  test('that lead back to their recipe are told as the ring they are, without what only led there', () => {
    const dough: Recipe = recipe('dough', '1 lb', []);
    const starter = recipe('starter', '1 lb', [line(dough, '1 oz')]);
    const flour = recipe('flour-mix', '1 lb', []);
    const ring = { ...dough, lines: [line(flour, '1 oz'), line(starter, '1 oz')] };
    const loop = { ...starter, lines: [line(ring, '1 oz')] };
    const bread = recipe('bread', '1 lb', [
      line({ ...ring, lines: [line(flour, '1 oz'), line(loop, '1 oz')] }, '1 lb'),
    ]);
    expect(() => partsFirst([bread])).toThrow('recipe dough contains itself: dough → starter → dough');
  });
});

describe('a step', () => {
  test('is at the place where it is done at serving', () => {
    expect(
      [step('at serving', 'Toss.'), step('on the day', 'Chop.'), step('1 day before', 'Boil.')].map(
        isAtPlace,
      ),
    ).toEqual([true, false, false]);
  });

  test('with a brace that is not closed shows where, and no more of it than that', () => {
    const long =
      'Cook the onions slowly and add {2 tbsp of oil, then leave them until they are brown all over';
    const read = parseStepText(long);
    expect(read.ok ? '' : read.what).toBe('the brace in “wly and add {2 tbsp of oil, then” is not closed');
    const opened = parseStepText('Add 2} eggs');
    expect(opened.ok ? '' : opened.what).toBe('the brace in “Add 2} eggs” is not opened');
    expect(parseStepText('Add {2} eggs and } stir').ok).toBe(false);
    expect(parseStepText('{2} eggs')).toMatchObject({ ok: true, value: [{ unit: 'each' }, ' eggs'] });
  });
});
