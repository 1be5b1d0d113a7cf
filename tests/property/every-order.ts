import fc from 'fast-check';
import { type OrderModel, type OrderNeed, orderModel } from '../../src/engine/purchase/order-model.ts';
import type { Supplier } from '../../src/engine/purchase/price-list.ts';
import type { SettledOrder } from '../../src/engine/purchase/settle-order.ts';
import { food, pack, q } from '../unit/plan/builders.ts';

/*
 * Small orders, solved a second time by going through every combination of packs there is. The second way knows
 * nothing of the model: it takes sizes, prices and rules from the generated case.
 */
export interface Case {
  readonly suppliers: readonly { fee: number; minimum: number }[];
  readonly foods: readonly {
    need: number;
    keeps: number | undefined;
    packs: readonly { supplier: number; size: number; price: number }[];
  }[];
  readonly saves: number;
}

export const cases: fc.Arbitrary<Case> = fc.record({
  suppliers: fc.array(
    fc.record({
      fee: fc.constantFrom(0, 0, 2, 5),
      minimum: fc.constantFrom(0, 0, 12, 25, 60),
    }),
    { minLength: 2, maxLength: 2 },
  ),
  foods: fc.array(
    fc.record({
      need: fc.integer({ min: 1, max: 4 }),
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

/*
 * The same with minimum orders that press: prices in cents of goods that cost about the same by weight, so that many
 * orders differ by little, and minimums near what the foods come to.
 */
export const pressing: fc.Arbitrary<Case> = fc.record({
  suppliers: fc.array(
    fc.record({ fee: fc.constantFrom(0, 0, 1250), minimum: fc.integer({ min: 1500, max: 9000 }) }),
    { minLength: 2, maxLength: 2 },
  ),
  foods: fc.array(
    fc.record({
      need: fc.integer({ min: 2, max: 8 }),
      keeps: fc.constantFrom(undefined, undefined, 4),
      packs: fc
        .uniqueArray(
          fc.record({
            supplier: fc.integer({ min: 0, max: 1 }),
            size: fc.integer({ min: 2, max: 10 }),
            rate: fc.integer({ min: 290, max: 330 }),
          }),
          { minLength: 1, maxLength: 2, selector: ({ supplier, size }) => `${supplier} ${size}` },
        )
        .map((packs) =>
          packs.map(({ supplier, size, rate }) => ({ supplier, size, price: rate * size + size })),
        ),
    }),
    { minLength: 2, maxLength: 3 },
  ),
  saves: fc.constantFrom(0, 0, 2000),
});

/* The same with more foods, which nobody could go through one by one. */
export const larger: fc.Arbitrary<Case> = fc.record({
  suppliers: fc.array(
    fc.record({ fee: fc.constantFrom(0, 1250), minimum: fc.integer({ min: 20_000, max: 50_000 }) }),
    { minLength: 2, maxLength: 2 },
  ),
  foods: fc.array(
    fc.record({
      need: fc.integer({ min: 5, max: 40 }),
      keeps: fc.constantFrom(undefined, undefined, 4),
      packs: fc
        .uniqueArray(
          fc.record({
            supplier: fc.integer({ min: 0, max: 1 }),
            size: fc.integer({ min: 2, max: 25 }),
            rate: fc.integer({ min: 250, max: 350 }),
          }),
          { minLength: 2, maxLength: 5, selector: ({ supplier, size }) => `${supplier} ${size}` },
        )
        .map((packs) => packs.map(({ supplier, size, rate }) => ({ supplier, size, price: rate * size }))),
    }),
    { minLength: 8, maxLength: 12 },
  ),
  saves: fc.constantFrom(0, 2000),
});

export const NAMES = ['alder', 'birch', 'cedar', 'dogwood'];

export function modelOf({ suppliers, foods, saves }: Case): OrderModel {
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

/** What orders are compared by, in this order; the least first. Left over in twelfths of each food's need. */
type Weight = readonly [below: number, cost: number, suppliers: number, packs: number, left: number];

/** So much spent with each supplier, and the fewest packs, then the least left over, that it was ever spent on. */
interface Way {
  readonly spent: readonly number[];
  readonly used: readonly boolean[];
  readonly packs: number;
  readonly left: number;
}

/**
 * The best by going through everything: every food's combinations of packs, then those of all foods together. Ways
 * that spend the same with the same suppliers are kept once, the one with fewer packs and less left over.
 */
export function bruteForce({ suppliers, foods, saves }: Case): Weight {
  let orders: Way[] = [
    { spent: suppliers.map(() => 0), used: suppliers.map(() => false), packs: 0, left: 0 },
  ];
  for (const each of foods) {
    const ways = distinct(waysOf(each, suppliers.length));
    orders = distinct(
      orders.flatMap((order) =>
        ways.map((way) => ({
          spent: order.spent.map((sum, s) => sum + (way.spent[s] as number)),
          used: order.used.map((is, s) => is || (way.used[s] as boolean)),
          packs: order.packs + way.packs,
          left: order.left + way.left,
        })),
      ),
    );
  }
  const [best] = orders.map((order) => weigh(order, suppliers, saves)).sort(compareWeights);
  if (!best) throw new Error('every case has an order');
  return best;
}

function waysOf({ need, keeps, packs }: Case['foods'][number], suppliers: number): Way[] {
  const found: Way[] = [];
  const grow = (counts: number[]): void => {
    const at = packs[counts.length];
    if (at) {
      const once = Math.ceil(need / at.size);
      const most = keeps === undefined ? Math.max(once, Math.floor((2 * need) / at.size)) : once;
      for (let count = 0; count <= most; count += 1) grow([...counts, count]);
      return;
    }
    const held = packs.reduce((sum, { size }, index) => sum + size * (counts[index] as number), 0);
    const wasteful = packs.some(({ supplier, size }, index) => {
      if (keeps === undefined || counts[index] === 0) return false;
      const smaller = packs.filter((other) => other.supplier === supplier && other.size < size);
      return [0, ...smaller.map((other) => other.size)].some((other) => held - size + other >= need);
    });
    if (held < need || wasteful) return;
    const spent = Array.from({ length: suppliers }, () => 0);
    const used = spent.map(() => false);
    for (const [index, { supplier, price }] of packs.entries()) {
      const count = counts[index] as number;
      spent[supplier] = (spent[supplier] as number) + count * price;
      used[supplier] = used[supplier] || count > 0;
    }
    const bought = counts.reduce((a, b) => a + b, 0);
    found.push({ spent, used, packs: bought, left: ((held - need) * 12) / need });
  };
  grow([]);
  return found;
}

function distinct(ways: readonly Way[]): Way[] {
  const best = new Map<string, Way>();
  for (const way of ways) {
    const key = [...way.spent, ...way.used].join();
    const known = best.get(key);
    if (!known || (way.packs - known.packs || way.left - known.left) < 0) best.set(key, way);
  }
  return [...best.values()];
}

function weigh({ spent, used, packs, left }: Way, suppliers: Case['suppliers'], saves: number): Weight {
  const open = suppliers.map((_, s) => s).filter((s) => used[s]);
  const below = open.filter((s) => (spent[s] as number) < (suppliers[s]?.minimum ?? 0)).length;
  const cost = open.reduce((sum, s) => sum + (spent[s] as number) + (suppliers[s]?.fee ?? 0), 0);
  return [below, cost + saves * (open.length - 1), open.length, packs, left];
}

function compareWeights(a: Weight, b: Weight): number {
  return a.map((each, index) => each - (b[index] as number)).find((order) => order !== 0) ?? 0;
}

/** The same of an order that was settled on, from its lines alone. */
export function weightOf({ suppliers, foods, saves }: Case, order: SettledOrder): Weight {
  const spent = new Map<string, number>();
  let [packs, left] = [0, 0];
  for (const [at, { need }] of foods.entries()) {
    const lines = order.foods.find(({ ingredient }) => ingredient === `food-${at}`)?.lines ?? [];
    let held = 0;
    for (const { pack: bought, count } of lines) {
      spent.set(bought.supplier, (spent.get(bought.supplier) ?? 0) + count * bought.price.toNumber());
      held += count * bought.contents.amount.valueOf();
      packs += count;
    }
    left += ((held - need) * 12) / need;
  }
  const open = NAMES.map((_, s) => s).filter((s) => spent.has(NAMES[s] as string));
  const goods = open.reduce((sum, s) => sum + (spent.get(NAMES[s] as string) ?? 0), 0);
  const fees = open.reduce((sum, s) => sum + (suppliers[s]?.fee ?? 0), 0);
  const charged = saves * (open.length - 1);
  return [order.below.length, goods + fees + charged, open.length, packs, left];
}
