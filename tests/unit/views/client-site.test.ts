import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import {
  accepted,
  day,
  EVENING,
  eveningOf,
  issued,
  offerOf,
  secondKitchen,
} from '../offers/second-kitchen.ts';

const TODAY = day('2027-05-01');
const LINK = 'oyx6usbuof2ek2zoccd4j5hh5o';

const pagesOf = (book: Book) => clientSite(book, TODAY).pages;
const viewOf = (book: Book) => pagesOf(book)[0]?.view as ProposalView;

describe('what a client can open', () => {
  test('is the offer’s page, its PDF, its data and where it stands, under the secret link alone', async () => {
    const { pages, prints, files } = clientSite(issued(await secondKitchen()), TODAY);
    const paths = [...pages, ...prints, ...files].map(({ file }) => file);
    expect(paths).toEqual([
      `public/proposals/${LINK}/index.html`,
      `public/proposals/${LINK}/proposal.pdf`,
      `public/proposals/${LINK}/offer.json`,
      `public/proposals/${LINK}/standing.json`,
      'public/robots.txt',
    ]);
  });

  test('is no draft, unless the caterer shares it', async () => {
    const book = await secondKitchen();
    expect(pagesOf(book)).toEqual([]);
    const shared = { ...eveningOf(book), shareDraft: true };
    expect(viewOf({ ...book, proposals: new Map([[EVENING, shared]]) }).state).toBe('draft');
  });

  test('is the newest revision, and nothing while a revision cannot be read: it may have replaced the rest', async () => {
    const book = issued(await secondKitchen());
    const second = { ...offerOf(await secondKitchen()), revision: 2 };
    const both: Book = { ...book, offers: new Map([[EVENING, [...book.offers.get(EVENING)!, second]]]) };
    expect(viewOf(both).revision).toBe(2);
    const held = new Map([[`offer/${EVENING}-r2`, 'it was changed after it was issued']]);
    expect(pagesOf({ ...book, held })).toEqual([]);
    const shared = new Map([[EVENING, { ...eveningOf(book), shareDraft: true }]]);
    expect(pagesOf({ ...book, held, offers: new Map(), proposals: shared })).toEqual([]);
  });

  test('is still what was accepted, whatever cannot be read since', async () => {
    const held = new Map([[`offer/${EVENING}-r2`, 'it is no JSON']]);
    const view = viewOf({ ...accepted(await secondKitchen()), held });
    expect([view.state, view.revision]).toEqual(['accepted', 1]);
  });

  test('tells an allergen that became known at once, dated, on the page as issued', async () => {
    const frozen = issued(await secondKitchen());
    const since = await secondKitchen([
      'ingredients/own.yaml',
      'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: none',
      'tinned-butter-beans:\n  name: Butter beans, large tin\n  from: plant\n  contains: sesame',
    ]);
    const view = viewOf({ ...since, offers: frozen.offers });
    expect(JSON.stringify(view.since.texts)).toMatch(
      /1 May 2027.*Butter bean and leek stew.*contains.*sesame/i,
    );
    expect(viewOf(frozen).since.texts).toEqual([]);
  });
});
