import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import { Decimal } from '../../../src/engine/money/decimal.ts';
import type { OwnerMoneyView } from '../../../src/views/kitchen/owner-money.ts';
import { ticks } from '../../../src/views/kitchen/owner-money-curve.ts';
import { percentOf } from '../../../src/views/kitchen/owner-money-of.ts';
import { copyOf, SECOND_KITCHEN } from '../../commands/kitchen-copy.ts';
import { ACCEPTED, accepted, EVENING, secondKitchen, withFacts } from '../offers/second-kitchen.ts';
import { wholeSite } from './whole-site.ts';

const MONEY = `private/kitchen/events/${EVENING}/money/index.html`;

async function moneyOf(book: Book): Promise<OwnerMoneyView> {
  const { pages } = await wholeSite(book, null, ACCEPTED);
  const page = pages.find(({ file }) => file === MONEY);
  if (page?.view.kind !== 'owner money') throw new Error('the event has no page of its money');
  return page.view;
}

/** Cents of `€1,234.50`. */
const inCents = (text: string) => Number(text.replace(/[^\d−]/g, '').replace('−', '-'));

describe('the owner’s page of an event', () => {
  test('stands on the private side alone, and no other page says what a worker is paid', async () => {
    const book = accepted(await secondKitchen(['kitchen.yaml', 'pay: 17.00', 'pay: 17.89']));
    const { pages, prints, files } = await wholeSite(book, null, ACCEPTED);
    const holding = [...pages, ...prints, ...files].filter((each) => JSON.stringify(each).includes('17.89'));
    expect(holding.map(({ file }) => file)).toEqual([MONEY]);
  });

  test('shows sums that add up to its margin', async () => {
    const { revenue, earned, costs, spent, margin } = await moneyOf(accepted(await secondKitchen()));
    const total = (lines: readonly { amount: string }[]) =>
      lines.reduce((sum, { amount }) => sum + (amount === 'not stated' ? 0 : inCents(amount)), 0);
    expect(total(revenue)).toBe(inCents(earned));
    expect(total(costs)).toBe(inCents(spent));
    expect(inCents(earned) - inCents(spent)).toBe(inCents(margin));
  });

  test('names what nobody has said, and takes it in once it is said', async () => {
    const silent = await moneyOf(accepted(await secondKitchen()));
    expect(silent.notSaid).toEqual([
      expect.stringMatching(
        /^Preparation and packing in the kitchen: .* hands-on, 1 h of it packing; the crew’s pay is not stated/,
      ),
      'Delivery to Dunmarrow, cost: its cost to the kitchen is not stated (delivery cost: at the place)',
    ]);
    const said = accepted(
      await secondKitchen(
        ['kitchen.yaml', '    delivery: 40.00', '    delivery: 40.00\n    delivery cost: 12.00'],
        ['kitchen.yaml', 'capacity:', 'crew: { people: 2, hours: 6 hours, pay: 16.00 per hour }\ncapacity:'],
      ),
    );
    const { costs, notSaid, margin } = await moneyOf(said);
    expect(notSaid).toEqual([]);
    expect(costs.find(({ label }) => label === 'Delivery to Dunmarrow, cost')?.amount).toBe('€12.00');
    expect(inCents(margin)).toBeLessThan(inCents(silent.margin) - 1200);
  });

  test('has the hours sold beside those worked, with what the difference is paid', async () => {
    const { hours, notes } = await moneyOf(accepted(await secondKitchen()));
    // Loaded from 17:20, unloaded by 23:25: 6 h 5 min, 2 h 5 min more than sold for each of two at 17.00.
    const figures = { sold: '8 h', needed: '12 h 10 min', missing: '4 h 10 min', cost: '€70.83' };
    expect(hours).toEqual({
      rows: [
        {
          role: 'Servers',
          why: '2 people × 6 h 5 min, 17:20 to 23:25; sold 4 h each',
          ...figures,
        },
      ],
      all: { role: 'All roles', why: '', ...figures },
    });
    expect(notes.join(' ')).toContain('Pay in every cost and margin here is for the hours people work');
  });

  test('counts those who report to the place from the truck’s arrival until all is cleared, as the bill never does', async () => {
    const there = accepted(
      await secondKitchen(['kitchen.yaml', 'pay: 17.00', 'reports to: place\n    pay: 17.00']),
    );
    const [before, after] = [await moneyOf(accepted(await secondKitchen())), await moneyOf(there)];
    expect(after.hours?.all.sold).toBe(before.hours?.all.sold);
    expect(after.hours?.all.needed).not.toBe(before.hours?.all.needed);
    expect(after.earned).toBe(before.earned);
    expect(inCents(after.margin)).toBeGreaterThan(inCents(before.margin));
  });

  test('marks the planned count in its picture, its tables and its words alike', async () => {
    const { curve, margin } = await moneyOf(accepted(await secondKitchen()));
    expect(curve?.differs).toBe('');
    const planned = curve?.rows.filter(({ note }) => note.includes('planned'));
    expect(planned?.map((row) => [row.guests, row.margin])).toEqual([['37', margin]]);
    expect(curve?.picture.planned).toMatchObject({ guests: 37, text: `37 planned: ${margin}` });
    expect(curve?.picture.said).toContain(`${margin} at the 37 planned`);
  });
});

describe('a margin beside its picture', () => {
  test('says why the event leaves another sum where another count is billed than is cooked for', async () => {
    const book = accepted(await secondKitchen());
    const guests = { adults: 40, children: 3, vendors: 1, staff: 3 };
    const served = withFacts(book, { version: 1, kind: 'served', on: ACCEPTED, guests });
    const [before, after] = [await moneyOf(book), await moneyOf(served)];
    expect(inCents(after.earned)).toBeGreaterThan(inCents(before.earned));
    expect(after.spent).toBe(before.spent);
    expect(after.curve?.differs).toBe(
      `At 37 guests ${before.margin} would be left; this event leaves ${after.margin}, because a different count is billed: 37 accepted and 43 served, never fewer than 32: billed for 43 guests at the table.`,
    );
  });

  test('says what a minimum order makes the event’s order cost beyond the foods by themselves', async () => {
    const dir = copyOf(SECOND_KITCHEN, [
      ['suppliers.yaml', 'minimum order: 60.00', 'minimum order: 255.00'],
      [
        'suppliers.yaml',
        'fee: 8.50',
        'fee: 8.50\npier-goods:\n  name: Pier Goods\n  lead days: 1\n  delivery days: mon, tue, wed, thu, fri\n',
      ],
    ]);
    // Bread for 0.75 in place of 9.30, and a crate of leeks for 11.00 in place of 12.50.
    const prices = 'ingredient,pack,price,item number,valid from\n';
    const pier = 'soda-bread,1 loaf,0.25,A1,2027-01-04\nleek,5 kg crate,11.00,A2,2027-01-04\n';
    writeFileSync(join(dir, 'prices', 'pier-goods.csv'), prices + pier);
    const { book } = await readBook(dir);
    if (!book) throw new Error('the kitchen could not be read');
    const { curve, margin } = await moneyOf(accepted(book));
    // All from one is 269.40, so 11.75 and 247.60 from two, too little for the minimum: the leeks are bought where they
    // cost 1.50 more. With 8.50 for bringing it, 269.35 in place of 267.85. Two servers are there 6 h 5 min, at 17.00.
    expect(margin).toBe('€133.22');
    expect(curve?.differs).toBe(
      'At 37 guests €134.72 are left if each food is bought on its own, for €267.85 with fees; this event’s order costs €269.35, because of minimum orders and stock, and leaves €133.22.',
    );
  });
});

describe('figures for people', () => {
  test('shares have one decimal, half-up, and a true minus', () => {
    expect(
      [new Decimal('0.31449'), new Decimal('0.3145'), new Decimal('-0.02'), null].map(percentOf),
    ).toEqual(['31.4 %', '31.5 %', '−2.0 %', undefined]);
  });

  test('a scale is marked in round steps that hold all of it', () => {
    expect(ticks(-310, 2240, 5)).toEqual([-1000, 0, 1000, 2000, 3000]);
    expect(ticks(0, 0, 5)).toEqual([0]);
    expect(ticks(18, 126, 7)).toEqual([0, 20, 40, 60, 80, 100, 120, 140]);
  });
});
