import { describe, expect, test } from 'vitest';
import { chanceAbove, leastWithin, timesOver } from '../../../src/engine/odds/chances.ts';

/** Trials that come out with a share, each for itself: the binomial distribution. */
const binomial = (trials: number, share: number) => timesOver(Float64Array.of(1 - share, share), trials);

describe('binomial quantiles as published', () => {
  // Documentation of the stdlib project, @stdlib/stats-base-dists-binomial-quantile: its examples.
  test.each([
    [0.4, 20, 0.2, 3],
    [0.8, 20, 0.2, 5],
    [0.5, 10, 0.4, 4],
  ])('q(%f) of %i trials at %f is %i', (chance, trials, share, quantile) => {
    expect(leastWithin(binomial(trials, share), 1 - chance)).toBe(quantile);
  });

  // Computed with SciPy, scipy.stats.binom: ppf(0.95, 100, 0.3), cdf(38), cdf(37).
  test('q(0.95) of 100 trials at 0.3 is 38, F(38) = 0.966021 and F(37) = 0.946954', () => {
    const hundred = binomial(100, 0.3);
    expect(leastWithin(hundred, 1 - 0.95)).toBe(38);
    expect(1 - chanceAbove(hundred, 38)).toBeCloseTo(0.966021, 6);
    expect(1 - chanceAbove(hundred, 37)).toBeCloseTo(0.946954, 6);
  });

  // Computed: F(3) of 7 trials at one half is one half exactly, so that 3 is the quantile and not 4.
  test('at a tie the lesser one counts: q(0.5) of 7 trials at 0.5 is 3', () => {
    expect(leastWithin(binomial(7, 0.5), 0.5)).toBe(3);
  });
});
