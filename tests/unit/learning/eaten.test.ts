import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Eaten, eatenEstimate } from '../../../src/engine/learning/eaten.ts';
import { HALF_WAY_EVENTS, proposedAmount } from '../../../src/engine/learning/proposed-amount.ts';
import { studentWithin } from '../../../src/engine/learning/student-curve.ts';
import { seeded } from '../../bench/seeded.ts';

const all = (...amounts: number[]): Eaten[] => amounts.map((perGuest) => ({ perGuest, ranOut: false }));

describe('what events tell of a dish', () => {
  test('where none ran out: mean and Student’s interval as by hand', () => {
    // Five events: mean 1.00, deviation of the sample 0.1581, t(0.9, 4) = 2.132: 1.00 ± 2.132 × 0.1581 ÷ √5.
    const { mean, from, to, ranOut } = eatenEstimate(all(0.8, 0.9, 1.0, 1.1, 1.2), 0.9);
    expect(mean).toBeCloseTo(1, 4);
    expect(from).toBeCloseTo(1 - 0.1508, 3);
    expect(to).toBeCloseTo(1 + 0.1508, 3);
    expect(ranOut).toBe(0);
  });

  test('agrees with Student’s interval whatever was eaten', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 60, max: 140 }), { minLength: 3, maxLength: 12 }),
        (hundredths) => {
          const amounts = hundredths.map((each) => each / 100);
          const mean = amounts.reduce((sum, each) => sum + each, 0) / amounts.length;
          const spread = Math.sqrt(
            amounts.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (amounts.length - 1),
          );
          fc.pre(spread > 0.03);
          const half = (studentWithin(0.9, amounts.length - 1) * spread) / Math.sqrt(amounts.length);
          const estimate = eatenEstimate(all(...amounts), 0.9);
          expect(estimate.mean).toBeCloseTo(mean, 3);
          expect(estimate.from).toBeCloseTo(Math.max(0, mean - half), 2);
          expect(estimate.to).toBeCloseTo(mean + half, 2);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('an event that ran out never lowers the mean, as it would if what was eaten were taken for the demand', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 70, max: 130 }), { minLength: 3, maxLength: 8 }),
        fc.integer({ min: 40, max: 160 }),
        (hundredths, ended) => {
          const before = all(...hundredths.map((each) => each / 100));
          fc.pre(new Set(hundredths).size > 2);
          const since = eatenEstimate([...before, { perGuest: ended / 100, ranOut: true }], 0.9);
          expect(since.mean!).toBeGreaterThanOrEqual(eatenEstimate(before, 0.9).mean! - 1e-3);
          expect(since.atLeast).toBe(ended / 100);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('where all ran out there is only a least, from one event only its own figure, from none nothing', () => {
    const ended = eatenEstimate(
      [
        { perGuest: 1.2, ranOut: true },
        { perGuest: 0.9, ranOut: true },
      ],
      0.9,
    );
    expect(ended).toMatchObject({ mean: undefined, atLeast: 1.2, from: undefined });
    expect(eatenEstimate(all(0.7), 0.9)).toMatchObject({ mean: 0.7, spread: undefined, from: undefined });
    expect(eatenEstimate([], 0.9)).toMatchObject({ mean: undefined, events: 0 });
    expect(eatenEstimate(all(0, 0, 0), 0.9).mean).toBe(0);
  });
});

/** A normal value from twelve even ones would have no tails: by the two of Box and Muller. */
function normal(random: ReturnType<typeof seeded>): number {
  const [one, two] = [(random.below(1e9) + 1) / 1e9, random.below(1e9) / 1e9];
  return Math.sqrt(-2 * Math.log(one)) * Math.cos(2 * Math.PI * two);
}

/** What simulated events tell that each carried so much for a guest: how often the interval held the true mean, and the means. */
function simulated(carried: number, each: number, tries: number) {
  const [mean, spread, confidence] = [1, 0.15, 0.9];
  const random = seeded(99);
  let [covered, given, sum, naive] = [0, 0, 0, 0];
  for (let turn = 0; turn < tries; turn += 1) {
    const events = Array.from({ length: each }, (): Eaten => {
      const wanted = mean + spread * normal(random);
      return wanted > carried ? { perGuest: carried, ranOut: true } : { perGuest: wanted, ranOut: false };
    });
    const estimate = eatenEstimate(events, confidence);
    // Hardly ever do all events but one run out, which leaves no estimate.
    if (estimate.from === undefined) continue;
    given += 1;
    if (estimate.from <= mean && mean <= estimate.to!) covered += 1;
    sum += estimate.mean!;
    naive += events.reduce((total, { perGuest }) => total + perGuest, 0) / events.length;
  }
  return { covered: covered / given, given, mean: sum / given, naive: naive / given };
}

test('a known appetite is recovered from simulated events that partly ran out', () => {
  const { given, mean, naive } = simulated(1.05, 10, 300);
  expect(given).toBeGreaterThan(295);
  // Some 37 of 100 events ran out; taken for the demand, they would tell of too small an appetite.
  expect(naive).toBeLessThan(0.98);
  expect(mean).toBeGreaterThan(0.99);
  expect(mean).toBeLessThan(1.02);
});

// Three deviations of a share of 0.9 in 600 tries are 0.037, either way; these 400 stay within that too.
test.each([
  [1, 10],
  [1.05, 10],
  [1.05, 6],
  [1.15, 10],
])(
  'an interval of 90 % holds the true mean in about 90 of 100, carrying %f for a guest at %i events',
  (carried, events) => {
    const { covered } = simulated(carried, events, 400);
    expect(covered).toBeGreaterThan(0.863);
    expect(covered).toBeLessThan(0.937);
  },
);

describe('the figure proposed', () => {
  test('goes half-way after five events, and hardly anywhere after one', () => {
    expect(proposedAmount(1, eatenEstimate(all(0.8), 0.9))).toEqual({ perGuest: 1 - 0.2 / 6, weight: 1 / 6 });
    const five = proposedAmount(1, eatenEstimate(all(0.78, 0.79, 0.8, 0.81, 0.82), 0.9));
    expect(five?.weight).toBe(0.5);
    expect(five?.perGuest).toBeCloseTo(0.9, 4);
    expect(HALF_WAY_EVENTS).toBe(5);
  });

  test('is only raised, never lowered, where every event ran out', () => {
    expect(proposedAmount(1, eatenEstimate([{ perGuest: 0.9, ranOut: true }], 0.9))).toBeUndefined();
    expect(
      proposedAmount(1, eatenEstimate([{ perGuest: 1.3, ranOut: true }], 0.9))?.perGuest,
    ).toBeGreaterThan(1);
  });
});
