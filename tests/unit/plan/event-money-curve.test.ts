import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Money, money, moneyText } from '../../../src/engine/money/money.ts';
import { type MoneySetting, moneyAt } from '../../../src/engine/plan/money/at.ts';
import { breakEvenOf, fallsOf, type MarginCurve, marginCurve } from '../../../src/engine/plan/money/curve.ts';
import { eventMoney } from '../../../src/engine/plan/money/event-money.ts';
import { costs, marginInCents, ordered, setting } from './money-kitchen.ts';

const usd = (cents: number): Money => money((cents / 100).toFixed(2), 'USD');
const countsOf = (curve: MarginCurve | null) => curve?.points.map(({ guests }) => guests);
const inCents = (sum: Money) => Number(sum.amount.times(100).toFixed());

describe('the margin at other counts', () => {
  test('is what quoting and planning at each count come to, packs, plates and servers in whole ones', () => {
    const curve = marginCurve(setting(50, costs('40.00')));
    if (!curve) throw new Error('every food has a price');
    expect([curve.from, curve.to, curve.step]).toEqual([10, 70, 2]);
    const wrong = curve.points.filter(
      ({ guests, margin }) => inCents(margin) !== marginInCents(guests, 4000),
    );
    expect(wrong).toEqual([]);
    // Every second count, the last, those about the planned one, and both sides of 15, 30, 45, 59 and 60, where a server
    // more comes or a price ends: of these the odd ones come on top.
    const even = Array.from({ length: 31 }, (_, index) => 10 + 2 * index);
    expect(countsOf(curve)).toEqual([...even, 15, 31, 45, 49, 51, 59, 61].sort((a, b) => a - b));
  });

  test('are all looked at up to 41 of them, and in even steps from there on', () => {
    const curveAt = (adults: number) => marginCurve(setting(adults, costs('40.00')));
    const all = curveAt(34);
    expect([all?.from, all?.to, all?.step, all?.points.length]).toEqual([7, 47, 1, 41]);
    const odd = Array.from({ length: 22 }, (_, index) => 7 + 2 * index);
    const stepped = curveAt(35);
    expect([stepped?.from, stepped?.to, stepped?.step]).toEqual([7, 49, 2]);
    expect(countsOf(stepped)).toEqual([...odd, 16, 30, 34, 36, 46].sort((a, b) => a - b));
    expect([curveAt(1), curveAt(2)].map(countsOf)).toEqual([[1], [1, 2]]);
  });

  test('are no fewer than have said what they need, with the children, and no more than have a price', () => {
    const of = setting(50, costs('40.00'));
    const ranged = (change: Partial<MoneySetting>) => {
      const curve = marginCurve({ ...of, ...change });
      return [curve?.from, curve?.to];
    };
    const needs = new Map([
      ['vegan', 12],
      ['milk', 8],
    ]);
    expect(ranged({ input: { ...of.input, needs } })).toEqual([20, 70]);
    const guests = { ...of.choice.guests, adults: 25, children: 25 };
    // One adult at least is with the children.
    expect(ranged({ choice: { ...of.choice, guests }, input: { ...of.input, guests } })).toEqual([26, 70]);
    const ending = (to: number) => {
      const [first] = of.chosen.tiers;
      const chosen = { ...of.chosen, tiers: [{ ...first!, to }] };
      return { chosen, terms: { ...of.terms, packages: [chosen] } };
    };
    expect(ranged(ending(60))).toEqual([10, 60]);
    expect(ranged(ending(50))).toEqual([10, 50]);
  });

  test('at the planned count is the sum of the event’s own lines', async () => {
    const drawn = fc.record({
      adults: fc.integer({ min: 1, max: 200 }),
      way: fc.integer({ min: 0, max: 90_000 }),
    });
    await fc.assert(
      fc.asyncProperty(drawn, async ({ adults, way }) => {
        const of = setting(adults, costs(moneyText(usd(way))));
        const { revenue, costs: lines, margin } = eventMoney(await ordered(of), of.choice, of);
        const earned = revenue.lines.reduce((sum, { amount }) => sum + inCents(amount), 0);
        const spent = lines.reduce((sum, { amount }) => sum + (amount ? inCents(amount) : 0), 0);
        const point = moneyAt(of)(adults);
        expect([margin && inCents(margin), point && inCents(point.margin)]).toEqual([
          earned - spent,
          earned - spent,
        ]);
        expect(earned - spent).toBe(marginInCents(adults, way));
      }),
      { numRuns: 40 },
    );
  });

  test('breaks even where going through every count does, also between the steps', () => {
    const drawn = fc.record({
      adults: fc.integer({ min: 5, max: 160 }),
      way: fc.integer({ min: 0, max: 400_000 }),
    });
    fc.assert(
      fc.property(drawn, ({ adults, way }) => {
        const curve = marginCurve(setting(adults, costs(moneyText(usd(way)))));
        if (!curve) throw new Error('every food has a price');
        let least: number | undefined;
        for (let n = curve.to; n >= curve.from && marginInCents(n, way) >= 0; n -= 1) least = n;
        const expected =
          least === undefined
            ? { kind: 'never' }
            : least === curve.from
              ? { kind: 'always' }
              : { kind: 'from', guests: least };
        expect(curve.breakEven).toEqual(expected);
      }),
      { numRuns: 60 },
    );
  });

  test('falls where the price falls for all: 60 bring less than 59, and 61 as much again', () => {
    const curve = marginCurve(setting(50, costs('40.00')));
    // 59 × 22.00 = 1298.00, 60 × 20.00 = 1200.00; the fifth server brings 120.00 with the 61st guest.
    expect(
      curve?.revenueFalls.map(({ before, after, was, is, regained }) => [
        before,
        after,
        moneyText(was),
        moneyText(is),
        regained,
      ]),
    ).toEqual([[59, 60, '2038.00', '1940.00', 61]]);
    expect(curve?.marginFalls[0]).toMatchObject({ before: 59, after: 60 });
  });

  test('is not drawn while a food has no price', () => {
    const of = setting(50, costs('40.00'));
    expect(marginCurve({ ...of, buying: { ...of.buying, prices: new Map() } })).toBeNull();
  });
});

describe('a list of counts', () => {
  const row = (guests: number, cents: number) => ({ guests, margin: usd(cents), sum: usd(cents) });

  test('breaks even after its last loss, however often it gained before', () => {
    expect(breakEvenOf([row(10, 100), row(11, -1), row(12, 0), row(13, 5)])).toEqual({
      kind: 'from',
      guests: 12,
    });
    expect(breakEvenOf([row(10, 0), row(11, 1)])).toEqual({ kind: 'always' });
    expect(breakEvenOf([row(10, 9), row(11, -1)])).toEqual({ kind: 'never' });
  });

  test('falls from top to bottom as one, the deepest first, and is regained or not', () => {
    const falls = fallsOf([
      row(1, 50),
      row(2, 40),
      row(3, 45),
      row(4, 90),
      row(5, 70),
      row(6, 60),
      row(7, 80),
    ]);
    expect(falls.map(({ before, after, regained }) => [before, after, regained])).toEqual([
      [4, 6, null],
      [1, 2, 4],
    ]);
  });

  test('falls twice where it stays between, is regained by as much, and of two as deep the first comes first', () => {
    const falls = (...cents: number[]) =>
      fallsOf(cents.map((each, index) => row(index + 1, each))).map(({ before, after, regained }) => [
        before,
        after,
        regained,
      ]);
    expect(falls(50, 40, 40, 30)).toEqual([
      [1, 2, null],
      [3, 4, null],
    ]);
    expect(falls(50, 50, 50)).toEqual([]);
    expect(falls(50, 40, 50)).toEqual([[1, 2, 3]]);
    expect(falls(50, 40, 60, 50, 70, 60)).toEqual([
      [1, 2, 3],
      [3, 4, 5],
      [5, 6, null],
    ]);
  });
});
