import { describe, expect, test } from 'vitest';
import { priceAlarms } from '../../../src/engine/purchase/price-alarms.ts';
import type { PricedPack } from '../../../src/engine/purchase/price-list.ts';
import { day, food, pack } from '../plan/builders.ts';

const shown = { currency: 'USD', locale: 'en-US' };
const told = (packs: readonly PricedPack[], on = '2027-05-01', sold: readonly string[] = []) =>
  priceAlarms(packs, food('farro', { sold }).conversions, day(on), shown).map(
    ({ code, pack: { packText }, what }) => [code, packText, what],
  );
const farro = (text: string, price: string, facts: Partial<PricedPack> = {}) =>
  pack('farro', text, price, { supplier: 'quay', ...facts });

describe('a price', () => {
  test('that is a fifth of what the food’s other packs cost is told, whoever sells them', () => {
    const packs = [
      farro('25 lb sack', '50.00'),
      farro('10 lb bag', '21.00', { supplier: 'hill' }),
      farro('20 lb', '8.00'),
    ];
    expect(told(packs)).toEqual([
      [
        'price-far-off',
        '20 lb',
        '“25 lb sack” of farro from quay costs $2.00 per lb, “20 lb” from quay $0.40 per lb: 5 times as much',
      ],
    ]);
  });

  test('that is a cent short of five times as much is not', () => {
    expect(told([farro('25 lb sack', '50.00'), farro('1 lb bag', '9.99')])).toEqual([]);
    expect(told([farro('25 lb sack', '50.00'), farro('1 lb bag', '10.00')])).toHaveLength(1);
  });

  test('of packs in another unit is set against the others by the food’s conversions', () => {
    const packs = [farro('6 x 1 can', '60.00'), farro('1 lb bag', '10.00'), farro('2 lb bag', '20.00')];
    expect(told(packs)).toEqual([]);
    expect(told(packs, '2027-05-01', ['1 can = 104 oz']).map(([code, text]) => [code, text])).toEqual([
      ['price-far-off', '6 x 1 can'],
    ]);
  });

  test('of nothing is told, and set against no other', () => {
    expect(told([farro('25 lb sack', '50.00'), farro('10 lb bag', '0.00')])).toEqual([
      ['price-nothing', '10 lb bag', '“10 lb bag” of farro from quay costs nothing'],
    ]);
  });

  test('that is five times the same pack’s last one is told, until it is valid not yet', () => {
    const before = { validFrom: day('2027-01-01') };
    const packs = [
      farro('25 lb sack', '50.00', before),
      farro('25 lb  Sack', '250.00', { validFrom: day('2027-04-01') }),
    ];
    expect(told(packs, '2027-03-31')).toEqual([]);
    expect(told(packs)).toEqual([
      [
        'price-jumped',
        '25 lb  Sack',
        '“25 lb  Sack” of farro from quay costs $250.00 from 2027-04-01 on and cost $50.00 until then: 5 times as much',
      ],
    ]);
    const down = [
      farro('25 lb sack', '250.00', before),
      farro('25 lb sack', '50.00', { validFrom: day('2027-04-01') }),
    ];
    expect(told(down).map(([, , what]) => what)).toEqual([
      '“25 lb sack” of farro from quay costs $50.00 from 2027-04-01 on and cost $250.00 until then: 5 times as much before',
    ]);
  });

  test('of the smaller group is told, each pack against the next one of the other; of two groups alike the cheaper', () => {
    const codes = (...packs: readonly PricedPack[]) => told(packs).map(([, text, what]) => [text, what]);
    // Two at about 2.00 a pound, one at 20.00: the dear one, against the dearest of the others.
    const dear = codes(farro('25 lb sack', '50.00'), farro('10 lb bag', '25.00'), farro('1 lb bag', '20.00'));
    expect(dear).toEqual([
      [
        '1 lb bag',
        '“1 lb bag” of farro from quay costs $20.00 per lb, “10 lb bag” from quay $2.50 per lb: 8 times as much',
      ],
    ]);
    // Two and two: the cheap ones, against the cheapest of the dear.
    const alike = codes(
      farro('10 lb bag', '10.00'),
      farro('20 lb bag', '24.00'),
      farro('1 lb bag', '13.00'),
      farro('2 lb bag', '24.00'),
    );
    expect(alike).toEqual([
      [
        '10 lb bag',
        '“2 lb bag” of farro from quay costs $12.00 per lb, “10 lb bag” from quay $1.00 per lb: 12 times as much',
      ],
      [
        '20 lb bag',
        '“2 lb bag” of farro from quay costs $12.00 per lb, “20 lb bag” from quay $1.20 per lb: 10 times as much',
      ],
    ]);
  });

  test('is parted where the gap is widest', () => {
    // 1, 5, 50: five times, then ten times.
    const packs = [farro('1 lb bag', '1.00'), farro('2 lb bag', '10.00'), farro('3 lb bag', '150.00')];
    expect(told(packs).map(([, text]) => text)).toEqual(['3 lb bag']);
    const [first, second, third] = [
      farro('1 lb bag', '1.00'),
      farro('2 lb bag', '20.00'),
      farro('3 lb bag', '150.00'),
    ];
    expect(told([first, second, third]).map(([, text]) => text)).toEqual(['1 lb bag']);
  });

  test('is set against the same supplier’s same pack, the last price before it that was one', () => {
    const from = (date: string) => ({ validFrom: day(date) });
    const jumps = (...packs: readonly PricedPack[]) => told(packs).map(([code, , what]) => [code, what]);
    const now = farro('25 lb sack', '60.00', from('2027-04-01'));
    // 10.00 in January, 50.00 in February, nothing in March: from 50.00 it is no jump.
    const before = [
      farro('25 lb sack', '50.00', from('2027-02-01')),
      farro('25 lb sack', '10.00', from('2027-01-01')),
      farro('25 lb sack', '0.00', from('2027-03-01')),
    ];
    expect(jumps(now, ...before)).toEqual([]);
    expect(jumps(now, ...before.slice(1))).toEqual([
      [
        'price-jumped',
        '“25 lb sack” of farro from quay costs $60.00 from 2027-04-01 on and cost $10.00 until then: 6 times as much',
      ],
    ]);
    // Another supplier's, and another pack's, price is no price before.
    expect(
      jumps(now, farro('25 lb sack', '10.00', { ...from('2027-01-01'), supplier: 'hill' })).map(
        ([code]) => code,
      ),
    ).toEqual(['price-far-off']);
    expect(
      jumps(
        now,
        farro('50 lb sack', '120.00', from('2027-01-01')),
        farro('5 lb bag', '10.00', from('2027-01-01')),
      ),
    ).toEqual([]);
    expect(
      jumps(
        farro('25 lb sack', '49.99', from('2027-04-01')),
        farro('25 lb sack', '10.00', from('2027-01-01')),
      ),
    ).toEqual([]);
    expect(
      jumps(
        farro('25 lb sack', '10.00', from('2027-04-01')),
        farro('25 lb sack', '49.99', from('2027-01-01')),
      ),
    ).toEqual([]);
  });

  test('that is told once already is not told again as a jump', () => {
    const packs = [
      farro('25 lb sack', '50.00'),
      farro('10 lb bag', '20.00'),
      farro('20 lb', '8.00', { validFrom: day('2027-04-01') }),
      farro('20 lb', '40.00'),
    ];
    expect(told(packs).map(([code]) => code)).toEqual(['price-far-off']);
  });
});
