import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseCounts } from '../../src/engine/quote/counts.ts';
import { menuFloor } from '../../src/engine/quote/menu-floor.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import { findTier } from '../../src/engine/quote/tiers.ts';
import { must } from '../unit/plan/builders.ts';
import { sampleChoice, samplePackage, sampleTerms } from '../unit/quote/sample-terms.ts';

const dollars = (most: number) => fc.integer({ min: 1, max: most }).map((cents) => (cents / 100).toFixed(2));

const menusCounting = (counts: readonly string[], minimums: readonly string[]) =>
  fc
    .record({
      // Most menus fall in price with the count; nothing keeps one from rising, or from doing both.
      prices: fc.tuple(dollars(6000), dollars(6000), dollars(6000)),
      second: fc.integer({ min: 2, max: 5 }),
      third: fc.integer({ min: 6, max: 9 }),
      child: dollars(6000),
      vendor: dollars(6000),
      minimumGuests: fc.nat(6),
      tierCounts: fc.constantFrom(...counts),
      minimumCounts: fc.constantFrom(...minimums, undefined),
    })
    .map(({ prices, second, third, child, vendor, minimumGuests, tierCounts, minimumCounts }) =>
      samplePackage({
        tiers: [
          { from: 1, to: second - 1, perHead: prices[0]! },
          { from: second, to: third - 1, perHead: prices[1]! },
          { from: third, to: null, perHead: prices[2]! },
        ],
        child: { price: child },
        vendor: { price: vendor },
        minimumGuests,
        floorTiers: 'reached',
        tierCounts: must(parseCounts(tierCounts)),
        ...(minimumCounts && { minimumCounts: must(parseCounts(minimumCounts)) }),
      }),
    );
const WHOLE = ['adults, children', 'adults', 'adults, children, vendors'] as const;
const menus = menusCounting(WHOLE, ['adults, children', 'adults']);
const menusInParts = menusCounting(
  ['adults, children at 1/2', 'adults, children at 1/3, vendors at 1/2', 'adults, children at 2'],
  ['adults, children at 1/2', 'adults, children at 2'],
);
const parties = fc.record({
  adults: fc.nat(9),
  children: fc.nat(4),
  vendors: fc.nat(2),
  staff: fc.constant(0),
});

/** What the menu comes to for a party by the quote itself, without the promise that a larger one never pays less. */
function menuSum(
  chosen: ReturnType<typeof samplePackage>,
  guests: Parameters<typeof sampleChoice>[0],
): number {
  return Number(quote(sampleTerms({ packages: [chosen], exempt: true }), sampleChoice(guests)).total);
}

test('what a larger party never pays less than is the most that any smaller one pays, tried one by one', () => {
  fc.assert(
    fc.property(menus, parties, (chosen, guests) => {
      fc.pre(guests.adults + guests.children > 0);
      // A party of nobody, which has no quote, is billed for the minimum as well.
      const { minimumGuests, tiers } = chosen;
      let most = minimumGuests * Number(findTier(tiers, minimumGuests).perHead);
      for (let adults = 0; adults <= guests.adults; adults += 1)
        for (let children = 0; children <= guests.children; children += 1)
          for (let vendors = 0; vendors <= guests.vendors; vendors += 1)
            if (adults + children > 0)
              most = Math.max(most, menuSum(chosen, { ...guests, adults, children, vendors }));
      const floor = Number(menuFloor(chosen, guests, 'USD').amount);
      // A party of vendors alone has no quote, and may be what pays most; the floor is then above all that have one.
      expect(floor).toBeGreaterThanOrEqual(most - 1e-9);
      if (guests.vendors === 0) expect(floor).toBeCloseTo(most, 9);
      const kept = menuSum({ ...chosen, neverLessInAll: true }, guests);
      expect(kept).toBeCloseTo(Math.max(floor, menuSum(chosen, guests)), 9);
    }),
    { numRuns: 400 },
  );
});

test('where guests count as parts of one, a larger party still pays at least what any smaller one does', () => {
  fc.assert(
    fc.property(
      menusInParts,
      parties,
      fc.constantFrom('adults', 'children', 'vendors'),
      (drawn, guests, group) => {
        fc.pre(guests.adults + guests.children > 0);
        const chosen = { ...drawn, neverLessInAll: true };
        const larger = { ...guests, [group]: guests[group] + 1 };
        expect(menuSum(chosen, larger)).toBeGreaterThanOrEqual(menuSum(chosen, guests));
        expect(menuSum(chosen, larger)).toBeGreaterThanOrEqual(menuSum(drawn, guests));
      },
    ),
    { numRuns: 400 },
  );
});

test('a menu whose price rises bills nobody for a party that does not reach the higher price', () => {
  const chosen = samplePackage({
    tiers: [
      { from: 1, to: 2, perHead: '0.01' },
      { from: 3, to: null, perHead: '0.02' },
    ],
    child: { price: '0.01' },
    minimumGuests: 2,
    neverLessInAll: true,
    floorTiers: 'reached',
  });
  // Two at the minimum are 2 × 0.01; three children at 0.01 are 0.03; no party of two pays 2 × 0.02.
  const guests = { adults: 0, children: 3, vendors: 0, staff: 0 };
  expect(menuFloor(chosen, guests, 'USD').amount.toFixed(2)).toBe('0.03');
  expect(menuSum(chosen, guests)).toBe(0.03);
  // An offer issued without `floorTiers` keeps what it was issued with.
  const { floorTiers: _, ...before } = chosen;
  expect(menuSum(before, guests)).toBe(0.04);
});

test('where prices fall, an offer issued without `floorTiers` comes to the same', () => {
  fc.assert(
    fc.property(fc.oneof(menus, menusInParts), parties, (drawn, guests) => {
      const prices = drawn.tiers.map(({ perHead }) => perHead).toSorted((a, b) => Number(b) - Number(a));
      const tiers = drawn.tiers.map((tier, index) => ({ ...tier, perHead: prices[index]! }));
      const { floorTiers: _, ...before } = { ...drawn, tiers };
      expect(menuFloor({ ...drawn, tiers }, guests, 'USD')).toEqual(menuFloor(before, guests, 'USD'));
    }),
    { numRuns: 400 },
  );
});
