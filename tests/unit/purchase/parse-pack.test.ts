import { describe, expect, test } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { parsePackPrice, priceOfPack } from '../../../src/engine/purchase/pack-price.ts';
import { parsePack } from '../../../src/engine/purchase/parse-pack.ts';
import { must } from '../plan/builders.ts';

describe('a pack', () => {
  test.each([
    ['50 lb', '50 lb'],
    ['50 lb sack', '50 lb'],
    ['10 lb 8 oz bag', '21/2 lb'],
    ['6 x 1 can', '6 can'],
    ['6x1 can', '6 can'],
    ['4 × 1 gal jug', '4 gal'],
    ['12 x 32 fl oz bottle', '384 fl oz'],
    ['2 x 6 x 500 g tub', '6000 g'],
    ['1 ½ lb', '3/2 lb'],
    ['2.5 kg vacuum bag', '5/2 kg'],
    ['360 each', '360 each'],
    ['24', '24 each'],
    ['24 each box', '24 each'],
    ['12 bunch case', '12 bunch'],
    ['1 can', '1 can'],
  ])('written %s holds %s', (text, contents) => {
    const pack = must(parsePack(text));
    expect(exactText(pack.contents)).toBe(contents);
    expect(pack.aboutWeight).toBe(false);
  });

  test.each([
    ['about 12 lb piece', '12 lb'],
    ['2 x about 6 lb piece', '12 lb'],
    ['About 1.5 kg', '3/2 kg'],
  ])('written %s is a piece of about a weight, %s', (text, contents) => {
    const pack = must(parsePack(text));
    expect(exactText(pack.contents)).toBe(contents);
    expect(pack.aboutWeight).toBe(true);
  });

  test.each([
    '',
    'sack',
    '0 x 5 lb',
    '-5 lb',
    '0 lb',
    'about 3 heads',
    '5 lb of the best red ones',
    '1,000 g',
    '6 x',
  ])('written %j is refused with a way out', (text) => {
    expect(parsePack(text)).toMatchObject({ ok: false, wayOut: expect.stringMatching(/./) });
  });
});

describe('a price of a list', () => {
  const price = (packText: string, priceText: string) => {
    const per = parsePackPrice(priceText, 'USD');
    return per.ok ? priceOfPack(must(parsePack(packText)), per.value) : per;
  };

  test.each([
    ['50 lb sack', '31.50', '31.5'],
    ['about 12 lb piece', '8.40 per lb', '100.8'],
    ['about 12 lb piece', '$0.525 per oz', '100.8'],
    ['about 1.5 kg', '2.20 per 100 g', '33'],
    ['50 lb sack', '0.62/lb', '31'],
    ['6 x 1 can', '5.10 per can', '30.6'],
  ])('of %s at %s comes to %s', (packText, priceText, amount) => {
    expect(must(price(packText, priceText)).toFixed()).toBe(amount);
  });

  test.each([
    ['about 12 lb piece', '100.00'],
    ['50 lb sack', '3.00 per can'],
    ['50 lb sack', '3,00'],
    ['50 lb sack', '3.005'],
    ['50 lb sack', '3.00 per lb per day'],
    ['50 lb sack', ''],
  ])('of %s cannot be %j', (packText, priceText) => {
    expect(price(packText, priceText)).toMatchObject({ ok: false, wayOut: expect.stringMatching(/./) });
  });
});
