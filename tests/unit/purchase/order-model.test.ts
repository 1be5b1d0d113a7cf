import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import { type OrderNeed, orderModel } from '../../../src/engine/purchase/order-model.ts';
import type { Supplier } from '../../../src/engine/purchase/price-list.ts';
import { keepsFor, roomAboveNeed, spoils } from '../../../src/engine/purchase/spoilage.ts';
import { food, pack, q } from '../plan/builders.ts';

const supplier = (id: string, facts: Partial<Supplier> = {}): [string, Supplier] => [
  id,
  { id, name: id, leadDays: 1, deliveryDays: [], minimumOrder: '0', deliveryFee: '0', ...facts },
];

function need(
  id: string,
  amount: string,
  offers: readonly (readonly [supplier: string, pack: string, price: string])[],
  facts: Partial<Ingredient> = {},
): OrderNeed {
  const packs = offers.map(([from, text, price]) => pack(id, text, price, { supplier: from }));
  return { ingredient: food(id, { storage: 'dry', ...facts }), need: q(amount), packs };
}

const flour = need('flour', '12 lb', [
  ['quay', '5 lb bag', '6.00'],
  ['hill', '10 lb sack', '10.50'],
]);

describe('the model of an order', () => {
  test('is in whole steps of money and whole measures of each food, suppliers and packs by their names', () => {
    const model = orderModel([flour], {
      suppliers: new Map([supplier('quay', { deliveryFee: '2.50', minimumOrder: '20' })]),
      secondSupplierSaves: '1',
    });
    // 0.50 is what 1.00, 2.50, 20.00, 6.00 and 10.50 are whole multiples of; 5 lb what both packs are.
    expect(model.step.toFraction()).toBe('1/2');
    expect(model.further).toBe(2n);
    expect(model.suppliers).toEqual([
      { id: 'hill', fee: 0n, minimum: 0n },
      { id: 'quay', fee: 5n, minimum: 40n },
    ]);
    const [modelled] = model.foods;
    expect([modelled?.ingredient, modelled?.unit, modelled?.measure.toFraction()]).toEqual([
      'flour',
      'lb',
      '5',
    ]);
    // 12 lb are 2.4 measures, which only three cover.
    expect([modelled?.exactNeed.toFraction(), modelled?.need]).toEqual(['12/5', 3n]);
    expect(
      modelled?.packs.map(({ pack: { packText }, supplier: at, size, cost, most, room }) => [
        packText,
        at,
        size,
        cost,
        most,
        room,
      ]),
    ).toEqual([
      // Once 2 sacks and 3 bags; up to twice the 12 lb 2 sacks and 4 bags.
      ['10 lb sack', 0, 2n, 21n, 2n, undefined],
      ['5 lb bag', 1, 1n, 12n, 4n, undefined],
    ]);
  });

  test('lets food that keeps be bought up to twice, and once where one pack is more than that', () => {
    const most = (amount: string, facts: Partial<Ingredient> = {}) =>
      orderModel([need('rice', amount, [['quay', '10 lb bag', '9.00']], facts)], {
        suppliers: new Map(),
        secondSupplierSaves: '0',
      }).foods[0]?.packs[0]?.most;
    expect(
      ['1 lb', '4 lb', '5 lb', '10 lb', '14 lb', '15 lb', '20 lb'].map((amount) => most(amount)),
    ).toEqual([1n, 1n, 1n, 2n, 2n, 3n, 4n]);
    expect(['1 lb', '10 lb', '15 lb', '20 lb'].map((amount) => most(amount, { keepsDays: 5 }))).toEqual([
      1n,
      1n,
      2n,
      2n,
    ]);
  });

  test('leaves out needs of nothing and of what no pack measures, and takes a pinned pack alone', () => {
    const nothing = { ...flour, need: { ...flour.need, amount: new Fraction(0n) } };
    const owed = { ...flour, need: { ...flour.need, amount: new Fraction(-2n) } };
    const unmeasured = need('beans', '3 lb', [['quay', '1 crate', '6.00']]);
    const pinned = need(
      'oil',
      '2 gal',
      [
        ['quay', '1 gal jug', '21.00'],
        ['hill', '1 gal jug', '14.00'],
      ],
      { pinned: { supplier: 'quay', pack: '1 GAL  jug' } },
    );
    const model = orderModel([nothing, owed, unmeasured, pinned], {
      suppliers: new Map(),
      secondSupplierSaves: '0',
    });
    expect(model.foods.map(({ ingredient, packs }) => [ingredient, packs.length])).toEqual([['oil', 1]]);
    expect(model.suppliers.map(({ id }) => id)).toEqual(['quay']);
  });

  test('counts money in steps that fees, minimums and prices are all whole multiples of', () => {
    const step = (facts: Partial<Supplier>, price: string) =>
      orderModel([need('rice', '2 lb', [['quay', '1 lb', price]])], {
        suppliers: new Map([supplier('quay', facts)]),
        secondSupplierSaves: '2',
      }).step.toFraction();
    expect([
      step({ deliveryFee: '0.25' }, '4'),
      step({ minimumOrder: '0.50' }, '4'),
      step({}, '4.05'),
    ]).toEqual(['1/4', '1/2', '1/20']);
  });

  test('has its suppliers by their ids, whatever food they sell', () => {
    const needs = [
      need('flour', '2 lb', [['quay', '1 lb', '1']]),
      need('rice', '2 lb', [['hill', '1 lb', '1']]),
    ];
    const { suppliers, foods } = orderModel(needs, { suppliers: new Map(), secondSupplierSaves: '0' });
    expect(suppliers.map(({ id }) => id)).toEqual(['hill', 'quay']);
    expect(foods.map(({ packs }) => packs[0]?.supplier)).toEqual([1, 0]);
  });

  test('has its foods by their ids, then by the unit they are needed in', () => {
    const order = (needs: readonly OrderNeed[]) =>
      orderModel(needs, { suppliers: new Map(), secondSupplierSaves: '0' }).foods.map(
        ({ ingredient, unit }) => `${ingredient} ${unit}`,
      );
    const rice = need('rice', '2 lb', [['quay', '1 lb', '1.00']]);
    const oz = need('flour', '2 oz', [['quay', '1 lb', '1.00']]);
    const sorted = ['flour lb', 'flour oz', 'rice lb'];
    expect([order([flour, oz, rice]), order([rice, oz, flour])]).toEqual([sorted, sorted]);
  });
});

describe('what spoils', () => {
  test('is what keeps for a month at most; what says nothing, where it is not dry or frozen, keeps four days', () => {
    const days = (keepsDays: number | undefined, storage: Ingredient['storage']) => [
      keepsFor({ keepsDays, storage }),
      spoils({ keepsDays, storage }),
    ];
    expect(days(30, 'dry')).toEqual([30, true]);
    expect(days(31, 'chilled')).toEqual([31, false]);
    expect(days(undefined, 'dry')).toEqual([undefined, false]);
    expect(days(undefined, 'frozen')).toEqual([undefined, false]);
    expect(days(undefined, 'chilled')).toEqual([4, true]);
    expect(days(undefined, undefined)).toEqual([4, true]);
  });

  test('is left over by less than what a pack holds above the next smaller one of the same supplier', () => {
    expect(
      roomAboveNeed([
        { supplier: 'quay', size: 10n },
        { supplier: 'quay', size: 4n },
        { supplier: 'hill', size: 8n },
        { supplier: 'quay', size: 2n },
        { supplier: 'quay', size: 10n },
      ]),
    ).toEqual([5n, 1n, 7n, 1n, 5n]);
  });

  test('is bought in the model with that room', () => {
    const lettuce = need(
      'lettuce',
      '12 lb',
      [
        ['quay', '10 lb case', '10.00'],
        ['quay', '4 lb box', '7.00'],
      ],
      { keepsDays: 5 },
    );
    const [modelled] = orderModel([lettuce], { suppliers: new Map(), secondSupplierSaves: '0' }).foods;
    // Measures of 2 lb: the box of 2 leaves at most 1, the case of 5 at most 5 − 2 − 1.
    expect(modelled?.packs.map(({ size, room, most }) => [size, room, most])).toEqual([
      [5n, 2n, 2n],
      [2n, 1n, 3n],
    ]);
  });
});
