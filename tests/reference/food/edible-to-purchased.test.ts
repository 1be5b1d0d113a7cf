import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { explode } from '../../../src/engine/food/explode.ts';
import { convert } from '../../../src/engine/measure/conversions.ts';
import { kitchenAmount } from '../../../src/engine/measure/kitchen-amount.ts';
import type { Quantity } from '../../../src/engine/measure/quantity.ts';
import { food, line, q, recipe } from '../../unit/plan/builders.ts';

/** As purchased for an edible portion of a food with this share left, by way of a recipe that calls for it. */
function asPurchased(edible: string, share: Fraction, preparation: string): Quantity {
  const potato = food('food', { yields: new Map([[preparation, share]]) });
  const dish = recipe('dish', '1 serving', [line(potato, edible, preparation)]);
  const { ingredients } = explode([{ recipe: dish, need: q('1 serving'), by: 'test' }], (exact) => exact);
  return ingredients.get('food')!.uses[0]!.asPurchased;
}

/** What a recipe may call for when so much is bought. */
function edible(purchased: string, share: string): Fraction {
  return q(purchased).amount.mul(new Fraction(share));
}

describe('edible portion to as purchased', () => {
  /*
   * Exercises of an open textbook: Business Math for bakers, chapter "Yield Percents" (zucchini 95 %, strawberries
   * 87 %, pears 78 %).
   */
  test('agrees with the textbook exercises on yield percents', () => {
    expect(edible('3 lb', '95/100').equals(asPurchasedBack('2.85 lb', '95/100', '3 lb'))).toBe(true);
    expect(edible('5000 g', '87/100').toFraction()).toBe('4350');
    expect(asPurchased('4350 g', new Fraction('87/100'), 'hulled').amount.toFraction()).toBe('5000');
    // Published as 41.03 oz, two decimals of 1600/39.
    expect(asPurchased('32 oz', new Fraction('78/100'), 'peeled').amount.round(2).toString()).toBe('41.03');
  });

  /* US Armed Forces Recipe Service, A. General Information No. 6: factor from edible portion to as purchased 1.19. */
  test('agrees with the Armed Forces card on pared cucumber, 3 lb × 1.19 = 3.57 lb', () => {
    expect(asPurchased('3 lb', new Fraction('1.19').inverse(), 'pared').amount.toString()).toBe('3.57');
  });

  /*
   * USDA Recipes for Schools, E-09 Potato Salad, marketing guide: celery 1 lb 2 oz ready is 1 lb 6 oz bought for 50
   * servings, 2 lb 4 oz is 2 lb 12 oz for 100. The share left of the card for 50 must give the card for 100.
   */
  test('agrees with the marketing guide of USDA E-09 on celery', () => {
    const share = q('1 lb 2 oz').amount.div(q('1 lb 6 oz').amount);
    expect(kitchenAmount(asPurchased('1 lb 2 oz', share, 'chopped'), 'us', 'at-least')).toBe('1 lb 6 oz');
    expect(kitchenAmount(asPurchased('2 lb 4 oz', share, 'chopped'), 'us', 'at-least')).toBe('2 lb 12 oz');
  });

  /*
   * Armed Forces Recipe Service: Cabbage and Carrot Slaw for 100, cabbage 10½ lb ready, 13⅛ lb issued; M-009 Cole
   * Slaw, 12 lb ready, 15 lb issued. Both are 80 %.
   */
  test('agrees with two slaw cards on cabbage that leaves the same share', () => {
    const share = q('12 lb').amount.div(q('15 lb').amount);
    expect(asPurchased('10 1/2 lb', share, 'shredded').amount.equals(q('13 1/8 lb').amount)).toBe(true);
  });

  test('takes nothing off where the recipe line is written as purchased', () => {
    const potato = food('potato', { yield: new Fraction('81/100') });
    const dish = recipe('dish', '1 serving', [line(potato, '9 lb 5 oz', 'as purchased')]);
    const { ingredients } = explode([{ recipe: dish, need: q('2 servings'), by: 'test' }], (exact) => exact);
    // USDA E-09 writes its potatoes as purchased: 9 lb 5 oz for 50, 18 lb 10 oz for 100.
    expect(kitchenAmount(ingredients.get('potato')!.uses[0]!.asPurchased, 'us', 'line')).toBe('18 lb 10 oz');
  });
});

function asPurchasedBack(portion: string, share: string, purchased: string): Fraction {
  expect(asPurchased(portion, new Fraction(share), 'trimmed').amount.equals(q(purchased).amount)).toBe(true);
  return q(portion).amount;
}

/*
 * USDA Food Buying Guide for Child Nutrition Programs, Section 1: servings per purchase unit and purchase units for
 * 100 servings, which the guide rounds up to a tenth.
 */
describe('purchase units for 100 servings', () => {
  test.each([
    ['black beans, No. 10 can, ¼ cup heated and drained', '27.80', '3.6'],
    ['black beans, No. 10 can, ¼ cup drained', '45.00', '2.3'],
    ['black beans, No. 300 can, ⅜ cup heated and drained', '3.94', '25.4'],
    ['black beans, dry, pound, ¼ cup cooked', '18.30', '5.5'],
    ['black-eyed beans, No. 10 can, heated and drained', '37.70', '2.7'],
    ['black-eyed beans, No. 10 can, drained', '46.00', '2.2'],
  ])('of %s, at %s servings a unit, are %s', (_, servings, units) => {
    const beans = food('beans', { sold: [`1 can = ${servings} servings`] });
    const dish = recipe('dish', '1 serving', [line(beans, '1 serving')]);
    const { ingredients } = explode(
      [{ recipe: dish, need: q('100 servings'), by: 'test' }],
      (exact) => exact,
    );
    const cans = convert(ingredients.get('beans')!.uses[0]!.asPurchased, 'can', beans.conversions);
    expect(cans?.amount.ceil(1).toString()).toBe(units);
  });
});
