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
});
