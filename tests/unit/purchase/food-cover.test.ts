import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { coverWithin } from '../../../src/engine/purchase/cheapest-cover.ts';
import { foodCover } from '../../../src/engine/purchase/food-cover.ts';
import {
  foodOptions,
  WEIGHT_SCALE,
  type Weights,
  weightedCosts,
} from '../../../src/engine/purchase/food-options.ts';
import type { ModelFood } from '../../../src/engine/purchase/order-model.ts';
import { pack } from '../plan/builders.ts';

interface Sold {
  readonly supplier: number;
  readonly size: number;
  readonly cost: number;
  readonly most: number;
  readonly room: number | undefined;
}

function modelFood(need: number, sold: readonly Sold[]): ModelFood {
  return {
    ingredient: 'flour',
    unit: 'lb',
    measure: new Fraction(1n),
    need: BigInt(need),
    exactNeed: new Fraction(need),
    packs: sold.map(({ supplier, size, cost, most, room }) => ({
      pack: pack('flour', `${size} lb`, '1.00'),
      supplier,
      size: BigInt(size),
      cost: BigInt(cost),
      most: BigInt(most),
      room: room === undefined ? undefined : BigInt(room),
    })),
  };
}

/** A cover by going through every one there is, with all that covers are compared by. */
interface Way {
  readonly counts: readonly number[];
  readonly cost: number;
  readonly packs: number;
  readonly held: number;
}

/** Every cover of a need: each pack up to its most, no more left than the strictest of those bought allows. */
function everyWay(need: number, sold: readonly Sold[]): Way[] {
  let ways: number[][] = [[]];
  for (const { most } of sold)
    ways = ways.flatMap((counts) => Array.from({ length: most + 1 }, (_, count) => [...counts, count]));
  return ways.flatMap((counts) => {
    const sum = (of: (each: Sold) => number) =>
      sold.reduce((all, each, at) => all + of(each) * (counts[at] as number), 0);
    const held = sum(({ size }) => size);
    const rooms = sold.flatMap(({ room }, at) => (room !== undefined && counts[at] !== 0 ? [room] : []));
    if (held < need || rooms.some((room) => held - need > room)) return [];
    return [{ counts, cost: sum(({ cost }) => cost), packs: sum(() => 1), held }];
  });
}

/** Least cost, then fewest packs, least left over, more of the packs named first. */
function better(a: Way, b: Way): number {
  const first = a.counts.findIndex((count, at) => count !== b.counts[at]);
  const named = first < 0 ? 0 : (b.counts[first] as number) - (a.counts[first] as number);
  return a.cost - b.cost || a.packs - b.packs || a.held - b.held || named;
}

const once = (need: number, size: number) => Math.ceil(need / size);
const needs = fc.integer({ min: 1, max: 9 });
const offers = (rooms: fc.Arbitrary<number | undefined>) =>
  fc.array(
    fc.record({
      supplier: fc.integer({ min: 0, max: 2 }),
      size: fc.integer({ min: 1, max: 9 }),
      cost: fc.integer({ min: 1, max: 20 }),
      room: rooms,
    }),
    { minLength: 1, maxLength: 3 },
  );

describe('the cheapest cover of one food', () => {
  test('with a limit to what is left over is what going through every one finds, or there is none', () => {
    fc.assert(
      fc.property(
        needs,
        offers(fc.constant(undefined)),
        fc.integer({ min: 0, max: 4 }),
        (need, sold, room) => {
          const limited = sold.map((each) => ({ ...each, room, most: once(need, each.size) }));
          const [best] = everyWay(need, limited).sort(better);
          const packs = sold.map(({ size, cost }) => ({ size: BigInt(size), cost: BigInt(cost) }));
          const { cover, complete } = coverWithin(BigInt(need), packs, BigInt(room));
          expect(complete).toBe(true);
          expect(cover).toEqual(best && { counts: best.counts, gap: 0n });
        },
      ),
      { numRuns: 400 },
    );
  });

  test('of what spoils, from some of the suppliers, is what going through every one finds, or there is none', () => {
    const rooms = fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined });
    const places = fc.uniqueArray(fc.integer({ min: 0, max: 2 }));
    fc.assert(
      fc.property(needs, offers(rooms), places, (need, sold, open) => {
        const all = sold.map((each) => ({ ...each, most: once(need, each.size) }));
        const own = all.map((each) => ({ ...each, most: open.includes(each.supplier) ? each.most : 0 }));
        const [best] = everyWay(need, own).sort(better);
        const found = foodCover(modelFood(need, all), (supplier) => open.includes(supplier));
        expect(found).toEqual(best && { counts: best.counts, cost: BigInt(best.cost), gap: 0n });
      }),
      { numRuns: 400 },
    );
  });
});

describe('the covers of one food by weights', () => {
  const sold: Sold[] = [
    { supplier: 0, size: 2, cost: 7, most: 5, room: undefined },
    { supplier: 1, size: 5, cost: 15, most: 2, room: undefined },
    { supplier: 2, size: 1, cost: 4, most: 9, room: undefined },
  ];
  const weights = (
    used: readonly number[],
    watched: readonly number[],
    credit: readonly number[],
  ): Weights => ({
    used: new Set(used),
    watched,
    credit,
  });

  test('cost less where a supplier’s minimum wants reaching, and nothing where it is not used', () => {
    expect(weightedCosts(modelFood(9, sold), weights([0, 1], [1], [WEIGHT_SCALE / 4]))).toEqual([
      7 * WEIGHT_SCALE,
      15 * WEIGHT_SCALE * 0.75,
      undefined,
    ]);
  });

  test('are all there are within a slack of the cheapest: of those that spend the same, the best', () => {
    const cases = fc.record({
      need: fc.integer({ min: 1, max: 6 }),
      sold: offers(fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined })),
      used: fc.uniqueArray(fc.integer({ min: 0, max: 2 }), { minLength: 1 }),
      credit: fc.tuple(fc.integer({ min: 0, max: WEIGHT_SCALE }), fc.integer({ min: 0, max: WEIGHT_SCALE })),
      slack: fc.integer({ min: 0, max: 40 * WEIGHT_SCALE }),
      twice: fc.boolean(),
    });
    fc.assert(
      fc.property(cases, ({ need, sold: offered, used, credit, slack, twice }) => {
        const watched = used.slice(0, 2);
        const by = weights(used, watched, credit.slice(0, watched.length));
        const most = (size: number) => once(need, size) * (twice ? 2 : 1);
        const all = offered.map((each) => ({ ...each, most: Math.min(6, most(each.size)) }));
        const of = modelFood(need, all);
        const costs = weightedCosts(of, by);
        const own = all.map((each, at) => ({ ...each, most: costs[at] === undefined ? 0 : each.most }));
        const ways = everyWay(need, own).map((way) => ({
          ...way,
          weighted: way.counts.reduce((sum, count, at) => sum + count * (costs[at] ?? 0), 0),
          spent: watched.map((place) =>
            own.reduce(
              (sum, { supplier, cost }, at) =>
                sum + (supplier === place ? cost * (way.counts[at] as number) : 0),
              0,
            ),
          ),
        }));
        fc.pre(ways.length > 0);
        const least = Math.min(...ways.map(({ weighted }) => weighted));
        const best = new Map<string, (typeof ways)[number]>();
        for (const way of ways.filter(({ weighted }) => weighted <= least + slack)) {
          const key = `${way.cost} ${way.spent.join()}`;
          const known = best.get(key);
          if (!known || better(way, known) < 0) best.set(key, way);
        }
        const { options, completeBelow } = foodOptions(of, by, least, slack);
        expect(completeBelow).toBe(slack + 1);
        const shown = (each: Way & { readonly spent: readonly number[] }, above: number) =>
          [each.counts, each.cost, each.spent, each.packs, each.held, above].join(' ');
        expect(options.map((each) => shown(each, each.excess)).sort()).toEqual(
          [...best.values()].map((each) => shown(each, each.weighted - least)).sort(),
        );
        for (const [at, { excess, left, held }] of options.entries()) {
          expect(excess).toBeGreaterThanOrEqual(options[at - 1]?.excess ?? 0);
          expect(left().toFraction()).toBe(new Fraction(held - need, need).toFraction());
        }
      }),
      { numRuns: 300 },
    );
  });

  test('where they are too many are as many of the cheapest as can be gone through, and say so', () => {
    const many = Array.from({ length: 8 }, (_, at) => ({
      supplier: 0,
      size: 3 + at,
      cost: 100 + 31 * at,
      most: 6,
      room: undefined,
    }));
    const { options, completeBelow } = foodOptions(
      modelFood(40, many),
      weights([0], [0], [0]),
      800 * WEIGHT_SCALE,
      900 * WEIGHT_SCALE,
    );
    expect(options.length).toBeLessThanOrEqual(400);
    expect(completeBelow).toBeLessThanOrEqual(900 * WEIGHT_SCALE);
  });
});
