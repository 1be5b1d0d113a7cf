import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { FoodOption } from '../../../src/engine/purchase/food-options.ts';
import { type JoinedFoods, joinHalves } from '../../../src/engine/purchase/join-halves.ts';

/** A cover that spends so much with each of two suppliers, and what it costs by weights above the best. */
const option = (spent: readonly [number, number], excess = 0): FoodOption => ({
  counts: [],
  cost: spent[0] + spent[1],
  spent,
  packs: 1,
  held: 1,
  left: () => new Fraction(0n),
  excess,
});

/*
 * Two suppliers who want 50 each. Of the combinations of four foods only one spends just that: 17 + 13 + 0 + 20 with
 * the first, 0 + 8 + 31 + 11 with the second. The known order spends 57 and 58, 15 beyond the minimums.
 */
const options = [
  [option([20, 0]), option([0, 19]), option([17, 0])],
  [option([13, 8]), option([12, 12])],
  [option([0, 31]), option([9, 22]), option([5, 30])],
  [option([20, 11]), option([22, 13])],
];
const foods: JoinedFoods = { options, minimums: [50, 50], credit: [1, 1], below: 15, packsCost: 115 };
const spent = (found: readonly FoodOption[] | undefined) =>
  found && [0, 1].map((s) => found.reduce((sum, each) => sum + (each.spent[s] as number), 0));

describe('halves of an order, joined by what each lacks', () => {
  test('come to the one order that spends just the minimums', () => {
    const found = joinHalves(foods);
    expect(found).toEqual([options[0]?.[2], options[1]?.[0], options[2]?.[0], options[3]?.[0]]);
    expect(spent(found)).toEqual([50, 50]);
  });

  test('never fall short of a minimum, however near they come to it', () => {
    // 53 and 51, or 52 and 52: 3 beyond the minimums.
    const [first = 0, second = 0] = spent(joinHalves({ ...foods, minimums: [50, 51] })) ?? [];
    expect([first + second, first >= 50, second >= 51]).toEqual([104, true, true]);
    expect(joinHalves({ ...foods, minimums: [70, 70] })).toBeUndefined();
  });

  test('are nothing where none comes to less than is asked', () => {
    expect(joinHalves({ ...foods, below: 0 })).toBeUndefined();
    expect(joinHalves({ ...foods, minimums: [50, 51], below: 3 })).toBeUndefined();
    expect(joinHalves({ ...foods, minimums: [50, 51], below: 4 })).toBeDefined();
  });

  test('weigh what the options cost above the best against what is spent beyond a minimum', () => {
    const dear = options.with(0, [option([20, 0]), option([17, 0], 9)]);
    // Just the minimums with an excess of 9, or 3 beyond the first of them with none.
    expect(spent(joinHalves({ ...foods, options: dear }))).toEqual([53, 50]);
    // With four parts for each step beyond the first minimum that is 12, and so 9 are less.
    expect(spent(joinHalves({ ...foods, options: dear, credit: [4, 1] }))).toEqual([50, 50]);
  });

  test('are not looked for where nothing is lost by spending beyond a minimum, nor of one food', () => {
    expect(joinHalves({ ...foods, credit: [0, 0] })).toBeUndefined();
    expect(joinHalves({ ...foods, options: options.slice(0, 1), minimums: [17, 0] })).toBeUndefined();
  });
});
