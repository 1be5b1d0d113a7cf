import fc from 'fast-check';
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';
import type { Appetite } from '../../src/engine/odds/appetite.ts';
import { chanceOfShortage } from '../../src/engine/odds/shortage.ts';
import type { TakeRate } from '../../src/engine/odds/take-rate.ts';
import type { EventDish } from '../../src/engine/plan/event-input.ts';
import type { EventPlan } from '../../src/engine/plan/event-plan.ts';
import { planEvent } from '../../src/engine/plan/plan-event.ts';
import { dish, event, food, kitchen, line, pack, prices, recipe } from '../unit/plan/builders.ts';

const flour = food('flour');
const market = prices(pack('flour', '10 lb', '10.00'));
const batches = fc.constantFrom('exact' as const, 'half' as const, 'whole' as const);
const rolls = (rule: 'exact' | 'half' | 'whole') =>
  recipe('rolls', '40 pieces', [line(flour, '4 lb')], { batches: rule });

/** Twentieths of the guests who take no helping, one, two and three. */
const appetites = fc
  .array(fc.integer({ min: 0, max: 8 }), { minLength: 4, maxLength: 4 })
  .filter(([, ...some]) => some.some((weight) => weight > 0));
const attendances = fc.option(
  fc.record({
    failToCome: fc.constantFrom(new Fraction(0n), new Fraction(1n, 50n), new Fraction(1n, 8n)),
    partyOf: fc.integer({ min: 1, max: 4 }),
  }),
  { nil: undefined },
);
const risks = fc.integer({ min: 2, max: 400 });
const tables = fc.integer({ min: 1, max: 70 });

function appetite(weights: readonly number[]): Appetite {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return { shares: weights.map((weight) => new Fraction(BigInt(weight), BigInt(all))) };
}

function taken(of: EventDish, facts: Partial<TakeRate>): EventDish {
  const none = { appetite: undefined, firstChoice: undefined, helping: undefined, costs: undefined };
  return { ...of, takeRate: { ...none, shortOneIn: undefined, ...facts } };
}

interface Asked {
  readonly guests: number;
  readonly weights: readonly number[];
  readonly oneIn: number;
  readonly rule?: 'exact' | 'half' | 'whole';
  readonly attendance?: EventPlan['input']['attendance'];
}

function planned({ guests, weights, oneIn, rule = 'exact', attendance }: Asked): EventPlan {
  const one = taken(dish(rolls(rule), '1 piece per guest'), {
    appetite: appetite(weights),
    shortOneIn: oneIn,
  });
  const table = { adults: guests, children: 0, vendors: 0, staff: 0 };
  return planEvent(event([one], { guests: table, attendance }), kitchen(), market);
}

function flourIn(plan: EventPlan): Fraction {
  return plan.purchases[0]?.need.amount ?? new Fraction(0n);
}

/** Neither what is carried nor what is bought for it falls. */
function expectNoLess(more: EventPlan, than: EventPlan): void {
  const needs = [more, than].map((plan) => plan.dishes[0]?.need.amount ?? new Fraction(0n));
  expect(needs[0]?.gte(needs[1] ?? 0)).toBe(true);
  expect(flourIn(more).gte(flourIn(than))).toBe(true);
}

test('more guests never lower what a plan needs', () => {
  fc.assert(
    fc.property(
      tables,
      fc.integer({ min: 1, max: 20 }),
      appetites,
      risks,
      batches,
      attendances,
      (guests, more, weights, oneIn, rule, attendance) => {
        const asked = { weights, oneIn, rule, attendance };
        expectNoLess(planned({ ...asked, guests: guests + more }), planned({ ...asked, guests }));
      },
    ),
    { numRuns: 120 },
  );
});

test('more appetite, as guests who take a helping more, never lowers what a plan needs', () => {
  fc.assert(
    fc.property(
      tables,
      appetites,
      fc.nat(2),
      fc.integer({ min: 1, max: 8 }),
      risks,
      batches,
      attendances,
      (guests, weights, from, moved, oneIn, rule, attendance) => {
        const moving = Math.min(moved, weights[from] ?? 0);
        const hungrier = weights.map((weight, helpings) =>
          helpings === from ? weight - moving : helpings === from + 1 ? weight + moving : weight,
        );
        const asked = { guests, oneIn, rule, attendance };
        expectNoLess(planned({ ...asked, weights: hungrier }), planned({ ...asked, weights }));
      },
    ),
    { numRuns: 120 },
  );
});

test('a smaller risk never lowers what a plan needs, and the amount planned keeps it', () => {
  fc.assert(
    fc.property(
      tables,
      appetites,
      risks,
      fc.integer({ min: 1, max: 400 }),
      batches,
      attendances,
      (guests, weights, oneIn, more, rule, attendance) => {
        const asked = { guests, weights, rule, attendance };
        const [safer, plain] = [
          planned({ ...asked, oneIn: oneIn + more }),
          planned({ ...asked, oneIn }),
        ] as const;
        expectNoLess(safer, plain);
        expect(plain.dishes[0]?.odds?.planned.short ?? 0).toBeLessThanOrEqual(1 / oneIn + 1e-9);
      },
    ),
    { numRuns: 120 },
  );
});

test('a course planned as a whole runs short no more often than some dish of it would, carried alone with the same food', () => {
  fc.assert(
    fc.property(
      tables,
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 4 }),
      risks,
      attendances,
      (guests, weights, oneIn, attendance) => {
        const all = BigInt(weights.reduce((sum, weight) => sum + weight, 0));
        const mains = weights.map((weight, at) =>
          taken(dish(recipe(`main-${at}`, '40 pieces', [line(flour, '4 lb')]), '1 piece per guest'), {
            firstChoice: new Fraction(BigInt(weight), all),
            shortOneIn: oneIn,
          }),
        );
        const table = { adults: guests, children: 0, vendors: 0, staff: 0 };
        const plan = planEvent(event(mains, { guests: table, attendance }), kitchen(), market);
        const [course] = plan.courseOdds;
        // Alone, a dish is short whenever more want it first than it has helpings, and nobody takes another.
        const alone = plan.dishes.map(({ odds }) =>
          odds ? chanceOfShortage(odds.demand.chances, odds.planned.helpings) : 1,
        );
        const some = Math.min(
          1,
          alone.reduce((sum, short) => sum + short, 0),
        );
        expect(course?.shortOfAll ?? 1).toBeLessThanOrEqual(some + 1e-9);
        expect(course?.shortOfAll ?? 1).toBeLessThanOrEqual(1 / oneIn + 1e-9);
        const carried = plan.dishes.reduce((sum, { odds }) => sum + (odds?.planned.helpings ?? 0), 0);
        expect(carried).toBe(course?.helpings);
      },
    ),
    { numRuns: 120 },
  );
});
