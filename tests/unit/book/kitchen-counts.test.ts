import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import { NO_DRINKS } from '../../../src/engine/drinks/drink-counts.ts';
import { rentalsFor } from '../../../src/engine/plan/containers/service-ware.ts';
import type { Guests } from '../../../src/engine/quote/counts.ts';
import { quote } from '../../../src/engine/quote/quote.ts';
import { lineWhy } from '../../../src/exports/words/line-words.ts';
import { offerContent } from '../../../src/offers/issue/offer-content.ts';
import { quoteView } from '../../../src/views/quote-view-of.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import { foundIn } from '../../findings/found-in.ts';
import { contentWith, SMALL_CONTENT } from '../../findings/small-content.ts';
import { must } from '../offers/second-kitchen.ts';

const GUESTS: Guests = { adults: 28, children: 4, vendors: 2, staff: 0 };
const RENTALS = 'rentals:\n  plate: { amount: 1 each per guest }\nstations:';

/** The small kitchen with servers for 30 each, plates, and whatever else it states of whom it counts. */
function counting(change: { kitchen?: string; server?: string; plate?: string } = {}): string {
  let text = (SMALL_CONTENT['kitchen.yaml'] ?? '').replace('stations:', RENTALS);
  if (change.kitchen) text = text.replace('stations:', `counts: ${change.kitchen}\nstations:`);
  if (change.server) text = text.replace('hours: 6 hours }', `hours: 6 hours, counts: "${change.server}" }`);
  if (change.plate)
    text = text.replace('1 each per guest }', `1 each per guest, counts: "${change.plate}" }`);
  const proposal = (SMALL_CONTENT['proposals/gale.md'] ?? '').replace(
    'guests: { adults: 40, vendors: 2 }',
    'guests: { adults: 28, children: 4, vendors: 2 }',
  );
  return contentWith({ 'kitchen.yaml': text, 'proposals/gale.md': proposal });
}

/** Servers, plates and the divisor of the sum per guest, as one kitchen counts 28 adults, 4 children and 2 vendors. */
async function counted(change: Parameters<typeof counting>[0]) {
  const { book } = await readBook(counting(change));
  const proposal = book?.proposals.get('gale');
  if (!book || !proposal) throw new Error('the small kitchen is gone');
  const { terms, proposed: choice } = must(offerContent(book, proposal));
  const priced = quote(terms, choice);
  const view = quoteView(scriptWordsIn('en-US'), terms, choice, null);
  const server = priced.lines.find(({ key }) => key === 'staff:server');
  const [plates] = rentalsFor(book.kitchen, 'buffet', GUESTS, NO_DRINKS);
  return {
    hours: server?.quantity,
    why: server && lineWhy(server, terms).split(';')[0],
    plates: plates?.count.amount.toFraction(),
    total: priced.total,
    perGuest: [view.perGuestLabel, priced.perGuest],
    frozen: terms.perGuest,
  };
}

describe('guests', () => {
  test('are everybody at the table, a child as one, wherever nothing else is stated', async () => {
    const { total, ...rest } = await counted({});
    expect(rest).toEqual({
      // 32 guests at 30 for each server are 2 servers of 6 hours.
      hours: '12',
      why: '1 per 30 guests, 32 adults and children = 2',
      plates: '32',
      perGuest: ['Per guest, all-inclusive (32 adults and children)', (Number(total) / 32).toFixed(2)],
      frozen: undefined,
    });
  });

  test('are counted as the kitchen says for all of it at once', async () => {
    const { total, ...rest } = await counted({ kitchen: 'adults, children at 1/4, vendors' });
    expect(rest).toMatchObject({
      // 28 + 1 + 2 = 31.
      hours: '12',
      why: '1 per 30 guests, 31 guests, adults, children at 1/4 and vendor meals = 2',
      plates: '31',
      perGuest: [
        'Per guest, all-inclusive (31 guests, adults, children at 1/4 and vendor meals)',
        (Number(total) / 31).toFixed(2),
      ],
    });
    expect(rest.frozen).toEqual({ adults: '1', children: '1/4', vendors: '1' });
  });

  test('are counted as a role or a rental says for itself', async () => {
    expect(await counted({ server: 'adults', plate: 'adults, children, vendors' })).toMatchObject({
      hours: '6',
      why: '1 per 30 guests, 28 adults = 1',
      plates: '34',
    });
  });
});

describe('whom something counts: what check says', () => {
  test('where it is no list of guests', async () => {
    expect(await foundIn(counting({ kitchen: 'everybody' }))).toMatchInlineSnapshot(
      `"content/kitchen.yaml:10:9 error not-understood "everybody" is not adults, children, vendors or staff — write for example "adults, children at 1/2, vendors""`,
    );
    expect(await foundIn(counting({ server: 'adults at 3', plate: 'dogs' }))).toMatchInlineSnapshot(`
      "content/kitchen.yaml:9:46 error not-understood "dogs" is not adults, children, vendors or staff — write for example "adults, children at 1/2, vendors"
      content/kitchen.yaml:13:128 error not-understood adults can’t count as "3" — use a weight above 0 and up to 2, for example 1/2"
    `);
  });

  test('where plates are packed for no vendor and nobody decided so', async () => {
    expect(await foundIn(counting())).toBe(
      'content/kitchen.yaml:9:10 warning vendors-not-counted “Plate” is packed for adults and children, but gale promises 2 vendor meals too — write “counts: adults, children, vendors” if vendors get it, else “counts: adults, children”',
    );
    expect(await foundIn(counting({ plate: 'adults, children' }))).toBe('');
    expect(await foundIn(counting({ kitchen: 'adults, children, vendors' }))).toBe('');
  });
});
