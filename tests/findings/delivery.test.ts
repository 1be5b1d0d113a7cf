import { describe, expect, test } from 'vitest';
import { readBook } from '../../src/check/read-book.ts';
import { quote } from '../../src/engine/quote/quote.ts';
import { offerContent } from '../../src/offers/issue/offer-content.ts';
import { foundIn } from './found-in.ts';
import { changed, contentWith, SMALL_CONTENT } from './small-content.ts';

const ZONES = `delivery zones:
  near: { up to: 5 mi, price: 45.00 }
  far: { name: Lake road, up to: 20 mi, price: 95.00, minimum: 5000.00 }
  island: { price: 180.00, minimum: 900.00 }
`;
const kitchen = (zones = ZONES) => changed('kitchen.yaml', 'stations:', `${zones}stations:`);
const [file = ''] = Object.keys(SMALL_CONTENT).filter((name) => name.startsWith('proposals/'));
const proposal = (fields: string) => changed(file, 'place: hill-town', `place: hill-town\n${fields}`);

async function quoted(fields: string) {
  const dir = contentWith({ ...kitchen(), ...proposal(fields) });
  const { book, findings } = await readBook(dir);
  const [found] = [...(book?.proposals.values() ?? [])];
  if (!book || !found) throw new Error(findings.map(({ what }) => what).join('; '));
  const content = offerContent(book, found);
  if (!content.ok) throw new Error(content.what);
  const { terms, proposed } = content.value;
  const { lines } = quote(terms, proposed);
  const food = lines
    .filter((line) => line.class === 'food' && line.key !== 'minimum-spend')
    .reduce((sum, { amount }) => sum + Number(amount), 0);
  return {
    food,
    delivery: lines.find(({ key }) => key === 'delivery'),
    topUp: Number(lines.find(({ key }) => key === 'minimum-spend')?.amount ?? 0),
  };
}

describe('delivery by zone', () => {
  test.each([
    // 5 miles are 8.04672 km: the border itself is still near.
    ['distance: 5 mi', '45.00', 'Hill Town, Near', 0],
    ['distance: 8.04 km', '45.00', 'Hill Town, Near', 0],
    ['distance: 8.05 km', '95.00', 'Hill Town, Lake road', 5000],
    ['distance: 20 miles', '95.00', 'Hill Town, Lake road', 5000],
    ['zone: island', '180.00', 'Hill Town, Island', 900],
    ['distance: 3 mi\nzone: far', '95.00', 'Hill Town, Lake road', 5000],
    // Its own price stands, the far place's minimum too.
    ['distance: 12 mi\ndelivery: 60.00', '60.00', 'Hill Town, Lake road', 5000],
  ])('%s costs what its zone does, and its minimum is billed', async (fields, price, label, minimum) => {
    const { food, delivery, topUp } = await quoted(fields);
    expect(delivery).toMatchObject({ amount: price, name: `Delivery to ${label}` });
    expect(food).toBeGreaterThan(0);
    expect(topUp).toBeCloseTo(Math.max(0, minimum - food), 2);
  });

  test('is said to be out of reach beyond the last one, unless the proposal has a price of its own', async () => {
    const far = (fields: string) => foundIn(contentWith({ ...kitchen(), ...proposal(fields) }));
    expect(await far('distance: 40 mi')).toContain(
      'error out-of-zones 40 mi is farther than every delivery zone reaches — write what delivery costs under “delivery”, or add a zone to kitchen.yaml',
    );
    expect(await far('distance: 40 mi\ndelivery: 240.00')).toBe('');
    expect(await far('distance: over the hill')).toContain('not-understood');
    expect(await far('zone: isle')).toContain(
      'no delivery zone is called “isle” — write one of near, far, island',
    );
  });

  test('a zone that cannot be read holds what might be in it, and nothing else of the kitchen', async () => {
    const zones = ZONES.replace('price: 45.00', 'price: a lot');
    const { book } = await readBook(contentWith({ ...kitchen(zones), ...proposal('distance: 3 mi') }));
    expect(book?.proposals.size).toBe(0);
    const named = await readBook(contentWith({ ...kitchen(zones), ...proposal('zone: far') }));
    expect(named.book?.proposals.size).toBe(1);
  });
});
