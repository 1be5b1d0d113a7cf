import { describe, expect, test } from 'vitest';
import { moneyText } from '../../../src/engine/money/money.ts';
import { invoice } from '../../../src/exports/invoice.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import { run } from '../../commands/run.ts';
import { bookOf, changed, done, EVENT, factsIn, refusal, statusOf, supperKitchen } from './supper-kitchen.ts';

const AFTER = '2027-05-16';

/** Food, its service charge and rentals are taxed at 7.25 %; a plate costs 5.54 to replace, a jug nothing stated. */
const kitchen = (tax = '') =>
  supperKitchen({
    ...changed(
      'kitchen.yaml',
      'hill-town: { name: Hill Town }',
      `hill-town: { name: Hill Town, tax: { food: 7.25 %, service charge: 7.25 %, rental: 7.25 % } }
service charge: { rate: 20 %, on: food }
${tax}
rentals:
  plate: { name: Plates, amount: 1 each per guest, replacement: 5.54 }
  jug: { name: Jugs, amount: 1 each per 8 guests }`,
    ),
    ...changed('packages/supper.mdx', '40.00', '41.37'),
  });

async function invoiceOf(dir: string) {
  const found = currentEvent(await bookOf(dir), EVENT);
  if (!found.ok) throw new Error(found.what);
  const made = invoice(found.value);
  if (!made.ok) throw new Error(made.what);
  return made.value;
}

/*
 * By hand: 84 × 41.37 = 3475.08; 20 % of it 695.02; 2 × 5.54 = 11.08. Tax once on 3475.08 + 695.02 + 11.08 = 4181.18 is
 * 303.13555, 303.14 by its third digit; without the plates it was 302.33. In all 4484.32. Line by line the tax is 251.94 +
 * 50.39 + 0.80 = 303.13, in all 4484.31.
 */
describe('what was broken', () => {
  test.each([
    ['', '303.14', '4484.32'],
    ['tax: { by: line }', '303.13', '4484.31'],
  ])('is a line of the invoice at its replacement price, taxed as a rental %s', async (by, tax, total) => {
    const dir = await kitchen(by);
    expect((await invoiceOf(dir)).total).toBe('4472.43');
    await done(dir, AFTER, 'broken', EVENT, 'plate', '2');
    const { lines, taxes, balance, receivedInAll, due, ...made } = await invoiceOf(dir);
    expect(lines.at(-1)).toMatchObject({
      key: 'charge:1',
      label: 'Plates, broken',
      class: 'rental',
      quantity: '2',
      unitPrice: '5.54',
      amount: '11.08',
      taxable: '11.08',
    });
    expect(taxes).toEqual([{ rate: '7.25 %', base: '4181.18', amount: tax }]);
    expect(made.total).toBe(total);
    const cents = (text: string) => Math.round(Number(text) * 100);
    expect(cents(balance) + cents(receivedInAll)).toBe(cents(total));
    expect(due.reduce((sum, { amount }) => sum + cents(amount), 0)).toBe(cents(balance));
    // The service charge and what the lines before came to are as they were.
    expect(lines.find(({ key }) => key === 'service-charge')?.amount).toBe('695.02');
  });

  test('is charged at the price given, or not at all, and told back', async () => {
    const dir = await kitchen();
    const told = await done(dir, AFTER, 'broken', EVENT, 'Jugs', '1', '--charge', '12.50', '--missing');
    expect(told).toContain('Recorded for pell-supper: 1 × Jugs, missing; $12.50 each is billed.');
    await done(dir, AFTER, 'broken', EVENT, 'plate', '4', '--no-charge', '--note', 'a rack fell on the ramp');
    const jugOnly = await done(dir, AFTER, 'broken', EVENT, 'jug', '1');
    expect(jugOnly).toContain('nothing is charged');
    expect((await statusOf(dir)).charges).toEqual([
      { name: 'Jugs, missing', class: 'rental', count: 1, each: '12.50' },
    ]);
    expect(factsIn(dir).at(-2)).toMatchObject({
      file: '004-broken.json',
      fact: { kind: 'broken', item: 'plate', count: 4, each: null, why: 'a rack fell on the ramp' },
    });
  });

  test('is recorded once, unless somebody says that as many more are', async () => {
    const dir = await kitchen();
    await done(dir, AFTER, 'broken', EVENT, 'plate', '2');
    expect(await refusal(dir, AFTER, 'broken', EVENT, 'plate', '2')).toContain(
      '2 × “Plates”, broken, Sunday, May 16, 2027 is already recorded for pell-supper — if as many more are, add --again.',
    );
    await done(dir, AFTER, 'broken', EVENT, 'plate', '2', '--again');
    expect((await statusOf(dir)).charges).toMatchObject([{ count: 4 }]);
  });

  test('is taken back by a counter-fact, and never more of it than was recorded', async () => {
    const dir = await kitchen();
    const { total } = await statusOf(dir);
    await done(dir, AFTER, 'broken', EVENT, 'plate', '2');
    expect(await refusal(dir, AFTER, 'broken', EVENT, 'plate', '-3')).toContain(
      '3 can’t be taken back: 2 of “Plates” recorded as broken at $5.54',
    );
    await done(dir, AFTER, 'broken', EVENT, 'plate', '-2');
    const after = await statusOf(dir);
    expect(after.charges).toEqual([]);
    expect(moneyText(after.total)).toBe(moneyText(total));
    expect(factsIn(dir).filter(({ file }) => file.endsWith('-broken.json'))).toHaveLength(2);
  });

  test('is refused before the day, for a thing nobody lists, and for a count that is none', async () => {
    const dir = await kitchen();
    expect(await refusal(dir, '2027-05-14', 'broken', EVENT, 'plate', '2')).toContain('nothing is back yet');
    expect(await refusal(dir, AFTER, 'broken', EVENT, 'plates-big', '2')).toContain(
      'no rental, container, carrier, equipment, kit or add-on is called “plates-big”',
    );
    for (const count of ['0', '2.5', 'two'])
      expect(await run(dir, 'broken', EVENT, 'plate', count, '--today', AFTER)).toMatchObject({ code: 2 });
    expect(factsIn(dir)).toHaveLength(2);
  });
});
