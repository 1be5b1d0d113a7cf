import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { offerContent } from '../../../src/offers/issue/offer-content.ts';
import { type Offer, offerSchema } from '../../../src/schema/offer.ts';
import { conditions } from '../../../src/views/client/conditions.ts';
import { EVENING, eveningOf, must, secondKitchen } from '../offers/second-kitchen.ts';

const readingRoom = (): Offer =>
  offerSchema.parse(JSON.parse(readFileSync('content/offers/reading-room-opening-r2.json', 'utf8')));
const under = (head: string, all: ReturnType<typeof conditions>) =>
  all.find((each) => each.head === head)?.texts.join(' ');

describe('the conditions on a proposal', () => {
  test('give the last day for the count and the fewest guests billed, as a day and as people', () => {
    const offer = readingRoom();
    // 118 guests × 90 % is 106.2, up to a whole guest; seven days before June 19 is June 12.
    expect(under('Your final count', conditions(offer, null, null))).toBe(
      'It is due by the end of Saturday, June 12, 2027, 7 days before the event; after that it can go up but not down. You are billed for that count or for the guests served, whichever is larger, and never for fewer than 107 guests at the table (90% of the 118 guests quoted).',
    );
    const accepted = { ...offer.proposed, guests: { ...offer.proposed.guests, adults: 100 } };
    expect(under('Your final count', conditions(offer, accepted, null))).toContain(
      'never for fewer than 90 guests at the table (90% of the 100 guests you accepted)',
    );
    const undated = conditions(offer, accepted, { state: 'postponed', date: null });
    expect(under('Your final count', undated)).toMatch(/^It is due 7 days before the event;/);
  });

  test('say whom each price counts, and what comes on top of them', () => {
    const said = conditions(readingRoom(), null, null);
    expect(said.find(({ head }) => head === 'How prices are counted')?.texts).toEqual([
      'Menu prices are per adult. The price step depends on the number of adults and children.',
      'Prices for children and vendor meals are shown with each menu. Our crew’s meals are free of charge.',
      'Espresso cart with a barista and Pear and ginger cordial table: priced per guest, counting adults and children.',
      'Extra hour of service: priced by the hour.',
      'Event captain: one per 150 guests or part thereof, counting adults and children.',
      'Cooks on site with Lantern Stations: one per 40 guests or part thereof, counting adults and children.',
      'Cooks on site with Towpath Lunch: one per 60 guests or part thereof, counting adults and children.',
      'Servers with Lantern Stations: one per 25 guests or part thereof, counting adults and children; at least 2.',
      'Servers with Towpath Lunch: one per 30 guests or part thereof, counting adults and children; at least 2.',
      'Delivery is charged once.',
    ]);
    expect(under('Tax', said)).toBe('You are exempt, so no tax is charged.');
  });

  test('call the service charge by its base and no gratuity, whatever its name', () => {
    const offer = readingRoom();
    const charge = { label: 'House charge', rate: '18 %', base: ['food' as const], afterDiscount: false };
    const said = conditions({ ...offer, terms: { ...offer.terms, serviceCharge: charge } }, null, null);
    expect(under('House charge', said)).toBe(
      '18% of food. The service charge goes to the caterer; it is not a gratuity.',
    );
    expect(
      JSON.stringify(conditions({ ...offer, terms: { ...offer.terms, serviceCharge: null } }, null, null)),
    ).not.toMatch(/not a gratuity/);
  });

  test('admit it where nothing is said of cancelling', () => {
    expect(
      under('Canceling and rescheduling', conditions({ ...readingRoom(), legal: ' ' }, null, null)),
    ).toMatch(/doesn’t state what happens if the event is canceled .* ask us before you accept/);
    expect(under('Canceling and rescheduling', conditions(readingRoom(), null, null))).toBeUndefined();
  });

  test('list what is not included as the kitchen does, unless the proposal says otherwise', async () => {
    const kitchen = ['kitchen.yaml', 'terms: |\n', 'not included: linen, glasses\nterms: |\n'] as const;
    const listed = async (...own: readonly (readonly [string, string, string])[]) => {
      const book = await secondKitchen(kitchen, ...own);
      return under('Not included', conditions(must(offerContent(book, eveningOf(book))), null, null));
    };
    const own = (text: string) =>
      [`proposals/${EVENING}.md`, 'lines: 1\n', `lines: 1\nnot included: ${text}\n`] as const;
    expect(await listed()).toBe('Linen; glasses (unless listed in the quote).');
    expect(await listed(own('glasses'))).toBe('Glasses (unless listed in the quote).');
    expect(await listed(own('nothing'))).toBeUndefined();
  });
});
