import { describe, expect, test } from 'vitest';
import { roundBatches } from '../../../src/engine/food/batches.ts';
import { explode } from '../../../src/engine/food/explode.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import { type MoneySetting, moneyAt } from '../../../src/engine/plan/money/at.ts';
import { marginCurve } from '../../../src/engine/plan/money/curve.ts';
import { type BuyerSetting, foodBuyer } from '../../../src/engine/plan/money/food.ts';
import { sampleCourse, sampleDish } from '../quote/sample-terms.ts';
import { day, dish, food, line, pack, prices, q, recipe } from './builders.ts';
import { costs, setting } from './money-kitchen.ts';

const foodAt = (of: MoneySetting, guests: number) => {
  const point = moneyAt(of)(guests);
  return point && moneyText(point.food);
};

describe('food at another count', () => {
  // A pound of it each, in bags of a pound: lamb at 3.00, peas at 1.00; bringing both costs 15.00.
  const served = (id: string) => recipe(id, '1 lb', [line(food(id), '1 lb', 'as purchased')]);
  const [lamb, peas, bread] = [served('lamb'), served('peas'), served('bread')];
  const bags = prices(
    pack('lamb', '1 lb bag', '3.00'),
    pack('peas', '1 lb bag', '1.00'),
    pack('bread', '1 lb bag', '2.00'),
  );
  const base = setting(50, costs('40.00'));
  const mains = sampleCourse({
    name: 'Mains',
    choose: null,
    eachGuest: true,
    dishes: ['lamb', 'peas'].map((id) => sampleDish({ recipe: id, name: id })),
  });
  const beside = sampleCourse({
    name: 'Beside',
    choose: null,
    dishes: [sampleDish({ recipe: 'bread', name: 'bread' })],
  });
  const chosen = { ...base.chosen, courses: [mains, beside] };
  const main = (of: typeof lamb, chosenBy?: number) => ({
    ...dish(of, '1 lb per guest', chosenBy === undefined ? {} : { chosenBy }),
    course: 'Mains',
  });
  const of = (dishes: MoneySetting['input']['dishes']): MoneySetting => ({
    ...base,
    chosen,
    choice: { ...base.choice, mains: { Mains: { lamb: 30, peas: 20 } } },
    input: { ...base.input, dishes },
    buying: { ...base.buying, prices: bags },
  });

  test('has as many of each main as choose it, in the proportions that the guests chose', () => {
    const two = of([main(lamb, 30), main(peas, 20)]);
    // 30 × 3.00 + 20 × 1.00 + 15.00; 60 × 3.00 + 40 × 1.00 + 15.00; 6 × 3.00 + 4 × 1.00 + 15.00.
    expect([50, 100, 10].map((guests) => foodAt(two, guests))).toEqual(['125.00', '235.00', '37.00']);
  });

  test('has a dish of the same course that everybody gets, and dishes of other courses, for everybody', () => {
    // 100 lb of bread at 2.00 more, of whichever course.
    expect(foodAt(of([main(lamb, 30), main(peas, 20), main(bread)]), 100)).toBe('435.00');
    const other = { ...dish(bread, '1 lb per guest'), course: 'Beside' };
    expect(foodAt(of([main(lamb, 30), main(peas, 20), other]), 100)).toBe('435.00');
    // Chosen by a set number in a course that is nobody's choice: those stay as many.
    const set = { ...dish(bread, '1 lb per guest', { chosenBy: 7 }), course: 'Beside' };
    expect(foodAt(of([main(lamb, 30), main(peas, 20), set]), 100)).toBe('249.00');
  });

  test('is not known where a dish is served in a measure that its recipe is not made in', () => {
    const sliced = of([dish(bread, '2 slices per guest')]);
    expect(moneyAt(sliced)(50)).toBeNull();
    expect(marginCurve(sliced)).toBeNull();
  });
});

describe('buying for a cost alone', () => {
  const grain = food('grain', { sold: ['1 cup = 8 oz'] });
  const on = day('2027-05-12');
  const supplier = (id: string, deliveryFee: string) =>
    [id, { id, name: id, leadDays: 1, deliveryDays: [], minimumOrder: '0', deliveryFee }] as const;
  const buyer: BuyerSetting = {
    prices: prices(
      pack('grain', '10 lb bag', '12.00'),
      pack('grain', '10 lb sack', '9.00', { supplier: 'dock' }),
      pack('leek', '1 lb', '4.00', { supplier: 'dock' }),
      pack('salt', '1 lb', '1.00'),
    ),
    day: on,
    currency: 'USD',
    suppliers: new Map([supplier('quay', '15.00'), supplier('dock', '6.00')]),
    usual: new Set(['quay']),
    stock: new Map(),
  };
  const cost = (needs: readonly [Ingredient, string][], change: Partial<BuyerSetting> = {}) => {
    const cooked = recipe(
      'pot',
      '1 pot',
      needs.map(([of, amount]) => line(of, amount, 'as purchased')),
    );
    const { ingredients } = explode([{ recipe: cooked, need: q('1 pot'), by: 'pot' }], roundBatches);
    const { goods, fees } = foodBuyer({ ...buyer, ...change })(ingredients);
    return [goods && moneyText(goods), moneyText(fees)];
  };

  test('goes to the usual suppliers, to any where they are none, and to another for what only that one sells', () => {
    // 11 lb are two bags.
    expect(cost([[grain, '11 lb']])).toEqual(['24.00', '15.00']);
    expect(cost([[grain, '11 lb']], { usual: new Set() })).toEqual(['18.00', '6.00']);
    expect(
      cost([
        [grain, '11 lb'],
        [food('leek'), '2 lb'],
      ]),
    ).toEqual(['32.00', '21.00']);
    // One fee for each supplier, however much it brings.
    expect(
      cost([
        [grain, '11 lb'],
        [food('salt'), '1 lb'],
      ]),
    ).toEqual(['25.00', '15.00']);
  });

  test('takes no fee that nobody has stated', () => {
    expect(cost([[grain, '11 lb']], { suppliers: new Map([supplier('dock', '6.00')]) })).toEqual([
      '24.00',
      '0.00',
    ]);
  });

  test('takes from the store-room first, in whatever measure it is counted there', () => {
    const held = (amount: string) => ({ stock: new Map([['grain', q(amount)]]) });
    expect(cost([[grain, '11 lb']], held('1 lb'))).toEqual(['12.00', '15.00']);
    expect(cost([[grain, '11 lb']], held('2 cups'))).toEqual(['12.00', '15.00']);
    for (const enough of ['11 lb', '40 lb'])
      expect(cost([[grain, '11 lb']], held(enough))).toEqual(['0.00', '0.00']);
    // A count of it says nothing of its weight.
    expect(cost([[grain, '11 lb']], held('3 jars'))).toEqual(['24.00', '15.00']);
  });

  test('knows no cost where a food has no price or no measure in common with its packs, but none is asked for tap water', () => {
    expect(
      cost([
        [food('saffron'), '1 oz'],
        [grain, '1 lb'],
      ]),
    ).toEqual([null, '15.00']);
    expect(
      cost([
        [grain, '1 lb'],
        [grain, '3 jars'],
      ])[0],
    ).toBeNull();
    const water = food('water', { from: ['water'] });
    expect(
      cost([
        [water, '1 gal'],
        [grain, '1 lb'],
      ]),
    ).toEqual(['12.00', '15.00']);
    const sold = prices(pack('water', '1 gal', '2.00'));
    expect(cost([[water, '1 gal']], { prices: sold })).toEqual(['2.00', '15.00']);
  });

  test('of a food whose packs are all from others is from them, and of one on no list from nobody', () => {
    expect(cost([[food('leek'), '1 lb']])).toEqual(['4.00', '6.00']);
    expect(cost([[food('saffron'), '1 oz']])).toEqual([null, '0.00']);
  });
});
