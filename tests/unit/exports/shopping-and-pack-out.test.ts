import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { packOutCsv } from '../../../src/exports/files/pack-out-csv.ts';
import { shoppingCsv } from '../../../src/exports/files/shopping-csv.ts';
import { wordsIn } from '../../../src/words/words-in.ts';
import { accepted, planOf, secondKitchen } from '../offers/second-kitchen.ts';
import { readCsv } from './read-csv.ts';

const say = wordsIn('en-US');

function recordsOf(text: string): Record<string, string>[] {
  const [header = [], ...rows] = readCsv(text);
  return rows.map((row) => Object.fromEntries(header.map((name, index) => [name, row[index] ?? ''])));
}

describe('shopping.csv', () => {
  test('never writes less than the need, nor a thousandth too much', async () => {
    const plan = await planOf(
      accepted(await secondKitchen(), { guests: { adults: 37, children: 4, vendors: 1, staff: 3 } }),
    );
    const records = recordsOf(shoppingCsv(plan, say));
    expect(records).toHaveLength(
      plan.shopping.reduce((rows, { packs }) => rows + Math.max(1, packs.length), 0),
    );
    for (const record of records) {
      const [exact = '', unit = ''] =
        plan.shopping.find(({ ingredient }) => ingredient === record.ingredient)?.need.exact.split(/ (.*)/) ??
        [];
      const over = new Fraction(record.need ?? '').sub(new Fraction(exact));
      expect(record['need unit']).toBe(unit);
      expect(over.gte(0n) && over.lt(new Fraction('1/1000'))).toBe(true);
    }
  });

  test('has what is paid: packs × price is the cost, and the costs make the food cost', async () => {
    const plan = await planOf(accepted(await secondKitchen()));
    const records = recordsOf(shoppingCsv(plan, say));
    const cents = (text: string | undefined) => Number((text ?? '').replace('.', ''));
    for (const { packs, 'pack price': price, cost, currency } of records) {
      expect(Number(packs) * cents(price)).toBe(cents(cost));
      expect(currency).toBe('EUR');
    }
    expect(records.reduce((sum, { cost }) => sum + cents(cost), 0)).toBe(cents(plan.foodCost ?? ''));
    // A side of about 3 kg at 17.80 a kilogram.
    expect(records.find(({ ingredient }) => ingredient === 'smoked-haddock')).toMatchObject({
      packs: '2',
      'pack price': '53.40',
      cost: '106.80',
    });
  });

  test('keeps a row for what no pack covers, and the food cost is then not said', async () => {
    const plan = await planOf(
      accepted(
        await secondKitchen(['prices/strand-stores.csv', 'parsley,500 g box,7.20,HP5,2027-01-04\n', '']),
      ),
    );
    expect(
      recordsOf(shoppingCsv(plan, say)).find(({ ingredient }) => ingredient === 'parsley'),
    ).toMatchObject({
      packs: '0',
      cost: '',
      supplier: '',
    });
    expect(plan.foodCost).toBeNull();
  });
});

test('pack-out.csv has a row for everything that goes on the van, with boxes to tick left empty', async () => {
  const plan = await planOf(accepted(await secondKitchen(), { addOns: { 'tea-table': 1 } }));
  const records = recordsOf(packOutCsv(plan, say));
  expect(
    records.map(({ group, item, container, count, unit }) => [group, item, container, count, unit]),
  ).toEqual([
    ['food', 'Apple and oat crumble', 'Lidded tray', '2', 'each'],
    ['food', 'Smoked haddock chowder', 'GN 1/1, 100 mm', '2', 'each'],
    ['staff', 'Servers', '', '2', 'people'],
    ['staff', 'Staff meals', '', '3', 'meals'],
    ['staff', 'Vendor meals', '', '1', 'meal'],
    ['add-ons', 'Tea table', '', '1', 'each'],
  ]);
  for (const { out, back, 'checked by': by } of records) expect([out, back, by]).toEqual(['', '', '']);
});

test('a name that a spreadsheet would reckon from is text in both lists, and amounts stay numbers', async () => {
  const plan = await planOf(
    accepted(
      await secondKitchen(
        ['ingredients/own.yaml', 'name: Wholemeal soda bread', `name: '=HYPERLINK("http://x.example")'`],
        ['recipes/apple-oat-crumble.mdx', 'name: Apple and oat crumble', 'name: "@SUM(A1:A9)"'],
      ),
    ),
  );
  const [bread] = recordsOf(shoppingCsv(plan, say)).filter(({ ingredient }) => ingredient === 'soda-bread');
  expect(bread?.name).toBe('\'=HYPERLINK("http://x.example")');
  for (const amount of [bread?.need, bread?.packs, bread?.cost]) expect(amount).toMatch(/^\d+(\.\d+)?$/);
  expect(recordsOf(packOutCsv(plan, say)).map(({ item }) => item)).toContain("'@SUM(A1:A9)");
});
