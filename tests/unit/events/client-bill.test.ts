import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { acceptedSupper, bookOf, changed, done, EVENT, statusOf, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01' as Day;

/** What the client's page shows of counts and money. */
async function billOf(dir: string) {
  const { pages, files } = clientSite(await bookOf(dir), TODAY);
  const { quote, facts, packages, terms, answering } = pages[0]!.view as ProposalView;
  return {
    quote,
    form: answering.change,
    guests: facts.find(({ label }) => label === 'Guests')?.value,
    takers: packages.flatMap(({ courses }) =>
      courses.flatMap(({ dishes }) =>
        dishes.filter(({ chosenBy }) => chosenBy !== '').map(({ name, chosenBy }) => `${name}: ${chosenBy}`),
      ),
    ),
    count: terms.find(({ head }) => head === 'Your final count')?.texts[0],
    rows: [...quote.payments, ...quote.paymentSums].map(({ label, due, amount, paid, open }) =>
      [label, due, amount, paid, open].join(' | '),
    ),
    offer: files.find(({ file }) => file.endsWith('offer.json'))?.content,
  };
}

// 84 guests at $40.00 are $3,360.00, of which 30 % are due on acceptance: $1,008.00.
describe('the client’s page of an accepted event', () => {
  test('shows what was agreed as the quote, with nothing paid before the deposit is in', async () => {
    const { quote, rows, guests } = await billOf(await acceptedSupper());
    expect([quote.head, quote.total, quote.agreed, guests]).toEqual([
      'Your quote',
      '$3,360.00',
      null,
      '84 adults',
    ]);
    expect(rows).toEqual([
      '30% on acceptance | Thursday, April 1, 2027 | $1,008.00 | $0.00 | $1,008.00',
      'Balance, 7 days before the event | Saturday, May 8, 2027 | $2,352.00 | $0.00 | $2,352.00',
      'Total |  | $3,360.00 | $0.00 | $3,360.00',
    ]);
  });

  test('shows what a count change makes of it: quote, sum per guest, takers, payments, and what was agreed', async () => {
    const dir = await supperKitchen();
    const before = await billOf(dir);
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '92');
    const { quote, rows, guests, takers, count, offer } = await billOf(dir);
    // 92 × $40.00; 63 and 21 of 84 are 69 and 23 of 92.
    expect(quote).toMatchObject({
      head: 'Your current total',
      caption: 'Supper, 92 adults',
      total: '$3,680.00',
      perGuest: '$40.00',
      agreed: { label: 'As agreed: 84 adults', amount: '$3,360.00' },
    });
    expect(quote.perGuestLabel).toContain('92 adults');
    expect(quote.lines.map(({ amount }) => amount)).toEqual(['$3,680.00']);
    expect([guests, takers]).toEqual(['92 adults', ['Lamb stew: 69 guests', 'Pea pot: 23 guests']]);
    // The deposit was paid in full when 84 were agreed, and stays so; the balance takes the whole difference.
    expect(rows).toEqual([
      '30% on acceptance | Thursday, April 1, 2027 | $1,008.00 | $1,008.00 | $0.00',
      'Balance, 7 days before the event | Saturday, May 8, 2027 | $2,672.00 | $0.00 | $2,672.00',
      'Total |  | $3,680.00 | $1,008.00 | $2,672.00',
    ]);
    // The floor hangs on the count accepted, and the offer stays as it was issued.
    expect(count).toContain('90% of the 84 guests you accepted');
    expect(offer).toBe(before.offer);
    const { total } = await statusOf(dir);
    expect(quote.total).toBe(`$3,${total.amount.minus(3000).toFixed(2)}`);
  });

  test('bills the floor where fewer will eat, and says why', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '60', '--below-floor');
    const { quote, guests } = await billOf(dir);
    // 90 % of 84 is 75.6, so 76 × $40.00.
    expect([guests, quote.caption, quote.total]).toEqual(['60 adults', 'Supper, 76 adults', '$3,040.00']);
    expect(quote.notes).toContain(
      'Billed for 76 guests at the table: 60 guaranteed, and never fewer than 76.',
    );
  });

  test('has a form for a new count that begins with the sum billed, not with one below the floor', async () => {
    const dir = await supperKitchen();
    expect((await billOf(dir)).form).toMatchObject({ quote: { total: '$3,360.00' }, billedWhy: '' });
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '60', '--below-floor');
    const { form, quote } = await billOf(dir);
    expect(form?.people[0]?.value).toBe('60');
    expect(form?.quote).toMatchObject({ caption: 'Supper, 76 adults', total: quote.total });
    expect(form?.billedWhy).toBe('Billed for 76 guests at the table, the fewest you can be billed for.');
  });

  test('names who came once that is recorded, and takes no new count any more', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '92');
    await done(dir, '2027-05-16', 'served', EVENT, '--adults', '88', '--children', '2');
    const { guests, form, quote } = await billOf(dir);
    expect(guests).toBe('88 adults, 2 children came (final count: 92 adults)');
    expect(form).toBeNull();
    // Billed is the final count, and adults never for fewer than it.
    expect(quote.caption).toBe('Supper, 92 adults');
    await done(dir, '2027-05-16', 'served', EVENT, '--adults', '92');
    expect((await billOf(dir)).guests).toBe('92 adults came');
  });

  test('names what is to be paid back where more came in than is billed now', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'payment', EVENT, '2352.00');
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '80');
    // 80 × $40.00 is $3,200.00, and all of $3,360.00 was paid.
    expect((await billOf(dir)).rows.slice(-2)).toEqual([
      'Total |  | $3,200.00 | $3,360.00 | $0.00',
      'Refund due to you |  |  |  | $160.00',
    ]);
  });

  test('shows its last quote and asks for nothing once it is cancelled', async () => {
    const dir = await supperKitchen();
    await done(dir, TODAY, 'guarantee', EVENT, '--guests', '92');
    await done(dir, TODAY, 'cancel', EVENT);
    const { quote, rows } = await billOf(dir);
    expect([quote.head, quote.total, quote.agreed?.amount, rows]).toEqual([
      'Your quote',
      '$3,680.00',
      '$3,360.00',
      [],
    ]);
  });
});

test('the client’s page shows what was broken as a line of its own, with what was agreed', async () => {
  const dir = await supperKitchen(
    changed(
      'kitchen.yaml',
      'add-ons:',
      'rentals: { plate: { name: Plates, amount: 1 each per guest, replacement: 9.50 } }\nadd-ons:',
    ),
  );
  await done(dir, '2027-05-16', 'broken', EVENT, 'plate', '3');
  const { quote, rows } = await billOf(dir);
  // 3,360.00 and 3 × 9.50, which no service charge is put on.
  expect(quote.lines.at(-1)).toMatchObject({ label: 'Plates, broken', quantity: '3', amount: '$28.50' });
  expect([quote.total, quote.agreed?.amount, quote.perGuest]).toEqual(['$3,388.50', '$3,360.00', '$40.00']);
  expect(rows.at(-1)).toBe('Total |  | $3,388.50 | $1,008.00 | $2,380.50');
});
