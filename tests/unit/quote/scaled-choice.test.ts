import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { comparisonCounts, shareOut } from '../../../src/engine/quote/scaled-choice.ts';

describe('guests are shared out over dishes', () => {
  it('keeps proportions by largest remainder, the earlier first at a tie', () => {
    expect(shareOut(10, [50, 34])).toEqual([6, 4]);
    expect(shareOut(3, [1, 1])).toEqual([2, 1]);
    expect(shareOut(7, [1, 2, 1, 2, 1])).toEqual([1, 2, 1, 2, 1]);
    expect(shareOut(6, [1, 1, 1, 1])).toEqual([2, 2, 1, 1]);
    expect(shareOut(7, [0, 0, 0])).toEqual([3, 2, 2]);
    expect(shareOut(5, [])).toEqual([]);
  });

  it('always sums to the whole and never gives a guest to a dish nobody takes', () => {
    const weights = fc.array(fc.nat(500), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(fc.nat(5000), weights, (whole, given) => {
        const shares = shareOut(whole, given);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBe(whole);
        if (given.some((weight) => weight > 0))
          for (const [index, weight] of given.entries()) if (weight === 0) expect(shares[index]).toBe(0);
      }),
    );
  });
});

describe('counts to compare a proposal at', () => {
  it('are its own and four around it, to the nearest five', () => {
    expect(comparisonCounts(90)).toEqual([45, 70, 90, 115, 135]);
    expect(comparisonCounts(100)).toEqual([50, 75, 100, 125, 150]);
    expect(comparisonCounts(1)).toEqual([1, 6, 11, 16, 21]);
    expect(comparisonCounts(0)).toEqual([1, 5, 10, 15, 20]);
  });

  it('are five different ones for any party', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (guests) => {
        const counts = comparisonCounts(guests);
        expect(new Set(counts).size).toBe(5);
        expect(counts).toContain(guests);
        expect(Math.min(...counts)).toBeGreaterThan(0);
      }),
    );
  });
});
