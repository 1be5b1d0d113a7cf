import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { kitchenAmount } from '../../../src/engine/measure/kitchen-amount.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { dish, event, food, kitchen, line, pack, prices, recipe } from '../../unit/plan/builders.ts';

/*
 * Portions for 100 guests as caterers reckon them: common practice, no source. Each dish is planned through to
 * batches, containers and purchases.
 */
describe('a table for 100 guests', () => {
  const cannedBeans = food('canned-beans', { sold: ['1 can = 104 oz'] });
  const beans = recipe('baked-beans', '1 can', [line(cannedBeans, '1 can')], {
    pack: { serve: 'full-pan-4' },
  });
  const roast = recipe('roast', '1 roast', [line(food('loin'), '1 each')], {
    batches: 'whole',
  });
  const chicken = recipe('chicken', '50 pieces', [line(food('thigh'), '50 each')]);
  const potatoSalad = recipe('potato-salad', '25 lb', [line(food('potato'), '20 lb')]);
  const salsa = recipe('salsa', '1 gal', [line(food('tomato'), '7 lb')]);
  const tossed = recipe('tossed-salad', '1 bowl', [line(food('lettuce'), '4 lb')]);
  const loaf = food('loaf', { sold: ['1 loaf = 20 pieces'] });
  const bread = recipe('bread', ['1 loaf', '20 pieces'], [line(loaf, '1 loaf')]);
  const plan = planEvent(
    event([
      dish(beans, '1 can per 25 guests'),
      dish(roast, '1 roast per 6 guests'),
      dish(chicken, '1 piece per guest'),
      dish(potatoSalad, '¼ lb per guest'),
      dish(salsa, '2 fl oz per guest'),
      dish(tossed, '1 bowl per 50 guests'),
      dish(bread, '2 pieces per guest'),
    ]),
    kitchen([['full-pan-4', '4 cans', '1']]),
    prices(pack('canned-beans', '1 can', '6.00'), pack('loaf', '1 loaf', '3.00')),
  );
  const need = (name: string) => exactText(plan.dishes.find((each) => each.dish.name === name)!.need);
  const batches = (id: string) => plan.recipes.find((each) => each.recipe.id === id)!.batches.toFraction();
  const packs = (id: string) =>
    plan.purchases.find((each) => each.ingredient.id === id)!.packs.map(({ count }) => count);

  test('needs baked beans from 4 cans, which fill one 4-inch pan that holds four', () => {
    expect([need('baked-beans'), packs('canned-beans')]).toEqual(['4 can', [4]]);
    const [pan, ...more] = plan.dishes[0]!.containers;
    expect([pan?.count, pan?.lastFull.toFraction(), more]).toEqual([1, '1', []]);
  });

  test('needs 17 roasts at 1 for 6', () => {
    expect([need('roast'), batches('roast')]).toEqual(['17 roast', '17']);
  });

  test('needs 100 pieces of chicken, 25 lb of potato salad and 2 bowls of tossed salad', () => {
    expect([need('chicken'), need('potato-salad'), need('tossed-salad')]).toEqual([
      '100 piece',
      '25 lb',
      '2 bowl',
    ]);
  });

  test('needs 200 fl oz of salsa, 1.5625 gal, printed as 1 gal 2 qt 1 cup', () => {
    const salsaDish = plan.dishes.find((each) => each.dish.name === 'salsa')!;
    expect(exactText(salsaDish.need)).toBe('200 fl oz');
    expect(salsaDish.needAsMade.amount.equals(new Fraction('1.5625'))).toBe(true);
    expect(kitchenAmount(salsaDish.need, 'us', 'at-least')).toBe('1 gal 2 qt 1 cup');
    expect(salsaDish.why[0]).toBe('100 guests × 2 fl oz = 200 fl oz = 1 gal 2 qt 1 cup');
  });

  test('needs 10 loaves for 2 pieces each at 20 to a loaf', () => {
    expect([need('bread'), batches('bread'), packs('loaf')]).toEqual(['200 piece', '10', [10]]);
  });
});

/*
 * USDA Recipes for Schools, potato salad E-09 and baked beans: pan for 50 servings in 2 pans, for 100 in 4, which is
 * 25 servings a pan. A full 2½-inch pan of 240 fl oz usable holds 30 portions of 8 fl oz or 60 of 4 (steam-equipment
 * manual).
 */
describe('pans of the published cards', () => {
  const pans = (servings: number, perServing: string, holds: string) => {
    const salad = recipe('salad', ['1 serving', perServing], [line(food('potato'), '4 oz')], {
      pack: { serve: 'pan' },
    });
    const input = event([dish(salad, '1 serving per guest')], {
      guests: { adults: servings, children: 0, vendors: 0, staff: 0 },
    });
    return planEvent(input, kitchen([['pan', holds, '1']]), new Map()).dishes[0]!.containers[0]!.count;
  };

  test('are 2 for 50 servings and 4 for 100 at 25 servings a pan', () => {
    expect([pans(50, '4 oz', '25 servings'), pans(100, '4 oz', '25 servings')]).toEqual([2, 4]);
  });

  test('hold 30 portions of 8 fl oz or 60 of 4 in 240 fl oz', () => {
    expect([pans(30, '8 fl oz', '240 fl oz'), pans(31, '8 fl oz', '240 fl oz')]).toEqual([1, 2]);
    expect([pans(60, '4 fl oz', '240 fl oz'), pans(61, '4 fl oz', '240 fl oz')]).toEqual([1, 2]);
  });
});
