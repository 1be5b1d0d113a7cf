import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { type Conversion, parseConversion } from '../../../src/engine/measure/conversions.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { choosePacks } from '../../../src/engine/purchase/choose-packs.ts';
import { comparePacks, packKey, packsOn } from '../../../src/engine/purchase/packs-on.ts';
import type { PricedPack } from '../../../src/engine/purchase/price-list.ts';
import { commonMeasure, measuredPacks, usablePacks } from '../../../src/engine/purchase/usable-packs.ts';
import { day, must, pack, q } from '../plan/builders.ts';

const onOffer = (packs: readonly PricedPack[]) => packsOn(packs, day('2027-05-12'));
const shown = ({ lines }: ReturnType<typeof choosePacks>) =>
  lines.map((line) => `${line.count} × ${line.pack.packText} from ${line.pack.supplier}`);

describe('the packs on offer on a day', () => {
  test('are of every pack the newest price valid by then', () => {
    const packs = [
      pack('potato', '50 lb sack', '30.00', { validFrom: day('2027-04-01') }),
      pack('potato', '50 LB  sack', '31.50', { validFrom: day('2027-05-12') }),
      pack('potato', '50 lb sack', '33.00', { validFrom: day('2027-05-13') }),
      pack('potato', '50 lb sack', '29.00', { validFrom: day('2027-05-01'), supplier: 'hill' }),
      pack('potato', '10 lb bag', '7.00', { validFrom: day('2027-06-01') }),
    ];
    expect(onOffer(packs).map(({ supplier, price }) => `${supplier} ${price}`)).toEqual([
      'hill 29',
      'quay 31.5',
    ]);
  });

  test('have of two prices from one date the one listed last, whichever is dearer', () => {
    const twice = (first: string, last: string) =>
      onOffer([pack('potato', '50 lb sack', first), pack('potato', '50 lb sack', last)]).map(({ price }) =>
        String(price),
      );
    expect([twice('30.00', '31.50'), twice('31.50', '30.00')]).toEqual([['31.5'], ['30']]);
  });

  test('are asked for on several days of one list, each with its own prices', () => {
    const packs = [
      pack('potato', '50 lb sack', '30.00', { validFrom: day('2027-04-01') }),
      pack('potato', '50 lb sack', '33.00', { validFrom: day('2027-06-01') }),
    ];
    const on = (date: string) => packsOn(packs, day(date)).map(({ price }) => String(price));
    expect([on('2027-03-31'), on('2027-05-31'), on('2027-06-01'), on('2027-05-01')]).toEqual([
      [],
      ['30'],
      ['33'],
      ['30'],
    ]);
  });
});

describe('the packs of a supplier', () => {
  test.each([
    ['6 x 1 can', '6x1 CAN'],
    ['6 x 1 can', ' 6 × 1  can'],
    ['6 x 1 can', '6*1 can'],
    ['6 x #10', '6x#10'],
    ['2/10 lb', '2 / 10 LB'],
    ['2/10 lb', '2⁄10 lb'],
    ['2/10 lb', '2 /10 lb'],
    ['2/10 lb', '2/ 10 lb'],
  ])('written %j and %j are one', (one, same) => {
    expect(packKey(one)).toBe(packKey(same));
  });

  test.each([
    ['6 x 1 can', '6 x 2 can'],
    ['1 box lb', '1 boxlb'],
    ['2/10 lb', '2 10 lb'],
    ['box of 6', 'bo 6'],
  ])('written %j and %j are two', (one, other) => {
    expect(packKey(one)).not.toBe(packKey(other));
  });

  test('stand by supplier, then by pack', () => {
    const packs = [
      pack('a', '2 lb', '1'),
      pack('a', '10 LB', '1'),
      pack('a', '9 lb', '1', { supplier: 'hill' }),
    ];
    expect(packs.toSorted(comparePacks).map(({ supplier, packText }) => `${supplier} ${packText}`)).toEqual([
      'hill 9 lb',
      'quay 10 LB',
      'quay 2 lb',
    ]);
    expect(comparePacks(packs[0]!, pack('a', '2  LB', '9'))).toBe(0);
  });
});

describe('packs that a need may be covered with', () => {
  const list = [pack('rice', '10 lb', '8.00'), pack('rice', '50 lb', '36.00'), pack('rice', '1 tub', '9.00')];
  const tub = [must(parseConversion('1 tub = 15 lb'))];

  test('are measured by the largest amount that all of them hold whole multiples of', () => {
    const { measure, sizes, prices, unreachable, pinnedMissing } = measuredPacks('lb', list, tub, undefined);
    expect([measure.toFraction(), sizes, prices.map((price) => price.toFraction())]).toEqual([
      '5',
      [2n, 10n, 3n],
      ['8', '36', '9'],
    ]);
    expect([unreachable, pinnedMissing]).toEqual([[], false]);
    expect([commonMeasure([]), commonMeasure([new Fraction(0n)])].map((each) => each.toFraction())).toEqual([
      '1',
      '1',
    ]);
    expect(commonMeasure(['3/4', '1/2', '2'].map((each) => new Fraction(each))).toFraction()).toBe('1/4');
  });

  test('are measured anew where the same list is asked for in another unit, by other conversions, or with another pin', () => {
    const sizes = (...args: Parameters<typeof measuredPacks>) => measuredPacks(...args).sizes;
    const none: Conversion[] = [];
    const pin = { supplier: 'quay', pack: '50 lb' };
    expect(sizes('lb', list, tub, undefined)).toEqual([2n, 10n, 3n]);
    // 160 and 800 oz, and tubs that none of these conversions measures.
    expect(measuredPacks('oz', list, none, undefined).packs.map(({ size }) => size.toFraction())).toEqual([
      '160',
      '800',
    ]);
    expect(sizes('lb', list, none, undefined)).toEqual([1n, 5n]);
    expect(measuredPacks('lb', list, none, pin).packs.map(({ pack: { packText } }) => packText)).toEqual([
      '50 lb',
    ]);
    expect(measuredPacks('lb', list, none, undefined).packs).toHaveLength(2);
    expect(sizes('lb', list, tub, undefined)).toEqual([2n, 10n, 3n]);
  });

  test('are the pinned ones alone, by supplier and text both, even where none of them can be measured', () => {
    const usable = (supplier: string, text: string) => {
      const { packs, pinnedMissing } = usablePacks('lb', list, [], { supplier, pack: text });
      return [packs.map(({ pack: { packText } }) => packText), pinnedMissing];
    };
    expect(usable('quay', '10  LB')).toEqual([['10 lb'], false]);
    expect(usable('hill', '10 lb')).toEqual([['10 lb', '50 lb'], true]);
    expect(usable('quay', '20 lb')).toEqual([['10 lb', '50 lb'], true]);
    expect(usable('quay', '1 tub')).toEqual([[], false]);
    expect(usablePacks('lb', list, [], undefined).unreachable.map(({ packText }) => packText)).toEqual([
      '1 tub',
    ]);
  });
});

describe('choosing packs', () => {
  test('mixes suppliers and units by the food’s own conversions, and tells what no conversion reaches', () => {
    const packs = onOffer([
      pack('beans', '6 x 1 can', '31.00'),
      pack('beans', '1 can', '6.10', { supplier: 'hill' }),
      pack('beans', '40 lb bag', '30.00', { supplier: 'hill' }),
      pack('beans', '1 crate', '1.00', { supplier: 'hill' }),
    ]);
    // 50 lb 6 oz = 806 oz = 7¾ cans: 6 + 2 × 1 cost 43.20; a bag and 166 oz = 2 cans 42.20; a case and a bag 61.
    const choice = choosePacks(q('50 lb 6 oz'), packs, [must(parseConversion('1 can = 104 oz'))]);
    expect(shown(choice)).toEqual(['2 × 1 can from hill', '1 × 40 lb bag from hill']);
    expect(exactText(choice.bought)).toBe('53 lb');
    expect(choice.unreachable.map(({ packText }) => packText)).toEqual(['1 crate']);
  });

  test('buys a pinned pack alone although another is cheaper, and says when it is not on offer', () => {
    const packs = onOffer([pack('oil', '1 gal jug', '22.00'), pack('oil', '6 x 1 qt', '30.00')]);
    const pinned = choosePacks(q('9 qt'), packs, [], { supplier: 'quay', pack: '1 Gal jug' });
    expect([shown(pinned), pinned.pinnedMissing]).toEqual([['3 × 1 gal jug from quay'], false]);
    const missing = choosePacks(q('9 qt'), packs, [], { supplier: 'hill', pack: '1 gal jug' });
    expect([shown(missing), missing.pinnedMissing]).toEqual([
      ['1 × 1 gal jug from quay', '1 × 6 x 1 qt from quay'],
      true,
    ]);
  });

  test('counts pieces of about a weight, priced by weight', () => {
    const packs = onOffer([
      pack('salmon', 'about 8 lb side', '11.00 per lb'),
      pack('salmon', 'about 3 lb piece', '11.40 per lb'),
    ]);
    // 18 lb: 2 sides and a piece hold 19 lb for 176 + 34.20; 3 sides 264.00; 6 pieces 205.20 is the least.
    expect(shown(choosePacks(q('18 lb'), packs, []))).toEqual(['6 × about 3 lb piece from quay']);
    // 19 lb: 210.20 against 7 pieces at 239.40.
    expect(shown(choosePacks(q('19 lb'), packs, []))).toEqual([
      '1 × about 3 lb piece from quay',
      '2 × about 8 lb side from quay',
    ]);
  });

  test('covers 10,000 lb from six packs in pounds, ounces and kilograms, proven cheapest', () => {
    const packs = onOffer([
      pack('flour', '50 lb sack', '21.00'),
      pack('flour', '25 lb sack', '11.00'),
      pack('flour', '20 kg sack', '19.10', { supplier: 'hill' }),
      pack('flour', '10 kg bag', '9.80', { supplier: 'hill' }),
      pack('flour', '5 lb bag', '2.45'),
      pack('flour', '32 oz bag', '1.10'),
    ]);
    const choice = choosePacks(q('10000 lb'), packs, []);
    expect(choice.gap.toFixed()).toBe('0');
    expect(shown(choice)).toEqual(['200 × 50 lb sack from quay']);
    expect(choosePacks(q('10001 lb'), packs, []).gap.toFixed()).toBe('0');
  });

  test('buys nothing where nothing is needed or nothing is on offer', () => {
    expect(
      choosePacks({ ...q('1 lb'), amount: q('1 lb').amount.sub(1n) }, [pack('a', '1 lb', '1.00')], []).lines,
    ).toEqual([]);
    expect(choosePacks(q('1 lb'), [], []).lines).toEqual([]);
  });
});
