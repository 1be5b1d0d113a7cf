import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import { type OrderModel, type OrderNeed, orderModel } from '../../src/engine/purchase/order-model.ts';
import type { Supplier } from '../../src/engine/purchase/price-list.ts';
import { type SettledOrder, settleOrder } from '../../src/engine/purchase/settle-order.ts';
import { searchSupplierSets } from '../../src/engine/purchase/supplier-sets.ts';
import { bestOrder } from '../../src/solver/best-order.ts';
import { solveOrder } from '../../src/solver/solve-order.ts';
import { food, pack, q } from '../unit/plan/builders.ts';

/*
 * Small orders, solved a second time by going through every combination of packs there is. The second way knows
 * nothing of the model: it takes sizes, prices and rules from the generated case.
 */
interface Case {
  readonly suppliers: readonly { fee: number; minimum: number }[];
  readonly foods: readonly {
    need: number;
    keeps: number | undefined;
    packs: readonly { supplier: number; size: number; price: number }[];
  }[];
  readonly saves: number;
}

const cases: fc.Arbitrary<Case> = fc.record({
  suppliers: fc.array(
    fc.record({
      fee: fc.constantFrom(0, 0, 2, 5),
      minimum: fc.constantFrom(0, 0, 12, 25, 60),
    }),
    { minLength: 2, maxLength: 2 },
  ),
  foods: fc.array(
    fc.record({
      need: fc.integer({ min: 1, max: 6 }),
      keeps: fc.constantFrom(undefined, 4),
      packs: fc.uniqueArray(
        fc.record({
          supplier: fc.integer({ min: 0, max: 1 }),
          size: fc.integer({ min: 1, max: 5 }),
          price: fc.integer({ min: 1, max: 9 }),
        }),
        { minLength: 1, maxLength: 3, selector: ({ supplier, size }) => `${supplier} ${size}` },
      ),
    }),
    { minLength: 1, maxLength: 4 },
  ),
  saves: fc.constantFrom(0, 0, 3),
});

const NAMES = ['alder', 'birch'];

function modelOf({ suppliers, foods, saves }: Case): OrderModel {
  const needs: OrderNeed[] = foods.map(({ need, keeps, packs }, at) => ({
    ingredient: food(`food-${at}`, { keepsDays: keeps, storage: 'dry' }),
    need: q(`${need} lb`),
    packs: packs.map(({ supplier, size, price }) =>
      pack(`food-${at}`, `${size} lb`, `${price}`, { supplier: NAMES[supplier] as string }),
    ),
  }));
  const known = suppliers.map(({ fee, minimum }, at): [string, Supplier] => {
    const id = NAMES[at] as string;
    const money = { minimumOrder: `${minimum}`, deliveryFee: `${fee}` };
    return [id, { id, name: id, leadDays: 1, deliveryDays: [], ...money }];
  });
  return orderModel(needs, { suppliers: new Map(known), secondSupplierSaves: `${saves}` });
}

/** What orders are compared by, in this order; all but the last least first. */
type Weight = readonly [below: number, cost: number, suppliers: number, packs: number, left: Fraction];

/** The best by going through everything: every food's combinations, then every combination of those. */
function bruteForce({ suppliers, foods, saves }: Case): Weight {
  const ways = foods.map(({ need, keeps, packs }) => {
    const found: { spent: number[]; used: boolean[]; packs: number; left: Fraction }[] = [];
    const grow = (counts: number[]): void => {
      const at = packs[counts.length];
      if (at) {
        const once = Math.ceil(need / at.size);
        const most = keeps === undefined ? Math.max(once, Math.floor((2 * need) / at.size)) : once;
        for (let count = 0; count <= most; count += 1) grow([...counts, count]);
        return;
      }
      const held = packs.reduce((sum, { size }, index) => sum + size * (counts[index] as number), 0);
      if (held < need) return;
      const wasteful = packs.some(({ supplier, size }, index) => {
        if (keeps === undefined || counts[index] === 0) return false;
        const smaller = packs.filter((other) => other.supplier === supplier && other.size < size);
        return [0, ...smaller.map((other) => other.size)].some((other) => held - size + other >= need);
      });
      if (wasteful) return;
      const [spent, used] = [
        [0, 0],
        [false, false],
      ];
      for (const [index, { supplier, price }] of packs.entries()) {
        const count = counts[index] as number;
        spent[supplier] = (spent[supplier] as number) + count * price;
        used[supplier] = used[supplier] || count > 0;
      }
      const packsBought = counts.reduce((a, b) => a + b, 0);
      found.push({ spent, used, packs: packsBought, left: new Fraction(held - need, need) });
    };
    grow([]);
    return found;
  });
  let best: Weight | undefined;
  const combine = (at: number, spent: number[], used: boolean[], packs: number, left: Fraction): void => {
    const food = ways[at];
    if (food) {
      for (const way of food) {
        combine(
          at + 1,
          spent.map((sum, s) => sum + (way.spent[s] as number)),
          used.map((is, s) => is || (way.used[s] as boolean)),
          packs + way.packs,
          left.add(way.left),
        );
      }
      return;
    }
    const open = suppliers.map((_, s) => s).filter((s) => used[s]);
    const below = open.filter((s) => (spent[s] as number) < (suppliers[s]?.minimum ?? 0)).length;
    const cost =
      open.reduce((sum, s) => sum + (spent[s] as number) + (suppliers[s]?.fee ?? 0), 0) +
      saves * (open.length - 1);
    const weight: Weight = [below, cost, open.length, packs, left];
    if (!best || compareWeights(weight, best) < 0) best = weight;
  };
  combine(0, [0, 0], [false, false], 0, new Fraction(0));
  if (!best) throw new Error('every case has an order');
  return best;
}

function compareWeights(a: Weight, b: Weight): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2] || a[3] - b[3] || a[4].compare(b[4]);
}

/** The same of an order that was settled on, from its lines alone. */
function weightOf({ suppliers, foods, saves }: Case, order: SettledOrder): Weight {
  const spent = new Map<string, number>();
  let [packs, left] = [0, new Fraction(0)];
  for (const [at, { need }] of foods.entries()) {
    const lines = order.foods.find(({ ingredient }) => ingredient === `food-${at}`)?.lines ?? [];
    let held = new Fraction(0);
    for (const { pack: bought, count } of lines) {
      spent.set(bought.supplier, (spent.get(bought.supplier) ?? 0) + count * bought.price.toNumber());
      held = held.add(bought.contents.amount.mul(BigInt(count)));
      packs += count;
    }
    left = left.add(held.sub(need).div(need));
  }
  const open = NAMES.map((_, s) => s).filter((s) => spent.has(NAMES[s] as string));
  const goods = open.reduce((sum, s) => sum + (spent.get(NAMES[s] as string) ?? 0), 0);
  const fees = open.reduce((sum, s) => sum + (suppliers[s]?.fee ?? 0), 0);
  const charged = saves * (open.length - 1);
  return [order.below.length, goods + fees + charged, open.length, packs, left];
}

const shown = (weight: Weight) => [...weight.slice(0, 4), (weight[4] as Fraction).toFraction()];

test('the order settled on is what going through every combination finds, ties included', async () => {
  await fc.assert(
    fc.asyncProperty(cases, async (each) => {
      const order = await bestOrder(modelOf(each));
      expect(order.gap.toFixed()).toBe('0');
      expect(order.belowProven).toBe(true);
      expect(shown(weightOf(each, order))).toEqual(shown(bruteForce(each)));
    }),
    { numRuns: 80 },
  );
}, 60_000);

test('the solver alone finds the same order and bounds it, whether or not exact arithmetic had proven it', async () => {
  await fc.assert(
    fc.asyncProperty(cases, async (each) => {
      const model = modelOf(each);
      const nothing = { ...searchSupplierSets(model), best: undefined, proven: false, bound: 0n };
      const order = settleOrder(model, nothing, await solveOrder(model));
      expect(order.gap.toFixed()).toBe('0');
      expect(shown(weightOf(each, order))).toEqual(shown(bruteForce(each)));
    }),
    { numRuns: 30 },
  );
}, 60_000);

test('needs, packs and suppliers in another order make the same order', async () => {
  await fc.assert(
    fc.asyncProperty(
      cases,
      fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
      async (each, chance) => {
        const model = modelOf(each);
        const shuffled = <T>(items: readonly T[]): T[] =>
          items
            .map((item) => ({ item, at: chance.next().value as number }))
            .sort((a, b) => a.at - b.at)
            .map(({ item }) => item);
        const needs = each.foods.map((_, at) => at);
        const again = modelFrom(each, shuffled(needs), shuffled);
        expect(linesOf(await bestOrder(again))).toEqual(linesOf(await bestOrder(model)));
      },
    ),
    { numRuns: 20 },
  );
}, 60_000);

function linesOf(order: SettledOrder): string[] {
  return order.foods.flatMap(({ ingredient, lines }) =>
    lines.map(
      ({ pack: bought, count }) => `${ingredient}: ${count} × ${bought.packText} from ${bought.supplier}`,
    ),
  );
}

function modelFrom(
  each: Case,
  order: readonly number[],
  shuffled: <T>(items: readonly T[]) => T[],
): OrderModel {
  const needs = order.map((at): OrderNeed => {
    const { need, keeps, packs } = each.foods[at] as Case['foods'][number];
    return {
      ingredient: food(`food-${at}`, { keepsDays: keeps, storage: 'dry' }),
      need: q(`${need} lb`),
      packs: shuffled(packs).map(({ supplier, size, price }) =>
        pack(`food-${at}`, `${size} lb`, `${price}`, { supplier: NAMES[supplier] as string }),
      ),
    };
  });
  const known = shuffled(each.suppliers.map((supplier, at) => ({ ...supplier, id: NAMES[at] as string })));
  const suppliers = known.map(({ id, fee, minimum }): [string, Supplier] => [
    id,
    { id, name: id, leadDays: 1, deliveryDays: [], minimumOrder: `${minimum}`, deliveryFee: `${fee}` },
  ]);
  return orderModel(needs, { suppliers: new Map(suppliers), secondSupplierSaves: `${each.saves}` });
}
