import { describe, expect, test } from 'vitest';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import type { PricedPack, Supplier } from '../../../src/engine/purchase/price-list.ts';
import { orderPlan } from '../../../src/solver/order-plan.ts';
import { foundInWords, inWords } from '../../in-words.ts';
import { day, dish, event, food, kitchen, line, pack, prices, recipe } from './builders.ts';

const supplier = (id: string, minimumOrder = '0'): [string, Supplier] => [
  id,
  { id, name: id, leadDays: 1, deliveryDays: [], minimumOrder, deliveryFee: '0' },
];

/** What is told of the order for 100 guests who need so much farro in all. */
async function alarms(needed: string, packs: readonly PricedPack[], minimumOrder?: string) {
  const farro = food('farro', { storage: 'dry' });
  const pot = recipe('pot', '100 servings', [line(farro, needed)]);
  const offered = prices(...packs);
  const plan = planEvent(event([dish(pot, '1 serving per guest')]), kitchen(), offered);
  const ordered = await orderPlan(plan, offered, new Map(), {
    suppliers: new Map([supplier('quay', minimumOrder), supplier('hill')]),
    kitchen: { currency: 'USD', locale: 'en-US' },
    secondSupplierSaves: '0',
    today: day('2027-04-01'),
  });
  for (const { what } of ordered.order.alarms)
    expect(foundInWords(ordered.findings).map((each) => each.what)).toContain(inWords(what));
  return ordered.order.alarms.map(({ code, pack: { packText }, what }) => [code, packText, inWords(what)]);
}

describe('an order', () => {
  test('of more than 60 packs of one kind is told to the buyer; of 60 it is not', async () => {
    const packs = [pack('farro', '1 lb bag', '2.00', { supplier: 'quay' })];
    expect(await alarms('60 lb', packs)).toEqual([]);
    expect(await alarms('61 lb', packs)).toEqual([
      [
        'order-line-long',
        '1 lb bag',
        '61 packs of one kind are ordered, 1 lb bag of farro from quay, for 61 lb',
      ],
    ]);
  });

  test('that leaves over more than twice what is used names the packs that leave less for a few cents', async () => {
    const packs = (small: string) => [
      pack('farro', '10 lb bag', '10.00', { supplier: 'quay' }),
      pack('farro', '3 lb bag', small, { supplier: 'quay' }),
    ];
    // 3 % of 10.00 are 0.30.
    expect(await alarms('3 lb', packs('10.30'))).toEqual([
      [
        'left-over-long',
        '10 lb bag',
        '3 lb of farro is used and 7 lb is left over; 1 × 3 lb bag from quay leaves less for $0.30 more',
      ],
    ]);
    expect(await alarms('3 lb', packs('10.31'))).toEqual([]);
    // 10 lb of which 4 lb are used leave 6 lb, less than twice as much.
    expect(await alarms('4 lb', packs('5.10'))).toEqual([]);
  });

  test('names no packs of a supplier from whom nothing else comes', async () => {
    const packs = [
      pack('farro', '10 lb bag', '10.00', { supplier: 'quay' }),
      pack('farro', '3 lb bag', '10.30', { supplier: 'hill' }),
    ];
    expect(await alarms('3 lb', packs)).toEqual([]);
  });

  test('names no packs that would bring a supplier below its minimum order', async () => {
    const packs = [
      pack('farro', '10 lb bag', '10.00', { supplier: 'quay' }),
      pack('farro', '3 lb bag', '9.90', { supplier: 'quay' }),
    ];
    expect(await alarms('3 lb', packs, '10.00')).toEqual([]);
  });

  test('of a pack whose price is far off the food’s others is told, whichever of them is bought', async () => {
    const packs = [
      pack('farro', '10 lb bag', '20.00', { supplier: 'quay' }),
      pack('farro', '25 lb sack', '5.00', { supplier: 'hill' }),
    ];
    expect((await alarms('20 lb', packs)).map(([code, text]) => [code, text])).toEqual([
      ['price-far-off', '25 lb sack'],
    ]);
  });
});
