import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, onTestFinished, test } from 'vitest';
import { type Eaten, eatenEstimate } from '../../../src/engine/learning/eaten.ts';
import { eachOf } from '../../../src/engine/learning/sensible-amount.ts';
import { type EatenDish, isIn } from '../../../src/offers/learned/eaten-so-far.ts';
import { portionProposal } from '../../../src/offers/learned/portion-proposals.ts';
import type { BrandView } from '../../../src/views/brand/brand-view.ts';
import { leftoversView } from '../../../src/views/kitchen/leftovers-view-of.ts';
import { bookOf, done, EVENT, supperKitchen } from '../events/supper-kitchen.ts';

const BRAND = {} as BrandView;

test('the page says what the event’s fact comes to, the dearest first and what ran out by itself', async () => {
  const dir = await supperKitchen();
  expect(leftoversView(await bookOf(dir), BRAND, null)).toBeUndefined();
  const folder = mkdtempSync(join(tmpdir(), 'salver-left-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const list = join(folder, 'left.csv');
  writeFileSync(
    list,
    'dish,came back,ran out,note\nbean-fritters,14 pieces,,\nlamb-stew,,20:15,\npea-pot,1 serving,,cold\n',
  );
  await done(dir, '2027-05-15', 'leftovers', EVENT, '--from', list, '--adults', '80');
  const view = leftoversView(await bookOf(dir), BRAND, null);
  // 14 of 84 fritters that cost $33.60 are $5.60, 1 of 21 pots that cost $12.60 is $0.60; of the stew nothing came back.
  expect(view?.dishes.map(({ name, cost, back, ranOut }) => [name, cost, back, ranOut])).toEqual([
    ['Bean fritters', '$5.60', '14 pieces', 0],
    ['Pea pot', '$0.60', '1 serving', 0],
    ['Lamb stew', '$0.00', 'nothing', 1],
  ]);
  expect(view?.figures.map(({ amount }) => amount)).toEqual(['$6.20', '1']);
  expect(view?.short).toEqual([
    {
      key: 'lamb-stew-supper-main',
      name: 'Lamb stew',
      what: 'Supper, Saturday, May 15, 2027: ran out at 20:15',
    },
  ]);
  // 70 servings for 60 who came, planned with 63 for 63: 1⅙ is the longest bar.
  const [stew] = view?.dishes.find(({ name }) => name === 'Lamb stew')?.events ?? [];
  expect(stew).toMatchObject({
    guests: '60',
    planned: '1 serving',
    served: '1.17 servings',
    eaten: '1.17 servings',
  });
  expect(stew?.servedShare).toBe(1);
  expect(stew?.plannedShare).toBeCloseTo(6 / 7, 12);
  expect(view?.dishes[0]?.said).toBe(
    'at 1 earlier event with this menu (plated) each guest ate 0.88 pieces; one event can’t show how much events vary',
  );
});

/** What is proposed for the supper's fritters, now 1 piece for each guest, from what was eaten of them. */
async function fritterProposals() {
  const book = await bookOf(await supperKitchen());
  const place = { recipe: 'bean-fritters', style: 'plated', packageId: 'supper', course: 'First' } as const;
  return (eaten: readonly Eaten[]) => {
    const estimate = eatenEstimate(eaten, 0.9);
    const dish: EatenDish = {
      ...place,
      name: '',
      unit: 'piece',
      events: [],
      estimate,
    };
    const proposal = portionProposal(book, dish);
    if (!proposal) throw new Error('the dish is on the menu');
    const { present, proposed } = proposal;
    return { perGuest: eachOf(proposed ?? present).valueOf(), stays: proposed === undefined, estimate };
  };
}

test('what is proposed is never rounded up for an error of the estimate', async () => {
  const proposedFor = await fritterProposals();
  const known = [0.21, 0.4, 0.79].map((perGuest) => ({ perGuest, ranOut: false }));
  // The mean is 1.4 ÷ 3, and three events go 3 ÷ 8 of the way there: 1 − ⅜ × (1 − 1.4 ÷ 3) = 0.8, 8 for 10 guests.
  expect(proposedFor(known).perGuest).toBe(0.8);
});

test('an event at which a dish ran out never lowers what is proposed, but where that lies beyond what was learned', async () => {
  const proposedFor = await fritterProposals();
  const share = fc.integer({ min: 20, max: 160 }).map((hundredths) => hundredths / 100);
  fc.assert(
    fc.property(fc.array(share, { minLength: 2, maxLength: 6 }), share, (known, out) => {
      const events = known.map((perGuest) => ({ perGuest, ranOut: false }));
      const before = proposedFor(events);
      const after = proposedFor([...events, { perGuest: out, ranOut: true }]);
      // What guests would eat is taken for no less. One event more is also a narrower interval, and a plain amount that
      // lies beyond it gives way to a finer one inside.
      expect(after.estimate.mean).toBeGreaterThanOrEqual(before.estimate.mean! - 1e-6);
      // Where less was eaten and still nothing was proposed, no amount that a cook writes lay inside the interval: with one
      // event more there may be one.
      const noneFits = before.stays && before.estimate.mean! < 1;
      if (!noneFits && before.perGuest <= after.estimate.to!)
        expect(after.perGuest).toBeGreaterThanOrEqual(before.perGuest);
    }),
    {
      numRuns: 40,
      examples: [
        [[0.21, 0.4, 0.79], 0.2],
        [[0.2, 0.25, 0.9, 0.59, 0.27], 1.1],
      ],
    },
  );
});

test('a season may go over the turn of the year', () => {
  const days = ['2027-10-31', '2027-11-01', '2028-02-29', '2028-03-01'] as Parameters<typeof isIn>[0][];
  expect(days.map((day) => isIn(day, { from: 11, to: 2 }))).toEqual([false, true, true, false]);
  expect(days.map((day) => isIn(day, { from: 3, to: 10 }))).toEqual([true, false, false, true]);
});
