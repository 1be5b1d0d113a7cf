/*
 * The demo's events against figures worked by hand from its content files: every sum stands in the comment above what
 * it is compared with, so that a reader can follow it with a pencil and no program.
 */
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { PrepPlanDocument } from '../../../src/exports/form/prep-plan.ts';
import { invoice } from '../../../src/exports/invoice.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import { plannedEvents } from '../../../src/views/kitchen/planned-event.ts';
import { day, must } from '../offers/second-kitchen.ts';

const EVENTS = ['farrowick-wedding', 'brindlemoor-naming-day', 'weir-crew-supper'] as const;
const content = join(fileURLToPath(new URL('../../..', import.meta.url)), 'content');
let book: Book;
const plans = new Map<string, PrepPlanDocument>();

beforeAll(async () => {
  const read = await readBook(content);
  if (!read.book) throw new Error('the demo’s content cannot be read');
  book = read.book;
  for (const { id, plan } of await plannedEvents(book, EVENTS, day('2027-04-26'))) plans.set(id, must(plan));
});

const dish = (event: string, recipe: string) =>
  plans.get(event)!.dishes.find((each) => each.recipe === recipe && each.apartFrom === '')!;
const containers = (event: string, recipe: string, stage: string) =>
  dish(event, recipe)
    .containers.filter((each) => each.stage === stage)
    .map(({ container, count, lastFull }) => [container, count, lastFull]);
const bought = (event: string, ingredient: string) => {
  const item = plans.get(event)!.shopping.find((each) => each.ingredient === ingredient)!;
  const packs = item.packs.map(({ count, pack, cost }) => `${count} × ${pack}, ${cost}`).sort();
  return { need: item.need.exact, packs, cost: item.cost };
};
const billed = (event: string) => {
  const { lines, taxes, total, receivedInAll, balance } = must(invoice(must(currentEvent(book, event))));
  return {
    lines: lines.map(({ label, amount }) => [label, amount]),
    taxes: taxes.map(({ amount }) => amount),
    total,
    receivedInAll,
    balance,
  };
};

describe('the wedding: plated, 84 adults, 6 children and 4 vendors, 3 % over', () => {
  const event = 'farrowick-wedding';

  test('46 guests take the lamb', () => {
    // 46 × 1 serving = 46; + 3 % = 47.38; up to whole servings: 48.
    expect(dish(event, 'braised-lamb').need.exact).toBe('48 serving');
    // 40 servings take 18 lb of shoulder, so 48 take 48 ÷ 40 × 18 = 1.2 × 18 = 21.6 lb, which is 108/5.
    // In pieces of about 5 lb: 21.6 ÷ 5 = 4.32, so 5; at 11.00 a pound, the price since 1 March: 5 × 5 × 11 = 275.
    expect(bought(event, 'lamb-shoulder')).toEqual({
      need: '108/5 lb',
      packs: ['5 × about 5 lb piece, 275.00'],
      cost: '275.00',
    });
  });

  test('the fritters stand on five platters, and seven platters go on the van', () => {
    // 84 + 6 + 4 = 94 guests; + 3 % = 96.82; up to whole pieces: 97.
    expect(dish(event, 'zucchini-fritters').need.exact).toBe('97 piece');
    // A lidded half sheet holds 24: 97 ÷ 24 = 4 and 1 more, which is 4 % of one and goes on the last: 25 ÷ 24 = 104 %.
    expect(containers(event, 'zucchini-fritters', 'carry')).toEqual([['half-sheet', 4, '104 %']]);
    // A platter holds 20: 97 ÷ 20 = 4 and 17 more, so 5, the last 17 ÷ 20 = 85 % full.
    expect(containers(event, 'zucchini-fritters', 'serve')).toEqual([['platter', 5, '85 %']]);
    // The hake: 31 guests + 3 % = 31.93, so 32 parcels on 32 ÷ 20 = 1.6, so 2 platters. 5 + 2 = 7, the same kind.
    expect(plans.get(event)!.packOut).toContainEqual({
      group: 'service ware',
      item: 'Oval stoneware platter',
      container: '',
      count: 7,
      unit: 'each',
      hold: '',
      note: '5 for Zucchini fritters with white cheese; 2 for Hake in a parcel with leek and lemon',
    });
  });

  test('its invoice', () => {
    expect(billed(event)).toEqual({
      lines: [
        ['The Quay Supper', '3402.00'], // 84 × 40.50, the price for 50 to 99
        ['The Quay Supper, children', '121.50'], // 6 × half of 40.50 = 6 × 20.25
        ['Vendor meals', '96.00'], // 4 × 24
        ['Espresso cart with a barista', '585.00'], // 90 at the table × 6.50
        ['Event captain', '260.00'], // 90 ÷ 120, so 1; 1 × 5 h × 52
        ['Cooks on site', '690.00'], // 90 ÷ 35 = 2.6, so 3; 3 × 5 h × 46
        ['Servers', '1140.00'], // 90 ÷ 15 = 6; 6 × 5 h × 38
        ['Delivery to Maren Falls', '85.00'],
        ['Service charge', '840.90'], // 3402 + 121.50 + 96 + 585 = 4204.50 of food and drink; 20 %
      ],
      // 7 % of food, drink and service charge: 4204.50 + 840.90 = 5045.40; × 0.07 = 353.178
      taxes: ['353.18'],
      // 4204.50 + 260 + 690 + 1140 + 85 + 840.90 + 353.18
      total: '7573.58',
      // 30 % of it when accepted: 2272.074
      receivedInAll: '2272.07',
      balance: '5301.51',
    });
  });
});

describe('the naming day: buffet, 58 adults, 14 children and 2 vendors, 8 % over', () => {
  const event = 'brindlemoor-naming-day';

  test('two pork patties for each of 74', () => {
    // 58 + 14 + 2 = 74 guests × 2 = 148; + 8 % = 159.84; up to whole pieces: 160.
    expect(dish(event, 'sage-pork-patties').need.exact).toBe('160 piece');
    // 120 patties take 12 lb of pork, so 160 take 16 lb. Bags of 10 lb at 48.00, 5 lb at 25.00, 1 lb at 5.55:
    // 10 + 5 + 1 = 78.55; 10 + 6 × 1 = 81.30; 3 × 5 + 1 = 80.55; 16 × 1 = 88.80; 2 × 10 = 96.00.
    expect(bought(event, 'ground-pork')).toEqual({
      need: '16 lb',
      packs: ['1 × 1 lb bag, 5.55', '1 × 10 lb bag, 48.00', '1 × 5 lb bag, 25.00'],
      cost: '78.55',
    });
    // Chilled on half sheets of 24: 160 ÷ 24 = 6 and 16 more, so 7, the last 16 ÷ 24 = 67 % full.
    expect(containers(event, 'sage-pork-patties', 'chill')).toEqual([['half-sheet', 7, '67 %']]);
  });

  test('its invoice', () => {
    expect(billed(event)).toEqual({
      lines: [
        ['First Lock Breakfast', '1305.00'], // 58 × 22.50, the price for 40 to 79
        ['First Lock Breakfast, children', '157.50'], // 14 × half of 22.50 = 14 × 11.25
        ['Vendor meals', '24.00'], // 2 × 12
        ['Event captain', '156.00'], // 72 ÷ 150, so 1; 1 × 3 h × 52
        ['Cooks on site', '276.00'], // 72 ÷ 60 = 1.2, so 2; 2 × 3 h × 46
        ['Servers', '342.00'], // 72 ÷ 30 = 2.4, so 3; 3 × 3 h × 38
        ['Delivery to Maren Falls', '85.00'],
        ['Service charge', '297.30'], // 1305 + 157.50 + 24 = 1486.50 of food; 20 %
      ],
      // 1486.50 + 297.30 = 1783.80; × 0.07 = 124.866
      taxes: ['124.87'],
      // 1486.50 + 156 + 276 + 342 + 85 + 297.30 + 124.87
      total: '2767.67',
      // 30 %: 830.301
      receivedInAll: '830.30',
      balance: '1937.37',
    });
  });
});

describe('the crew’s supper: family style, 128 adults and 3 vendors, 6 % over', () => {
  const event = 'weir-crew-supper';

  test('two duck legs for every three of 131', () => {
    // 128 + 3 = 131 guests ÷ 3 × 2 = 87 1/3; + 6 % = 92.573…; up to whole pieces: 93.
    expect(dish(event, 'duck-legs-cherries').need.exact).toBe('93 piece');
    // 40 legs are 25 lb, so 93 are 93 ÷ 40 × 25 = 58.125 lb, which is 465/8. In cases of about 10 lb: 5.8, so 6;
    // at 6.35 a pound: 6 × 10 × 6.35 = 381.
    expect(bought(event, 'duck-leg')).toEqual({
      need: '465/8 lb',
      packs: ['6 × about 10 lb case, 381.00'],
      cost: '381.00',
    });
    // 20 to a deep pan: 93 ÷ 20 = 4 and 13 more, so 5, the last 13 ÷ 20 = 65 % full.
    expect(containers(event, 'duck-legs-cherries', 'carry')).toEqual([['full-pan-4', 5, '65 %']]);
  });

  test('its invoice', () => {
    expect(billed(event)).toEqual({
      lines: [
        ['The Long Table', '4096.00'], // 128 × 32, the price for 120 and more
        ['Vendor meals', '60.00'], // 3 × 20
        ['Late fruit tables', '540.00'], // 128 ÷ 50 = 2.56, so 3; 3 × 180
        ['Event captain', '520.00'], // 128 ÷ 120, so 2; 2 × 5 h × 52
        ['Cooks on site', '690.00'], // 128 ÷ 45 = 2.8, so 3; 3 × 5 h × 46
        ['Servers', '1330.00'], // 128 ÷ 20 = 6.4, so 7; 7 × 5 h × 38
        ['Delivery to Upper Lock', '140.00'],
        ['Early booking', '-234.80'], // 5 % of 4096 + 60 + 540 = 4696
        ['Service charge', '803.02'], // 18 % of 4696 − 234.80 = 4461.20: 803.016
      ],
      // Food, service charge and delivery: 4461.20 + 803.02 + 140 = 5404.22; × 0.0625 = 337.76375
      taxes: ['337.76'],
      // 4461.20 + 520 + 690 + 1330 + 140 + 803.02 + 337.76
      total: '8281.98',
      receivedInAll: '0.00',
      balance: '8281.98',
    });
  });
});
