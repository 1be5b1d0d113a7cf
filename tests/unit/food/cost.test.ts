import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import type { Dish, Package } from '../../../src/engine/menu/package.ts';
import { parseAppetite } from '../../../src/engine/odds/appetite.ts';
import { dishCostPerGuest, packageCostPerHead } from '../../../src/engine/plan/money/package-cost.ts';
import { costOfNeeds } from '../../../src/engine/purchase/food-cost.ts';
import type { PriceList } from '../../../src/engine/purchase/price-list.ts';
import { day, dish, food, line, pack, prices, recipe } from '../plan/builders.ts';

const on = day('2027-05-12');
const flour = food('flour', { sold: ['1 cup = 120 g'] });
const oil = food('oil', { pinned: { supplier: 'quay', pack: '1 qt' } });
const onion = food('onion', { yield: new Fraction('80/100') });
const water = food('water', { from: ['water'] });
const list = prices(
  pack('flour', '50 lb sack', '20.00'),
  pack('flour', '5 lb bag', '2.50'),
  pack('oil', '1 qt', '8.00'),
  pack('oil', '1 gal', '20.00'),
  pack('onion', '10 lb bag', '6.00'),
  pack('onion', '10 lb bag', '9.00', { validFrom: day('2027-06-01') }),
);
const dough = recipe('dough', '4 lb', [line(flour, '2 lb'), line(water, '1 qt')], { batches: 'whole' });
const tart = recipe(
  'tart',
  ['1 each', '8 pieces'],
  [line(dough, '1 lb'), line(onion, '2 lb'), line(oil, '1 cup')],
  { batches: 'whole' },
);

/** What one batch costs, and one unit of it. */
const costOfBatch = (of: Recipe, at: PriceList, when: Day) =>
  costOfNeeds([{ recipe: of, need: of.makes[0], by: of.id }], at, when);
const costOfServing = (of: Recipe, at: PriceList, when: Day) =>
  costOfNeeds(
    [{ recipe: of, need: { amount: new Fraction(1n), unit: of.makes[0].unit }, by: of.id }],
    at,
    when,
  );

describe('the cost of a recipe', () => {
  test('takes the best rate, the pinned pack before it, losses included, and nothing rounded', () => {
    // Dough 2 lb at 0.40; a tart takes a quarter of it 0.20, onions 2.5 lb at 0.60 = 1.50, a cup of oil 2.00.
    expect(costOfBatch(dough, list, on)).toEqual({ amount: expect.anything(), unpriced: [] });
    expect(costOfBatch(dough, list, on).amount.toFixed()).toBe('0.8');
    expect(costOfBatch(tart, list, on).amount.toFixed()).toBe('3.7');
    expect(costOfServing(dough, list, on).amount.toFixed()).toBe('0.2');
    expect(costOfBatch(tart, list, day('2027-06-02')).amount.toFixed()).toBe('4.45');
  });

  test('takes the lowest rate whichever pack is listed first, and names a recipe that its need does not measure', () => {
    const both = (first: string, last: string) =>
      costOfBatch(dough, prices(pack('flour', '1 lb bag', first), pack('flour', '2 lb bag', last)), on);
    // 2 lb at 0.40 a pound, in either bag.
    expect([both('0.40', '1.00').amount.toFixed(), both('0.50', '0.80').amount.toFixed()]).toEqual([
      '0.8',
      '0.8',
    ]);
    const { unpriced } = costOfNeeds(
      [{ recipe: dough, need: { amount: new Fraction(1n), unit: 'loaf' }, by: 'dough' }],
      list,
      on,
    );
    expect(unpriced).toEqual(['dough']);
  });

  test('names what no pack prices, and what is priced in a unit that nothing leads to', () => {
    const soup = recipe('soup', '1 gal', [
      line(food('saffron'), '1 g'),
      line(onion, '2 each'),
      line(flour, '1 cup'),
    ]);
    const { amount, unpriced } = costOfBatch(soup, list, on);
    expect(unpriced).toEqual(['onion', 'saffron']);
    expect(amount.toFixed(4)).toBe('0.1058');
  });
});

describe('the cost of a menu', () => {
  const bowl = recipe('bowl', '1 serving', [line(onion, '1 lb')]);
  const plain = recipe('plain', '1 serving', [line(flour, '1 lb')]);
  const dishOf = (of: typeof bowl, perGuest: string, overage?: Fraction): Dish => {
    const { perGuest: amount, counts } = dish(of, perGuest);
    return { recipe: of, perGuest: amount, counts, overage };
  };
  const menu = (courses: Package['courses']) => ({ courses }) as Package;

  test('by the guest takes its share of a unit and the overage', () => {
    // An eighth of a tart at 3.70, and 8 % more.
    expect(
      dishCostPerGuest(dishOf(tart, '1 piece per guest'), new Fraction('8/100'), list, on).amount.toFixed(4),
    ).toBe('0.4995');
  });

  test('by the head of a table holds whole units and batches, so that few guests cost more each', () => {
    const table = menu([
      { name: 'Tart', choose: null, eachGuest: false, dishes: [dishOf(tart, '1 piece per guest')] },
    ]);
    const cost = (adults: number) => packageCostPerHead(table, adults, new Fraction(0n), list, on).amount;
    // 9 pieces are 2 tarts and 2 lb of a whole 4 lb dough: 2 × 3.50 + 0.80; 16 are 2 as well; 64 are 8 on 2 doughs.
    expect(cost(9).times(9).toFixed(6)).toBe('7.800000');
    expect(cost(16).toFixed()).toBe('0.4875');
    expect(cost(64).times(64).toFixed()).toBe('29.6');
  });

  test('takes the costliest of a choice, so that the price holds whatever is chosen', () => {
    const dishes = [dishOf(plain, '1 serving per guest'), dishOf(bowl, '1 serving per guest')];
    const cost = (course: { choose: number | null; eachGuest: boolean }) =>
      packageCostPerHead(
        menu([{ name: 'Mains', ...course, dishes }]),
        10,
        new Fraction(0n),
        list,
        on,
      ).amount.toFixed();
    // Onion 1.25 lb at 0.60 = 0.75, flour 0.40.
    expect(cost({ choose: 1, eachGuest: false })).toBe('0.75');
    expect(cost({ choose: null, eachGuest: true })).toBe('0.75');
    expect(cost({ choose: null, eachGuest: false })).toBe('1.15');
  });

  test('takes the dearer of a dish and the one that some guests get instead of it, whichever that is', () => {
    const original = dishOf(bowl, '1 serving per guest');
    const cheap = { ...dishOf(plain, '1 serving per guest'), insteadOf: { recipe: 'bowl' } };
    const cost = (...dishes: Dish[]) =>
      packageCostPerHead(
        menu([{ name: 'Mains', choose: null, eachGuest: false, dishes }]),
        10,
        new Fraction(0n),
        list,
        on,
      ).amount.toFixed();
    // Onion 0.75, flour 0.40; two pounds of flour are 0.80.
    expect(cost(original, cheap)).toBe('0.75');
    const dear = { ...dishOf(plain, '2 servings per guest'), insteadOf: { recipe: 'bowl' } };
    expect(cost(original, dear)).toBe('0.8');
    // In the place of a dish that the course has not, it is one more dish.
    expect(cost(original, { ...dear, insteadOf: { recipe: 'gone' } })).toBe('1.55');
  });

  test('has the overage of the dish, else the one that the style has, and is for whole adults from one on', () => {
    const cost = (own: Fraction | undefined, style: string, adults = 10) =>
      packageCostPerHead(
        menu([
          {
            name: 'Mains',
            choose: null,
            eachGuest: false,
            dishes: [dishOf(plain, '1 serving per guest', own)],
          },
        ]),
        adults,
        new Fraction(style),
        list,
        on,
      ).amount.toFixed();
    // 10 servings at 0.40, and a tenth or a half more.
    expect([
      cost(undefined, '1/10'),
      cost(new Fraction('1/2'), '1/10'),
      cost(new Fraction(0n), '1/10'),
    ]).toEqual(['0.44', '0.6', '0.4']);
    expect(cost(undefined, '0', 1)).toBe('0.4');
    for (const adults of [0, 2.5, -1]) expect(() => cost(undefined, '0', adults)).toThrow(`not ${adults}`);
  });

  test('carries what a chosen risk of running short asks for, as the plan will', () => {
    const appetite = parseAppetite({ none: '50 %', one: '50 %' });
    if (!appetite.ok) throw new Error(appetite.what);
    const none = { firstChoice: undefined, helping: undefined, costs: undefined };
    const takeRate = { ...none, appetite: appetite.value, shortOneIn: 16 };
    const dishes = [{ ...dishOf(plain, '1 serving per guest'), takeRate }];
    const table = menu([{ name: 'Mains', choose: null, eachGuest: false, dishes }]);
    // Of four who each take one or none with equal chance, three leave one in 16 short: by hand. 3 × 0.40 ÷ 4.
    expect(packageCostPerHead(table, 4, new Fraction(0n), list, on).amount.toFixed()).toBe('0.3');
  });
});
