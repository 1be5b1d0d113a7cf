import { describe, expect, test } from 'vitest';
import { printFindings } from '../../../src/book/findings/print-findings.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { changed, contentWith } from '../../findings/small-content.ts';

/** The small kitchen with what its crew, a place, a rental and an add-on cost it. */
function costing(crew: string, place: string, rental: string, addOn: string): string {
  const text = changed(
    'kitchen.yaml',
    'hill-town: { name: Hill Town }',
    `hill-town: { name: Hill Town, ${place} }`,
  );
  const rented = `rentals:\n  plate: { amount: 1 each per guest, ${rental} }\ncrew: { people: 2, hours: 8 hours, ${crew} }\nstations:`;
  const whole = (text['kitchen.yaml'] ?? '').replace('stations:', rented);
  return contentWith({
    'kitchen.yaml': whole.replace('price: 4.00 per guest,', `price: 4.00 per guest, ${addOn},`),
  });
}

describe('what things cost the kitchen', () => {
  test('is read as it is written, and stays unsaid where it is not', async () => {
    const { book } = await readBook(
      costing('pay: 21.50 per hour', 'delivery cost: 40.00', 'cost: 0.45', 'cost: 1.10 per guest'),
    );
    const { crew, places, rentals, addOns } = book?.kitchen ?? {};
    expect([
      crew?.pay,
      places?.get('hill-town')?.deliveryCost,
      rentals?.get('plate')?.cost,
      addOns?.get('late-soup')?.cost,
    ]).toEqual(['21.50', '40.00', '0.45', '1.10 per guest']);
    const silent = (await readBook(contentWith({}))).book?.kitchen;
    expect(silent?.places.get('hill-town')).not.toHaveProperty('deliveryCost');
    expect(silent?.addOns.get('late-soup')).not.toHaveProperty('cost');
  });

  test('is refused where it says no sum, with the way to write it', async () => {
    const said = async (content: string) => printFindings((await readBook(content)).findings, 'content');
    const sums = ['delivery cost: cheap', 'cost: 0.45 each', 'cost: 1.10 per head'] as const;
    expect(await said(costing('pay: 21.50 per hour', ...sums))).toMatchInlineSnapshot(`
      "content/kitchen.yaml:7:48 error not-understood "cheap" is not an amount in USD — write an amount such as "1250.00"
      content/kitchen.yaml:9:44 error not-understood "0.45 each" is not an amount in USD — write an amount such as "1250.00"
      content/kitchen.yaml:19:62 error not-understood nothing is priced per "head" — write for example "6.50 per guest", "120.00 per hour", "85.00 per 40 guests" or "350.00"
      3 errors.
      "
    `);
    expect(
      await said(costing('pay: 21.50', 'delivery cost: 40.00', 'cost: 0.45', 'cost: 1.10')),
    ).toMatchInlineSnapshot(`
      "content/kitchen.yaml:10:41 error not-understood “21.50” is not an hourly rate — write it as "38.00 per hour"
      1 error.
      "
    `);
  });
});
