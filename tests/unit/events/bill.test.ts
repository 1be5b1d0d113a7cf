import { describe, expect, test } from 'vitest';
import { moneyText } from '../../../src/engine/money/money.ts';
import type { Guests } from '../../../src/engine/quote/counts.ts';
import { invoice } from '../../../src/exports/invoice.ts';
import { billedGuests, floorCount } from '../../../src/offers/event/billed-guests.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import { bookOf, changed, done, EVENT, refusal, statusOf, supperKitchen } from './supper-kitchen.ts';

const people = (adults: number, children: number, vendors = 0): Guests => ({
  adults,
  children,
  vendors,
  staff: 0,
});

describe('the guests billed', () => {
  const cases: readonly [string, Guests, Guests | null, Guests, Guests][] = [
    [
      'are the guaranteed before anybody is served',
      people(84, 6, 4),
      null,
      people(84, 6, 4),
      people(84, 6, 4),
    ],
    ['are the served where more came', people(84, 6), people(90, 8), people(84, 6), people(90, 8)],
    ['are the guaranteed where fewer came', people(84, 6), people(70, 6), people(84, 6), people(84, 6)],
    ['let an adult take a child’s place', people(84, 6), people(85, 5), people(84, 6), people(85, 5)],
    ['never let the adults fall', people(84, 6), people(80, 12), people(84, 6), people(84, 8)],
    // 90 % of 90 is 81: 76 are guaranteed, the five missing were accepted as adults.
    ['are brought up to the floor with adults', people(70, 6), null, people(84, 6), people(75, 6)],
    // 74 are guaranteed, seven are missing: the six children accepted first, then an adult.
    ['are brought up to the floor with children first', people(74, 0), null, people(84, 6), people(75, 6)],
    [
      'count vendor meals by themselves',
      people(84, 6, 4),
      people(84, 6, 5),
      people(84, 6, 4),
      people(84, 6, 5),
    ],
  ];
  test.each(cases)('%s', (_, guaranteed, served, accepted, billed) => {
    const floor = floorCount('90 %', accepted);
    expect(billedGuests(guaranteed, served, accepted, floor)).toEqual(billed);
  });

  test('have a floor in whole guests, upwards', () => {
    expect(floorCount('90 %', people(84, 6))).toBe(81);
    expect(floorCount('90 %', people(84, 0))).toBe(76);
    expect(floorCount('85 %', people(34, 3))).toBe(32);
    expect(floorCount('0 %', people(34, 3))).toBe(0);
  });
});

async function invoiceOf(dir: string) {
  const found = currentEvent(await bookOf(dir), EVENT);
  if (!found.ok) throw new Error(found.what);
  return invoice(found.value);
}

describe('an invoice', () => {
  test('bills the larger of guaranteed and served, and its payments and balance sum to the cent', async () => {
    // 7.25 % of 40.00 a head; a service charge of 20 % on food; per-head prices that do not divide.
    const dir = await supperKitchen({
      ...changed(
        'kitchen.yaml',
        'hill-town: { name: Hill Town }',
        'hill-town: { name: Hill Town, tax: { food: 7.25 %, service charge: 7.25 % } }\nservice charge: { rate: 20 %, on: food }',
      ),
      ...changed('packages/supper.mdx', '40.00', '41.37'),
    });
    // 84 × 41.37 = 3475.08; 20 % = 695.02 (695.016); tax 7.25 % of 4170.10 = 302.33 (302.33225); in all 4472.43.
    // The deposit of 30 % is 1341.73 (1341.729).
    await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '80');
    await done(dir, '2027-05-08', 'payment', EVENT, '2000.00', '--method', 'transfer', '--on', '2027-05-07');
    await done(dir, '2027-05-16', 'served', EVENT, '--adults', '83', '--children', '2');
    const made = await invoiceOf(dir);
    if (!made.ok) throw new Error(made.what);
    const { counts, total, received, receivedInAll, balance, due, lines, taxes } = made.value;
    expect(counts).toMatchObject({ billed: people(83, 2), floor: 76 });
    expect(counts.why).toBe(
      '80 guaranteed and 85 served, never fewer than 76: billed for 85 guests at the table',
    );
    // 83 × 41.37 = 3433.71; 2 × 20.69 (half of 41.37, half-up) = 41.38; 3475.09. Charge 695.02. Tax on 4170.11: 302.33.
    expect(lines.map(({ label, amount }) => [label, amount])).toEqual([
      ['Supper', '3433.71'],
      ['Supper, children', '41.38'],
      ['Service charge', '695.02'],
    ]);
    expect(taxes.map(({ amount }) => amount)).toEqual(['302.33']);
    expect(total).toBe('4472.44');
    expect(received).toEqual([
      {
        on: '2027-04-02',
        amount: '1341.73',
        method: '',
        paid: [{ label: '30 % on acceptance', amount: '1341.73' }],
      },
      {
        on: '2027-05-07',
        amount: '2000.00',
        method: 'transfer',
        paid: [{ label: 'Balance, 7 days before the event', amount: '2000.00' }],
      },
    ]);
    expect(receivedInAll).toBe('3341.73');
    expect(balance).toBe('1130.71');
    expect(due).toEqual([
      { label: 'Balance, 7 days before the event', due: '2027-05-08', amount: '1130.71' },
    ]);
    const paid = await done(dir, '2027-05-20', 'payment', EVENT, '1200.00');
    expect(paid).toContain('To be paid back: $69.29 of $4,472.44.');
    const last = await invoiceOf(dir);
    expect(last.ok && last.value.balance).toBe('-69.29');
  });

  test('is not made before somebody can have been served, and not for an event called off', async () => {
    const dir = await supperKitchen();
    expect(await refusal(dir, '2027-05-14', 'served', EVENT, '--adults', '80')).toContain(
      'so no one has been served yet',
    );
    await done(dir, '2027-05-01', 'cancel', EVENT, '--reason', 'The hall burnt down');
    expect(await invoiceOf(dir)).toMatchObject({
      ok: false,
      what: 'pell-supper is cancelled, and nothing is billed for it',
    });
    // Money may still come in for it, and nothing is asked for.
    expect(await done(dir, '2027-05-02', 'payment', EVENT, '500.00')).toContain('$1,508.00 received in all');
    const { received, open } = await statusOf(dir);
    expect(received.map(({ amount }) => moneyText(amount))).toEqual(['1008.00', '500.00']);
    expect(open).toEqual([]);
  });
});
