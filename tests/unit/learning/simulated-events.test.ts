import { expect, test } from 'vitest';
import { type Eaten, eatenEstimate } from '../../../src/engine/learning/eaten.ts';
import { seeded } from '../../bench/seeded.ts';

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
