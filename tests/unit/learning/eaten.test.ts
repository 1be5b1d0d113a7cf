import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Eaten, eatenEstimate } from '../../../src/engine/learning/eaten.ts';
import { HALF_WAY_EVENTS, proposedAmount } from '../../../src/engine/learning/proposed-amount.ts';
import { studentWithin } from '../../../src/engine/learning/student-curve.ts';

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
    const one = eatenEstimate([...all(0.7), { perGuest: 0.6, ranOut: true }], 0.9);
    expect(one).toEqual({
      events: 2,
      ranOut: 1,
      atLeast: 0.6,
      mean: undefined,
      spread: undefined,
      from: undefined,
      to: undefined,
    });
  });

  /*
   * Two events of 0.9 and 1.1, one that ran out at 1.0: at the greatest likelihood both its slopes are nothing. With z = (1 − m) ÷ s
   * and h = density(z) ÷ chance above z, they are (0.9 + 1.1 − 2m) ÷ s + h = 0 and −2 + ((0.9 − m)² + (1.1 − m)²) ÷ s² + z h = 0.
   */
  test('where some ran out: the greatest likelihood has no slope either way', () => {
    const {
      mean = 0,
      spread = 0,
      from = 0,
      to = 0,
    } = eatenEstimate([...all(0.9, 1.1), { perGuest: 1, ranOut: true }], 0.9);
    const z = (1 - mean) / spread;
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    // The chance above, by Simpson's rule from z to eight deviations.
    const steps = 2000;
    const width = (8 - z) / steps;
    const at = (index: number) => Math.exp(-((z + index * width) ** 2) / 2) / Math.sqrt(2 * Math.PI);
    let above = at(0) + at(steps);
    for (let index = 1; index < steps; index += 1) above += at(index) * (index % 2 === 1 ? 4 : 2);
    const hazard = density / ((above * width) / 3);
    expect((2 - 2 * mean) / spread + hazard).toBeCloseTo(0, 3);
    expect(-2 + ((0.9 - mean) ** 2 + (1.1 - mean) ** 2) / spread ** 2 + z * hazard).toBeCloseTo(0, 3);
    expect(mean).toBeGreaterThan(1);
    expect(from).toBeLessThan(mean);
    expect(to).toBeGreaterThan(mean);
    // What ran out pulls the mean up, so there is more room above it than below.
    expect(to - mean).toBeGreaterThan(mean - from);
  });

  test('does not believe that events are alike to the last crumb, and its interval never goes below nothing', () => {
    const alike = eatenEstimate(all(1, 1, 1), 0.9);
    expect(alike.spread).toBeCloseTo(0.005, 5);
    expect(alike.to!).toBeGreaterThan(1);
    const far = eatenEstimate(all(0.01, 0.5), 0.9);
    expect(far.from).toBe(0);
    expect(far.to!).toBeGreaterThan(1);
  });
});

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
    // It ran out at just what is carried: that is no more.
    expect(proposedAmount(1, eatenEstimate([{ perGuest: 1, ranOut: true }], 0.9))).toBeUndefined();
  });

  test('is none from no event', () => {
    expect(proposedAmount(1, eatenEstimate([], 0.9))).toBeUndefined();
    expect(proposedAmount(1, { ...eatenEstimate(all(0.8), 0.9), events: 0 })).toBeUndefined();
  });
});
