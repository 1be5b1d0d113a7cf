import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  compareOrders,
  costOfSuppliers,
  type OrderCounts,
  type WeighedOrder,
  weighOrder,
} from '../../../src/engine/purchase/weigh-order.ts';
import { model, modelFood, two, weighed } from './modelled-orders.ts';

describe('an order, weighed', () => {
  test('costs its packs, its fees, and the charge for each supplier beyond the first', () => {
    const both = weighed([[0, 1], [1]]);
    // 18 + 20, 5 + 7, 3.
    expect([both.cost, both.goods, both.used, both.packs]).toEqual([53n, [20n, 18n], [0, 1], 2]);
    // 3 × 8 + 20 + 5: alder's minimum of 30 is reached.
    const alone = weighed([[3, 0], [1]]);
    expect([alone.cost, alone.goods, alone.used, alone.packs, alone.below]).toEqual([
      49n,
      [44n, 0n],
      [0],
      4,
      [],
    ]);
    // 20 are short of 30; birch has no minimum.
    expect(both.below).toEqual([0]);
    // 6 for 4½ and 1 for 1: a third over.
    expect([alone.left().toFraction(), both.left().toFraction()]).toEqual(['1/3', '1/9']);
    expect([[], [0], [1, 0]].map((places) => costOfSuppliers(two, places))).toEqual([0n, 5n, 15n]);
  });

  test('that comes to its minimum exactly has reached it', () => {
    const exact = model(two.foods, {
      suppliers: [{ id: 'alder', fee: 5n, minimum: 44n }, two.suppliers[1]!],
    });
    expect(weighed([[3, 0], [1]], exact).below).toEqual([]);
    const more = model(two.foods, { suppliers: [{ id: 'alder', fee: 5n, minimum: 45n }, two.suppliers[1]!] });
    expect(weighed([[3, 0], [1]], more).below).toEqual([0]);
  });

  test.each<[string, OrderCounts]>([
    ['does not cover a need', [[2, 0], [1]]],
    ['lacks a food', [[3, 0], [0]]],
    ['says nothing of a food', [[3, 0]]],
    ['has a pack more often than it may be bought', [[3, 0], [3]]],
    ['has half a pack', [[2.5, 0], [1]]],
    ['has less than no pack', [[6, -1], [1]]],
    ['leaves more than a pack allows', [[4, 0], [1]].map((each, at) => (at === 0 ? [2, 1] : each))],
    [
      'leaves more than the strictest of its packs allows',
      [[1, 1], [1]].map((each, at) => (at === 0 ? [2, 1] : each)),
    ],
  ])('is none where it %s', (_, counts) => {
    expect(weighOrder(two, counts)).toBeUndefined();
  });

  test('is none with less than no pack, though the rest would cover', () => {
    const small = model([
      modelFood('rice', '1', [
        [0, 3n, 9n, 4n],
        [0, 1n, 4n, 4n],
      ]),
    ]);
    expect(weighOrder(small, [[1, -1]])).toBeUndefined();
    expect(weighOrder(small, [[1, 0]])?.packs).toBe(1);
  });

  test('may leave no more than its strictest pack allows, in whichever place that stands', () => {
    const strictFirst = model([
      modelFood('greens', '5', [
        [0, 5n, 9n, 4n, 2n],
        [0, 3n, 6n, 4n, 3n],
        [0, 1n, 3n, 4n, 4n],
      ]),
    ]);
    // 8 of 5 leave 3, 7 leave 2.
    expect(weighOrder(strictFirst, [[1, 1, 0]])).toBeUndefined();
    expect(weighOrder(strictFirst, [[1, 0, 2]])?.packs).toBe(3);
    expect(weighOrder(strictFirst, [[0, 2, 2]])?.packs).toBe(4);
    const strictLast = model([
      modelFood('greens', '5', [
        [0, 3n, 6n, 4n, 3n],
        [0, 5n, 9n, 4n, 2n],
      ]),
    ]);
    expect(weighOrder(strictLast, [[1, 1]])).toBeUndefined();
  });

  test('may leave as much as its strictest pack allows', () => {
    // Bag and sack hold 7 of 5 measures: 2 left, as the sack allows; four bags hold 8: 3 left, as a bag does.
    expect(weighOrder(two, [[1, 1], [1]])?.packs).toBe(3);
    expect(weighOrder(two, [[4, 0], [1]])?.packs).toBe(5);
  });
});

describe('of two orders the better', () => {
  const order = (facts: Partial<WeighedOrder>): WeighedOrder => ({
    counts: [[1, 1]],
    used: [0],
    goods: [],
    below: [],
    cost: 100n,
    packs: 5,
    left: () => new Fraction(1n, 3n),
    ...facts,
  });
  const base = order({});

  test.each<[string, Partial<WeighedOrder>]>([
    ['has fewer suppliers below their minimum, whatever it costs', { below: [0], cost: 1n }],
    ['costs less', { cost: 101n, used: [], packs: 1 }],
    ['has fewer suppliers', { used: [0, 1], packs: 1 }],
    ['has fewer packs', { packs: 6, left: () => new Fraction(0n), counts: [[2, 1]] }],
    ['leaves less', { left: () => new Fraction(1n, 2n), counts: [[2, 1]] }],
    ['is from the suppliers named first', { used: [1], counts: [[2, 1]] }],
    ['has more of the packs named first', { counts: [[0, 1]] }],
  ])('%s', (_, worse) => {
    expect(compareOrders(base, order(worse))).toBeLessThan(0);
    expect(compareOrders(order(worse), base)).toBeGreaterThan(0);
  });

  test('is neither only where they are the same order', () => {
    expect(compareOrders(base, order({}))).toBe(0);
  });
});
