import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAppetite } from '../../../src/engine/odds/appetite.ts';
import { certainly, chanceAbove, leastWithin, sumOf, timesOver } from '../../../src/engine/odds/chances.ts';
import { courseAmounts } from '../../../src/engine/odds/course.ts';
import { ALL_COME, demandOf } from '../../../src/engine/odds/demand.ts';
import {
  balancedHelpings,
  chanceOfShortage,
  expectedLeft,
  expectedShort,
  leastHelpings,
  oddsSaid,
} from '../../../src/engine/odds/shortage.ts';
import { inWords } from '../../in-words.ts';

/** Shares of guests who take none, one, … helpings. */
const appetites = fc
  .array(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 4 })
  .filter((weights) => weights.slice(1).some((weight) => weight > 0))
  .map((weights) => {
    const sum = weights.reduce((total, weight) => total + weight, 0);
    return Float64Array.from(weights, (weight) => weight / sum);
  });
const attendances = fc.record({
  failToCome: fc.constantFrom(0, 0.02, 0.1),
  partyOf: fc.integer({ min: 1, max: 4 }),
});

/** Every way in which a few guests can come and eat, one by one: what a convolution must add up to. */
function byHand(one: Float64Array, guests: number): number[] {
  const sums: number[] = [];
  const walk = (left: number, eaten: number, chance: number) => {
    if (left === 0) sums[eaten] = (sums[eaten] ?? 0) + chance;
    else for (const [helpings, share] of one.entries()) walk(left - 1, eaten + helpings, chance * share);
  };
  walk(guests, 0, 1);
  return Array.from({ length: sums.length }, (_, k) => sums[k] ?? 0);
}

describe('the chances of what all guests eat together', () => {
  test('are those of every way in which a few guests can choose', () => {
    fc.assert(
      fc.property(appetites, fc.integer({ min: 0, max: 6 }), (one, guests) => {
        const all = timesOver(one, guests);
        for (const [k, chance] of byHand(one, guests).entries()) expect(all[k]).toBeCloseTo(chance, 12);
      }),
      { numRuns: 200 },
    );
  });

  test('are those of a party after the other where parties fail to come', () => {
    // Three guests in parties of two: the couple comes with 0.9, the single with 0.9.
    const demand = demandOf(certainly(1), { sure: 0, free: 3 }, { failToCome: 0.1, partyOf: 2 });
    expect([...demand].map((chance) => chance.toFixed(6))).toEqual([
      '0.010000',
      '0.090000',
      '0.090000',
      '0.810000',
    ]);
  });

  test('sum to one, at 5,000 guests too', () => {
    const demand = demandOf(
      Float64Array.of(0.3, 0.5, 0.2),
      { sure: 40, free: 4960 },
      { failToCome: 0.03, partyOf: 2 },
    );
    expect(demand.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 10);
    expect(chanceAbove(demand, -1)).toBeCloseTo(1, 10);
  });

  test('count those who have nothing else for certain', () => {
    const demand = demandOf(Float64Array.of(0.5, 0.5), { sure: 2, free: 1 }, ALL_COME);
    expect([...demand]).toEqual([0, 0, 0.5, 0.5]);
  });
});

describe('the amount that keeps a risk', () => {
  test('never falls for more guests, a greater appetite, or a smaller risk', () => {
    fc.assert(
      fc.property(
        appetites,
        fc.integer({ min: 1, max: 80 }),
        attendances,
        fc.double({ min: 0.001, max: 0.6, noNaN: true }),
        (one, guests, attendance, risk) => {
          const least = (shares: Float64Array, free: number, at: number) =>
            leastHelpings(demandOf(shares, { sure: 0, free }, attendance), at);
          const now = least(one, guests, risk);
          // A further party, since a guest more in a party of two changes who comes together.
          expect(least(one, guests + attendance.partyOf, risk)).toBeGreaterThanOrEqual(now);
          expect(least(one, guests, risk / 2)).toBeGreaterThanOrEqual(now);
          // Everybody takes one helping more than before with some chance.
          expect(least(sumOf(one, Float64Array.of(0.7, 0.3)), guests, risk)).toBeGreaterThanOrEqual(now);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('is the least one that does', () => {
    fc.assert(
      fc.property(
        appetites,
        fc.integer({ min: 1, max: 60 }),
        fc.double({ min: 0.001, max: 0.6, noNaN: true }),
        (one, guests, risk) => {
          const demand = demandOf(one, { sure: 0, free: guests });
          const least = leastHelpings(demand, risk);
          expect(chanceOfShortage(demand, least)).toBeLessThanOrEqual(risk + 1e-9);
          if (least > 0) expect(chanceOfShortage(demand, least - 1)).toBeGreaterThan(risk - 1e-9);
        },
      ),
    );
  });

  test('balances a missing helping against one left over, where another would cost more than it saves', () => {
    fc.assert(
      fc.property(
        appetites,
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 30 }),
        (one, guests, missing, left) => {
          const demand = demandOf(one, { sure: 0, free: guests });
          const cost = (carried: number) =>
            missing * expectedShort(demand, carried) + left * expectedLeft(demand, carried);
          const best = balancedHelpings(demand, missing, left)!;
          for (let carried = 0; carried < demand.length; carried += 1)
            expect(cost(best)).toBeLessThanOrEqual(cost(carried) + 1e-9);
        },
      ),
    );
    expect(balancedHelpings(certainly(3), 0, 0)).toBeUndefined();
  });
});

test('a course carried as a whole runs short no more often than its dishes carried apart with the same food', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 4 }),
      fc.integer({ min: 2, max: 60 }),
      attendances,
      fc.double({ min: 0.005, max: 0.3, noNaN: true }),
      (weights, guests, attendance, risk) => {
        const sum = weights.reduce((total, weight) => total + weight, 0);
        const dishes = weights.map((weight, at) => ({ id: `dish-${at}`, share: weight / sum }));
        const course = courseAmounts(dishes, guests, risk, attendance);
        expect(course.shortOfAll).toBeLessThanOrEqual(risk + 1e-9);
        // Whoever finds nothing has missed what he wanted, so that the whole is short no more often than any part.
        const missedByAny = course.dishes.reduce((total, { missed }) => total + missed, 0);
        expect(course.shortOfAll).toBeLessThanOrEqual(missedByAny + 1e-9);
        expect(course.dishes.reduce((total, { helpings }) => total + helpings, 0)).toBe(course.helpings);
        expect(course.apart).toBeGreaterThanOrEqual(course.helpings - dishes.length);
      },
    ),
    { numRuns: 150 },
  );
});

test('and for few guests, against every way in which they can choose', () => {
  const shares = fc
    .array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 3 })
    .map((weights) => weights.map((weight) => weight / weights.reduce((total, each) => total + each, 0)));
  fc.assert(
    fc.property(
      shares,
      fc.integer({ min: 1, max: 7 }),
      fc.constantFrom(0.05, 0.2, 0.4),
      (own, guests, failToCome) => {
        const dishes = own.map((share, at) => ({ id: `dish-${at}`, share }));
        const course = courseAmounts(dishes, guests, 0.25, { failToCome, partyOf: 1 });
        const carried = course.dishes.map(({ helpings }) => helpings);
        let [shortOfAll, anyMissed] = [0, 0];
        const walk = (left: number, taken: readonly number[], chance: number) => {
          if (left > 0) {
            walk(left - 1, taken, chance * failToCome);
            for (const [at, share] of own.entries())
              walk(
                left - 1,
                taken.map((each, index) => each + (index === at ? 1 : 0)),
                chance * (1 - failToCome) * share,
              );
            return;
          }
          const all = taken.reduce((total, each) => total + each, 0);
          if (all > course.helpings) shortOfAll += chance;
          if (taken.some((each, at) => each > carried[at]!)) anyMissed += chance;
        };
        walk(
          guests,
          own.map(() => 0),
          1,
        );
        expect(course.shortOfAll).toBeCloseTo(shortOfAll, 10);
        expect(course.shortOfAll).toBeLessThanOrEqual(anyMissed + 1e-12);
      },
    ),
    { numRuns: 60 },
  );
});

test('the odds are said as a cook says them', () => {
  const said = [0, 1e-9, 0.0004, 0.025, 0.1, 0.3333, 0.5, 0.86, 0.97, 1].map(oddsSaid).map(inWords);
  expect(said).toEqual([
    'never, by these shares',
    'less than 1 in 10,000 events like this',
    'about 1 in 2,500 events like this',
    'about 1 in 40 events like this',
    'about 1 in 10 events like this',
    'about 1 in 3 events like this',
    'about 5 in 10 events like this',
    'about 9 in 10 events like this',
    'at nearly every event like this',
    'at every event like this',
  ]);
});

describe('an appetite as it is written', () => {
  test('gives the shares of none, one, two …, the rest taking none', () => {
    const read = parseAppetite({ one: '55 %', two: '25 %' });
    expect(read.ok && read.value.shares.map((share) => share.toFraction())).toEqual(['1/5', '11/20', '1/4']);
  });

  test.each([
    [{ one: '80 %', two: '40 %' }, /120 %/],
    [{ none: '10 %', one: '80 %' }, /90 %/],
    [{ none: '100 %' }, /nobody takes anything/],
    [{ once: '80 %' }, /not a number of helpings/],
    [{ one: 'many' }, /./],
  ])('is refused in a sentence: %j', (text, sentence) => {
    const read = parseAppetite(text as Record<string, string>);
    expect(read).toMatchObject({ ok: false });
    if (!read.ok) expect(read.what).toMatch(sentence);
  });
});

test('quantiles of leastWithin and of the chances agree at ties', () => {
  const seven = timesOver(Float64Array.of(0.5, 0.5), 7);
  expect(leastWithin(seven, 0.5)).toBe(3);
});
