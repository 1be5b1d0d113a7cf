import { describe, expect, test } from 'vitest';
import { settleOrder } from '../../../src/engine/purchase/settle-order.ts';
import { model, modelFood, two, weighed } from './modelled-orders.ts';

describe('an order settled on', () => {
  const dear = [[0, 1], [1]];
  const cheap = [[3, 0], [1]];
  const nothing = { best: undefined, bound: 0n, proven: false };
  const lines = (settled: ReturnType<typeof settleOrder>) =>
    settled.foods.map(({ ingredient, unit, lines: bought, toppedUp }) => [
      ingredient,
      unit,
      bought.map(({ pack: { packText }, count }) => `${count} × ${packText}`),
      toppedUp,
    ]);

  test('is the best that was found, in packs, whoever found it', () => {
    const settled = settleOrder(two, nothing, { orders: [dear, cheap], bound: undefined, below: undefined });
    expect(lines(settled)).toEqual([
      ['flour', 'lb', ['3 × 2 lb'], false],
      ['oil', 'lb', ['1 × 1 lb'], false],
    ]);
    const exact = { orders: [cheap], bound: 0n, complete: false };
    expect(lines(settleOrder(two, { ...nothing, best: weighed(dear) }, undefined, exact))).toEqual(
      lines(settled),
    );
    // What is no order is passed over.
    const wrong = { orders: [[[0, 0], [1]]], bound: undefined, below: undefined };
    expect(lines(settleOrder(two, { ...nothing, best: weighed(cheap) }, wrong))).toEqual(lines(settled));
  });

  test('is nothing where nothing is to be bought', () => {
    expect(settleOrder(two, nothing)).toMatchObject({ foods: [], below: [], belowProven: true });
    expect(settleOrder(two, nothing).gap.toFixed()).toBe('0');
  });

  test('says which food was bought beyond its need: of which a pack could be left off', () => {
    const more = settleOrder(two, { ...nothing, best: weighed([[3, 0], [2]]) });
    expect(more.foods.map(({ toppedUp }) => toppedUp)).toEqual([false, true]);
    // A pound that was not bought could not be left off, and of two packs it is enough that one could.
    const grains = model([
      modelFood('grain', '4', [
        [0, 3n, 9n, 4n],
        [0, 1n, 4n, 4n],
        [0, 2n, 7n, 4n],
      ]),
    ]);
    const topped = (counts: number[]) =>
      settleOrder(grains, { ...nothing, best: weighed([counts], grains) }).foods[0]?.toppedUp;
    expect([topped([2, 0, 0]), topped([1, 1, 0]), topped([1, 2, 0]), topped([1, 1, 1])]).toEqual([
      false,
      false,
      true,
      true,
    ]);
    // Four bags hold 8 for 4½, one less 6.
    const bags = settleOrder(two, { ...nothing, best: weighed([[4, 0], [1]]) });
    expect(bags.foods.map(({ toppedUp }) => toppedUp)).toEqual([true, false]);
  });

  test('may be undercut by what the best of the bounds leaves open, in money', () => {
    const gap = (bounds: { sets: bigint; solver?: bigint; exact?: bigint }, proven = false) =>
      settleOrder(
        two,
        { best: weighed(cheap), bound: bounds.sets, proven },
        { orders: [], bound: bounds.solver, below: undefined },
        bounds.exact === undefined ? undefined : { orders: [], bound: bounds.exact, complete: false },
      ).gap.toFixed();
    // It costs 49 steps of 0.50.
    expect(gap({ sets: 40n })).toBe('4.5');
    expect(gap({ sets: 40n, solver: 44n })).toBe('2.5');
    expect(gap({ sets: 40n, solver: 44n, exact: 48n })).toBe('0.5');
    expect(gap({ sets: 45n, solver: 44n, exact: 43n })).toBe('2');
    expect([gap({ sets: 49n }), gap({ sets: 60n }), gap({ sets: 40n }, true)]).toEqual(['0', '0', '0']);
  });

  test('rests on the bound of every order while fewer suppliers might be below their minimum', () => {
    const settled = (below: number | undefined) =>
      settleOrder(
        two,
        { best: weighed(dear), bound: 40n, proven: false },
        { orders: [], bound: 50n, below },
        { orders: [], bound: 51n, complete: false },
      );
    // It costs 53: the other bounds hold only for orders with as few below.
    expect([settled(undefined).belowProven, settled(undefined).gap.toFixed()]).toEqual([false, '6.5']);
    expect([settled(1).belowProven, settled(1).gap.toFixed()]).toEqual([true, '1']);
    expect(settled(0).belowProven).toBe(false);
    expect(settled(1).below).toEqual(['alder']);
  });
});
