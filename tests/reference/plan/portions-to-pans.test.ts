import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { kitchenAmount } from '../../../src/engine/measure/kitchen-amount.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { allInWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, pack, prices, recipe } from '../../unit/plan/builders.ts';

/*
 * Single rules of thumb for portions: common practice, no source. Each is planned alone, through to batches,
 * containers and purchases; the arithmetic beside it is worked by hand.
 */
describe('one rule of thumb, planned', () => {
  const planned = (
    made: Recipe,
    perGuest: string,
    adults: number,
    onOffer: ReturnType<typeof prices> = new Map(),
  ) => {
    const input = event([dish(made, perGuest)], { guests: { adults, children: 0, vendors: 0, staff: 0 } });
    const plan = planEvent(input, kitchen([['deep-pan', '3 tins', '1']]), onOffer);
    return {
      dish: plan.dishes[0]!,
      batches: plan.recipes[0]!.batches.toFraction(),
      bought: plan.purchases[0],
    };
  };

  test('a tin of braised chickpeas for 18 guests is 4 tins for 72, in two pans of three', () => {
    const tin = food('tinned-chickpeas', { sold: ['1 tin = 96 oz'] });
    const made = recipe('braised-chickpeas', '1 tin', [line(tin, '1 tin')], { pack: { serve: 'deep-pan' } });
    const onOffer = prices(pack('tinned-chickpeas', '1 tin', '5.40'));
    const { dish: chickpeas, bought } = planned(made, '1 tin per 18 guests', 72, onOffer);
    expect([exactText(chickpeas.need), bought?.packs.map(({ count }) => count)]).toEqual(['4 tin', [4]]);
    const [pan, ...more] = chickpeas.containers;
    expect([pan?.count, pan?.lastFull.toFraction(), more]).toEqual([2, '1/3', []]);
  });

  test('a lamb shoulder for 8 guests is 12 shoulders for 90, whole', () => {
    const made = recipe('lamb-shoulder', '1 shoulder', [line(food('lamb'), '1 each')], { batches: 'whole' });
    const { dish: lamb, batches } = planned(made, '1 shoulder per 8 guests', 90);
    expect([exactText(lamb.need), batches]).toEqual(['12 shoulder', '12']);
  });

  test('3 oz of barley for each of 64 guests is 12 lb, and a bowl of leaves for 30 is 3 bowls for 64', () => {
    const barley = recipe('slow-barley', '10 lb', [line(food('pearled-barley'), '4 lb')]);
    expect(exactText(planned(barley, '3 oz per guest', 64).dish.needAsMade)).toBe('12 lb');
    const leaves = recipe('bitter-leaves', '1 bowl', [line(food('radicchio'), '3 lb')]);
    expect(exactText(planned(leaves, '1 bowl per 30 guests', 64).dish.need)).toBe('3 bowl');
  });

  test('1½ fl oz of caper sauce for 72 guests is 108 fl oz, 27/32 gal, printed as 3 qt 1½ cups', () => {
    const made = recipe('caper-sauce', '1 gal', [line(food('parsley'), '1 lb')]);
    const { dish: sauce } = planned(made, '1½ fl oz per guest', 72);
    expect(exactText(sauce.need)).toBe('108 fl oz');
    expect(exactText(sauce.needAsMade)).toBe('27/32 gal');
    expect(kitchenAmount(sauce.need, 'us', 'at-least')).toBe('3 qt 1½ cups');
    expect(allInWords(sauce.why)[0]).toBe('72 guests × 1½ fl oz = 108 fl oz = 3 qt 1½ cups');
  });

  test('three slices of rye for each of 48 guests are 8 loaves at 18 slices a loaf', () => {
    const loaf = food('rye-loaf', { sold: ['1 loaf = 18 slices'] });
    const made = recipe('rye-bread', ['1 loaf', '18 slices'], [line(loaf, '1 loaf')]);
    const onOffer = prices(pack('rye-loaf', '1 loaf', '3.20'));
    const { dish: bread, batches, bought } = planned(made, '3 slices per guest', 48, onOffer);
    expect([exactText(bread.need), batches, bought?.packs.map(({ count }) => count)]).toEqual([
      '144 slice',
      '8',
      [8],
    ]);
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
