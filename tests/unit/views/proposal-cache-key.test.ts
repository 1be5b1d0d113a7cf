import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { proposalView } from '../../../src/views/client/proposal-view-of.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import {
  accepted,
  day,
  EVENING,
  eveningOf,
  issued,
  offerOf,
  secondKitchen,
  withFacts,
} from '../offers/second-kitchen.ts';

const TODAY = day('2027-05-01');

const pageOf = (book: Book, today: Day = TODAY) => {
  const [page] = clientSite(book, today).pages;
  const view = JSON.stringify(page?.view);
  // As it arrives in another thread, where nothing but plain data arrives whole.
  const elsewhere = page && JSON.stringify(proposalView(structuredClone(page.source!)));
  return { from: page?.known?.cacheKey, view, elsewhere };
};

const SESAME: [string, string, string] = [
  'ingredients/own.yaml',
  'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: none',
  'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: sesame',
];

async function ways() {
  const plain = await secondKitchen();
  const open = issued(plain);
  const evening = eveningOf(plain);
  const { guests, needs, mains } = offerOf(plain).proposed;
  const received = { amount: '100.00', on: TODAY, method: 'transfer' };
  const deposit: EventFact = { version: 1, kind: 'confirmed', on: TODAY, received };
  const more: EventFact = {
    version: 1,
    kind: 'guarantee',
    on: TODAY,
    given: TODAY,
    guests: { ...guests, adults: guests.adults + 2 },
    needs,
    mains,
  };
  const payment = (amount: string): EventFact => ({
    version: 1,
    kind: 'payment',
    on: TODAY,
    received: { ...received, amount },
  });
  const proposal = (changed: Partial<typeof evening>) => ({
    ...plain,
    proposals: new Map([[EVENING, { ...evening, shareDraft: true, ...changed }]]),
  });
  const second = { ...offerOf(plain), revision: 2, digest: '0'.repeat(64), occasion: 'A later thought' };
  const { kitchen } = open;
  const sesame = await secondKitchen(SESAME);
  return {
    draft: pageOf(proposal({})),
    'draft with other words': pageOf(proposal({ letter: 'Other words.' })),
    'draft of another occasion': pageOf(proposal({ occasion: 'Another evening' })),
    offered: pageOf(open),
    expired: pageOf(open, day('2029-01-01')),
    withdrawn: pageOf({ ...open, proposals: new Map([[EVENING, { ...evening, withdrawn: true }]]) }),
    accepted: pageOf(accepted(plain)),
    confirmed: pageOf(withFacts(accepted(plain), deposit)),
    'another count': pageOf(withFacts(accepted(plain), deposit, more)),
    'another count, and paid': pageOf(withFacts(accepted(plain), deposit, more, payment('50.00'))),
    'another count, and paid more': pageOf(withFacts(accepted(plain), deposit, more, payment('60.00'))),
    'second revision': pageOf({
      ...open,
      offers: new Map([[EVENING, [...open.offers.get(EVENING)!, second]]]),
    }),
    corrected: pageOf({ ...sesame, offers: open.offers }),
    'corrected, a day later': pageOf({ ...sesame, offers: open.offers }, day('2027-05-02')),
    'another site': pageOf({ ...open, kitchen: { ...kitchen, site: 'https://other.example' } }),
    'another pair of typefaces': pageOf({
      ...open,
      kitchen: { ...kitchen, fonts: kitchen.fonts === 'bitter' ? 'source' : 'bitter' },
    }),
  };
}

describe('what a proposal’s page is made from', () => {
  test('differs wherever the page does', async () => {
    const all = Object.entries(await ways());
    for (const [one, a] of all)
      for (const [other, b] of all)
        if (a.view !== b.view) expect(a.from, `${one} and ${other}`).not.toBe(b.from);
    // So that the above has something to tell apart.
    expect(new Set(all.map(([, { view }]) => view)).size).toBe(all.length);
  });

  test('is plain data: in another thread the same page is made of it', async () => {
    for (const [name, { view, elsewhere }] of Object.entries(await ways()))
      expect(elsewhere, name).toBe(view);
  });

  test('stays the same from day to day while nothing of the page does not', async () => {
    const open = issued(await secondKitchen());
    expect(pageOf(open, day('2027-05-02'))).toEqual(pageOf(open));
  });
});
