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

  // As price lists of wholesalers write packs: common practice, no source.
  test.each([
    ['2/10 LB', '20 lb'],
    ['2/10 lb', '20 lb'],
    ['4/1 GAL', '4 gal'],
    ['4/1 GA', '4 gal'],
    ['12/8.8 OZ', '528/5 oz'],
    ['24/12 OZ', '288 oz'],
    ['2/10 KG', '20 kg'],
    ['2/10KG', '20 kg'],
    ['6/1 LT', '6 l'],
    ['1/10 lb', '10 lb'],
    ['4/5 LB BG', '20 lb'],
    ['3/2 LB', '6 lb'],
    ['2/4 LB', '8 lb'],
    ['4/6/12 OZ', '288 oz'],
    ['9/1/2 GAL', '9/2 gal'],
    ['9/½ GAL', '9/2 gal'],
    ['12/.5 GAL', '6 gal'],
    ['6/1 1/2 LB', '9 lb'],
    ['6 x 1/2 gal', '3 gal'],
    ['1/50#', '50 lb'],
    ['50# bag', '50 lb'],
    ['6/10#', '60 lb'],
    ['360 CT', '360 each'],
    ['12/100 CT', '1200 each'],
    ['24 EA', '24 each'],
    ['15 DZ', '15 dozen'],
    ['1/15 DZ', '15 dozen'],
    ['6/1 PK', '6 pack'],
    ['6/1 CN', '6 can'],
    ['10 CN', '10 can'],
    ['1 CS', '1 case'],
    ['6/1 BG', '6 bag'],
    ['2 BX', '2 box'],
  ])('written %s as price lists write it holds %s', (text, contents) => {
    const pack = must(parsePack(text));
    expect([exactText(pack.contents), pack.slash]).toEqual([contents, undefined]);
  });

  test.each([
    ['6/#10', '10', '6 can'],
    ['6-#10', '10', '6 can'],
    ['6 #10', '10', '6 can'],
    ['6x#10 can', '10', '6 can'],
    ['6/10 CN', '10', '6 can'],
    ['6/No. 10', '10', '6 can'],
    ['24/#300', '300', '24 can'],
    ['12/#2.5', '2½', '12 can'],
    ['12/#2 1/2', '2½', '12 can'],
    ['12/#2-1/2 tins', '2½', '12 can'],
    ['6/#10 can case', '10', '6 can'],
    ['#10 can', '10', '1 can'],
  ])('written %s holds cans of No. %s, counted and never weighed: %s', (text, number, contents) => {
    const pack = must(parsePack(text));
    expect([exactText(pack.contents), pack.canNumber]).toEqual([contents, number]);
  });

  test.each([
    ['1/2 LB', '1/2 lb', '½ LB', '1 x 2 LB', '2 lb'],
    ['1/4 GAL', '1/4 gal', '¼ GAL', '1 x 4 GAL', '4 gal'],
    ['3/4 lb', '3/4 lb', '¾ lb', '3 x 4 lb', '12 lb'],
    ['5/8 oz', '5/8 oz', '⅝ oz', '5 x 8 oz', '40 oz'],
    ['1/2#', '1/2 lb', '½ #', '1 x 2 #', '2 lb'],
  ])(
    'written %s is a fraction, and both readings can be written',
    (text, contents, taken, other, counted) => {
      const pack = must(parsePack(text));
      expect([exactText(pack.contents), pack.slash]).toEqual([contents, { taken, other }]);
      expect(exactText(must(parsePack(taken)).contents)).toBe(contents);
      expect(exactText(must(parsePack(other)).contents)).toBe(counted);
      expect(must(parsePack(text, 'fraction'))).toEqual({ contents: pack.contents, aboutWeight: false });
      const read = must(parsePack(text, 'count/size'));
      expect([exactText(read.contents), read.slash]).toEqual([counted, undefined]);
    },
  );

  test('whose supplier means fractions still has only everyday ones', () => {
    expect(exactText(must(parsePack('2/10 LB', 'fraction')).contents)).toBe('20 lb');
    expect(exactText(must(parsePack('9/1/2 GAL', 'count/size')).contents)).toBe('9/2 gal');
    // Nine of 3/4 gallon, unless the supplier means nine times three of 4 gallons.
    const counted = must(parsePack('9/3/4 GAL'));
    expect([exactText(counted.contents), counted.slash]).toEqual(['27/4 gal', undefined]);
    expect(exactText(must(parsePack('9/3/4 GAL', 'count/size')).contents)).toBe('108 gal');
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
    '24/12',
    '1/10',
    '0/5 lb',
    '1/0 lb',
    '2/10-12 lb',
    '1 2/10 lb',
    '6/5 cans',
    '6/#10 can of the red ones',
    '6/300 CN',
    'about #10 can',
    '24/EA',
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
