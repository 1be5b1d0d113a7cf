import { describe, expect, test } from 'vitest';
import { parseConversion } from '../../../src/engine/measure/conversions.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { choosePacks } from '../../../src/engine/purchase/choose-packs.ts';
import { packsOn } from '../../../src/engine/purchase/packs-on.ts';
import type { PricedPack } from '../../../src/engine/purchase/price-list.ts';
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
