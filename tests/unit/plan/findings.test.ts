import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { EventPlan } from '../../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { foundInWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, pack, prices, recipe, step } from './builders.ts';

const told = (plan: EventPlan) => foundInWords(plan.findings).map(({ about, what }) => `${about}: ${what}`);
const potato = food('potato');
const list = prices(pack('potato', '50 lb sack', '30.00'));

describe('what a plan tells when something is missing', () => {
  test('a dish in a unit that its recipe does not make is left out and said, and the food cost is not known', () => {
    const mash = recipe('mash', '20 servings', [line(potato, '10 lb')]);
    const plan = planEvent(event([dish(mash, '4 oz per guest')]), kitchen(), list);
    expect(told(plan)).toEqual([
      'mash: mash needs 400 oz of mash, but that is made in servings, so the plan leaves it out',
    ]);
    expect(plan.foodCost).toBeNull();
    expect(plan.purchases).toEqual([]);
  });

  test('more of a dish for one guest than anybody eats is said with the most that is believed', () => {
    const mash = recipe('mash', ['20 servings', '10 lb'], [line(potato, '10 lb')]);
    const of = (perGuest: string) => told(planEvent(event([dish(mash, perGuest)]), kitchen(), list));
    expect(of('8 servings per guest')).toEqual([
      expect.stringMatching(/^mash: .*\b4 lb of mash\b.*\b3 lb\b/),
    ]);
    expect(of('6 servings per guest')).toEqual([]);
  });

  test('a use that no conversion turns into the buying unit is said, and the rest is bought', () => {
    const mash = recipe('mash', '20 servings', [line(potato, '10 lb'), line(potato, '3 each')]);
    const plan = planEvent(event([dish(mash, '1 serving per guest')]), kitchen(), list);
    expect(told(plan)).toEqual([
      'potato: mash needs 15 each of potato, but there is no conversion to lb, so the shopping list leaves it out',
    ]);
    expect(plan.purchases[0]?.packs[0]?.count).toBe(1);
    expect(plan.foodCost).toBeNull();
  });

  test('a food without a price, sold in a unit out of reach, or with its yield unsaid is said; tap water is not', () => {
    const chive = food('chive', { yields: new Map([['snipped', new Fraction('9/10')]]) });
    const mash = recipe('mash', '20 servings', [
      line(food('dill'), '1 lb'),
      line(food('cress'), '1 lb'),
      line(chive, '1 lb', 'chopped'),
      line(food('water', { from: ['water'] }), '1 gal'),
    ]);
    const offer = prices(pack('cress', '1 tray', '2.00'), pack('chive', '1 lb', '4.00'));
    const plan = planEvent(event([dish(mash, '1 serving per guest')]), kitchen(), offer);
    expect(told(plan)).toEqual([
      'dill: no price list offers dill on Wednesday, May 12, 2027',
      'cress: cress is needed in lb but sold in trays, and there is no conversion between them',
      'chive: nothing extra is bought for what chive loses when chopped: its yield is not stated',
    ]);
    expect(plan.purchases.map(({ ingredient, cost }) => [ingredient.id, cost === null])).toEqual([
      ['chive', false],
      ['cress', true],
      ['dill', true],
    ]);
  });

  test('a pinned pack that is not on offer is said, and another bought', () => {
    const pinned = food('potato', { pinned: { supplier: 'hill', pack: '20 kg' } });
    const plan = planEvent(
      event([dish(recipe('mash', '20 servings', [line(pinned, '1 lb')]), '1 serving per guest')]),
      kitchen(),
      list,
    );
    expect(told(plan)).toEqual([
      'potato: the pack to buy, hill 20 kg, is not on offer on Wednesday, May 12, 2027; other packs were chosen',
    ]);
    expect(plan.purchases[0]?.packs).toHaveLength(1);
  });

  test('a container that is unknown or measured in what the food is not is said', () => {
    const mash = recipe('mash', '20 servings', [line(potato, '1 lb')], {
      pack: { carry: 'crate', serve: 'pan' },
    });
    const plan = planEvent(
      event([dish(mash, '1 serving per guest')]),
      kitchen([['pan', '2 gal', '9/10']]),
      list,
    );
    expect(told(plan)).toEqual([
      'mash: mash is packed in crate, which kitchen.yaml does not have',
      'mash: mash is made in servings, but pan is measured in gal',
    ]);
  });

  test('food served after its use-by day, and a part finished after what it goes into, are said', () => {
    const sauce = recipe('sauce', '1 gal', [line(potato, '1 lb')], { steps: [step('on the day', 'Blend.')] });
    const pie = recipe('pie', '20 servings', [line(sauce, '1 qt')], {
      keepsDays: 3,
      steps: [step('3 days before', 'Bake.')],
    });
    expect(told(planEvent(event([dish(pie, '1 serving per guest')]), kitchen(), list))).toEqual([
      'pie: pie, started on Wednesday, May 12, 2027, must be used by Friday, May 14, 2027 but is served on Saturday, May 15, 2027; the day it or any part of it is started counts as day 1',
      'sauce: sauce is finished on the day, after pie, which it goes into (3 days before)',
    ]);
  });

  test('food may be served on its last day, and a part be finished on the day of what it goes into', () => {
    const sauce = recipe('sauce', '1 gal', [line(potato, '1 lb')], {
      steps: [step('4 days before', 'Blend.'), step('3 days before', 'Season.')],
    });
    const pie = recipe('pie', '20 servings', [line(sauce, '1 qt')], {
      keepsDays: 4,
      steps: [step('3 days before', 'Bake.')],
    });
    const plan = planEvent(event([dish(pie, '1 serving per guest')]), kitchen(), list);
    expect(told(plan)).toEqual([]);
    // Nothing limits what needs no cold and of which nobody has stated how long it keeps.
    const dry = recipe('crackers', '20 servings', [line(potato, '1 lb')], {
      hold: 'room',
      temperatureControl: false,
      steps: [step('9 days before', 'Bake.')],
    });
    expect(told(planEvent(event([dish(dry, '1 serving per guest')]), kitchen(), list))).toEqual([]);
    // Begun before and finished after it: the last of its steps counts.
    const begun = recipe('sauce', '1 gal', [line(potato, '1 lb')], {
      steps: [step('3 days before', 'Blend.'), step('on the day', 'Season.')],
    });
    const early = recipe('pie', '20 servings', [line(begun, '1 qt')], {
      steps: [step('1 day before', 'Bake.')],
    });
    expect(told(planEvent(event([dish(early, '1 serving per guest')]), kitchen(), list))).toEqual([
      'sauce: sauce is finished on the day, after pie, which it goes into (1 day before)',
    ]);
    // Without steps it counts as done on the day.
    const late = recipe(
      'pie',
      '20 servings',
      [line(recipe('sauce', '1 gal', [line(potato, '1 lb')]), '1 qt')],
      {
        steps: [step('1 day before', 'Bake.')],
      },
    );
    expect(told(planEvent(event([dish(late, '1 serving per guest')]), kitchen(), list))).toEqual([
      'sauce: sauce is finished on the day, after pie, which it goes into (1 day before)',
    ]);
  });

  test('nobody to serve needs nothing', () => {
    const mash = recipe('mash', '20 servings', [line(potato, '1 lb')], {
      pack: { serve: 'pan' },
      steps: [step('on the day', 'Mash.')],
    });
    const nobody = { adults: 0, children: 0, vendors: 0, staff: 0 };
    const plan = planEvent(
      event([dish(mash, '1 serving per guest')], { guests: nobody }),
      kitchen([['pan', '1 gal', '1']]),
      list,
    );
    expect([plan.purchases, plan.days, plan.findings, plan.dishes[0]?.containers]).toEqual([[], [], [], []]);
    expect(plan.foodCost?.amount.toFixed()).toBe('0');
  });
});
