import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../src/book/findings/finding.ts';
import { printFindings } from '../../src/book/findings/print-findings.ts';
import { findingsOn } from '../../src/check/findings-on.ts';
import { readBook } from '../../src/check/read-book.ts';
import type { Day } from '../../src/engine/calendar/day.ts';
import { orderAlarmsOf } from '../../src/views/kitchen/order-alarms-of.ts';
import { type Change, copyOf } from '../commands/kitchen-copy.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

const LIST = SMALL_CONTENT['prices/hill-farm.csv'] ?? '';
const rows = (...more: string[]) => ({ 'prices/hill-farm.csv': `${LIST}${more.join('\n')}\n` });
const DEMO = fileURLToPath(new URL('../../content', import.meta.url));

const printed = (findings: Finding[]) =>
  printFindings(findings, 'content').trimEnd().split('\n').slice(0, -1).join('\n');

/** What is found on a day. */
async function foundOn(changes: Record<string, string | null>, on = '2027-04-26'): Promise<string> {
  const { book } = await readBook(contentWith(changes));
  return book ? printed(findingsOn(book, on as Day)) : 'no book';
}

/** What is found of the orders of the demo's coming events. */
async function ordersFound(...changes: Change[]): Promise<string[]> {
  const { book } = await readBook(copyOf(DEMO, changes));
  return book ? printed(await orderAlarmsOf(book, '2027-04-26' as Day)).split('\n') : ['no book'];
}

describe('what no buyer would sign unseen: what check says', () => {
  test('nothing of a kitchen whose figures are sound', async () => {
    expect(await foundOn({})).toBe('');
  });

  test('a pack that costs nothing', async () => {
    expect(await foundOn(rows('lentils,5 lb bag,0.00,L2,2026-01-01'))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:4:2 warning price-nothing “5 lb bag” of lentils from hill-farm costs nothing — write what it costs, or delete the row"`,
    );
  });

  test('a pack that is far off the food’s others', async () => {
    expect(await foundOn(rows('lentils,5 lb bag,62.00,L2,2026-01-01'))).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:2:2 warning price-far-off “5 lb bag” of lentils from hill-farm costs $12.40 per lb, “25 lb sack” from hill-farm $1.24 per lb: 10 times as much — check the pack and price of both before you order"`,
    );
  });

  test('a price far off the last one, from the day it is valid or before', async () => {
    const list = rows('lentils,25 lb sack,310.00,L1,2027-06-01');
    const found = await foundOn(list);
    expect(found).toMatchInlineSnapshot(
      `"content/prices/hill-farm.csv:4:2 warning price-jumped “25 lb sack” of lentils from hill-farm costs $310.00 from 2027-06-01 on and cost $31.00 until then: 10 times as much — check its pack and price before you order"`,
    );
    expect(await foundOn(list, '2027-07-01')).toBe(found);
  });

  test('a pack that costs far more than any pack', async () => {
    const sold = [6, 7, 8, 9, 10, 11, 12, 13].map((n) => `lentils,${n} lb bag,${n}.50,L${n},2026-01-01`);
    const list = (price: string) => ({
      'prices/hill-farm.csv': `${LIST.replace('42.00', price)}${sold.join('\n')}\n`,
    });
    const beyond = async (price: string) =>
      (await foundOn(list(price))).split('\n').filter((each) => each.includes('price-beyond-sense'));
    // The middle of the ten packs costs 10.50.
    expect(await beyond('2625.00')).toEqual([]);
    expect(await beyond('2625.01')).toMatchInlineSnapshot(`[]`);
  });

  test('a food that no recipe uses: nothing', async () => {
    expect(await foundOn(rows('potato,50 lb sack,0.00,P1,2026-01-01'))).toBe('');
  });

  test('a package whose food costs more than it is sold for', async () => {
    const dear = changed('prices/hill-farm.csv', '42.00', '1400.00');
    expect(await foundOn(dear)).toMatchInlineSnapshot(`
      "content/packages/supper.mdx:4:1 warning package-below-cost the food of supper costs $42.16 per guest with 49 guests, but it is sold for $30.00 — check the packs and prices of its most expensive dish and the amounts in its recipe, or raise the price
      content/proposals/gale.md:10:1 warning package-below-cost the food of supper costs $42.16 per guest with 40 guests, but it is sold for $30.00 — check the packs and prices of its most expensive dish and the amounts in its recipe, or raise the price"
    `);
  });

  test('more of a dish than anyone eats or drinks, by weight, volume and count', async () => {
    const amounts = (soup: string, plate: string) =>
      contentWith({
        'packages/supper.mdx': (SMALL_CONTENT['packages/supper.mdx'] ?? '')
          .replace('8 fl oz per guest', soup)
          .replace('1 serving per guest', plate),
      });
    expect(await foundIn(amounts('2 gal per guest', '50 servings per guest'))).toBe('');
    expect(await foundIn(amounts('5 gal per 2 guests', '51 servings per guest'))).toMatchInlineSnapshot(`
      "content/packages/supper.mdx:10:20 warning amount-beyond-sense one guest gets 2½ gal of lentil-soup, but 2 gal is already more than anyone takes — check the amount, its unit and how many guests it is for
      content/packages/supper.mdx:11:21 warning amount-beyond-sense one guest gets 51 servings of cheese-plate, but 50 servings is already more than anyone takes — check the amount, its unit and how many guests it is for"
    `);
    const heavy = contentWith({
      ...changed('packages/supper.mdx', '1 serving per guest', '50 oz per guest'),
      ...changed('recipes/cheese-plate.mdx', 'makes: 20 servings', 'makes: [20 servings, 3 lb]'),
    });
    expect(await foundIn(heavy)).toMatchInlineSnapshot(
      `"content/packages/supper.mdx:11:21 warning amount-beyond-sense one guest gets 3⅛ lb of cheese-plate, but 3 lb is already more than anyone takes — check the amount, its unit and how many guests it is for"`,
    );
  });
});

describe('orders of coming events: what check says', () => {
  test('nothing of the demo', async () => {
    expect(await ordersFound()).toEqual(['']);
  });

  test('a line of very many packs', async () => {
    const found = await ordersFound([
      'prices/green-quay.csv',
      'potato,50 lb sack,33.00,GQ-1580,2027-03-01',
      'potato,¼ lb bag,0.05,GQ-1580,2027-03-01',
    ]);
    expect(found[0]).toMatchInlineSnapshot(
      `"content/prices/green-quay.csv:74:2 warning order-line-long weir-crew-supper: 112 packs of one kind are ordered, ¼ lb bag of Potatoes from green-quay, for 27.81 lb — check what one pack holds on the price list and the amounts in the recipes, or list a larger pack"`,
    );
  });

  test('much left over where other packs leave less for the same money', async () => {
    const found = await ordersFound([
      'prices/larder-wharf.csv',
      'FLOUR AP,2 lb bag,2.55',
      'FLOUR AP,2 lb bag,9.95',
    ]);
    expect(found.filter((each) => each.includes('left-over-long'))[0]).toMatchInlineSnapshot(
      `"content/prices/larder-wharf.csv:57:3 note left-over-long farrowick-wedding: 1.21 lb of All-purpose flour is used and 8.79 lb is left over; 1 × 2 lb bag from larder-wharf leaves less for $0.05 more — order that instead, or plan a use for the rest"`,
    );
  });
});
