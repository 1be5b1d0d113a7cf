import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { PlanChangesDocument } from '../../../src/exports/form/changes.ts';
import { planChangesSchema } from '../../../src/exports/form/changes.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { bookOf, changed, done, EVENT, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01';

/** One server for every 15 guests begun, 5 hours each at 30.00; peas come from a supplier of their own. */
const SERVED = {
  ...changed(
    'kitchen.yaml',
    'stations: {',
    `staff:
  server:
    name: Servers
    price: 30.00 per hour
    pay: 20.00 per hour
    one per: { plated: 15 guests, buffet: 15 guests, family style: 15 guests, stations: 15 guests }
    hours: 5 hours
stations: {`,
  ),
  'suppliers.yaml': 'hill-farm: { name: Hill Farm }\npea-quay: { name: Pea Quay, delivery fee: 12.00 }\n',
  ...changed('prices/hill-farm.csv', 'split-peas,25 lb sack,30.00,P25,2026-01-01\n', ''),
  'prices/pea-quay.csv':
    'ingredient,pack,price,item number,valid from\nsplit-peas,25 lb sack,30.00,P25,2026-01-01\n',
};

const guarantee = (dir: string, ...words: string[]) => done(dir, TODAY, 'guarantee', EVENT, ...words);
const changeOf = async (dir: string, ...words: string[]) =>
  (JSON.parse(await guarantee(dir, ...words, '--json')) as { change: PlanChangesDocument }).change;

describe('a count change', () => {
  test('names staff with their hours, the order, each payment still open and the balance', async () => {
    const dir = await supperKitchen(SERVED);
    const change = await changeOf(dir, '--guests', '92');
    // 84 ÷ 15 is 5.6, so 6 servers; 92 ÷ 15 is 6.13, so 7. 5 hours each.
    expect(change.staff).toEqual([
      {
        role: 'Servers',
        before: '6',
        after: '7',
        by: '+1',
        hours: { before: '30 h', after: '35 h', by: '+5 h' },
      },
    ]);
    expect(change.packOut.filter(({ group }) => group === 'staff')).toEqual([]);
    // A bag of beans more at 6.00; peas are one sack both times.
    expect(change.orders).toEqual([
      { supplier: 'Hill Farm', before: '370.00', after: '376.00', by: '+6.00' },
    ]);
    expect(change.deliveryFees).toEqual([]);
    // 84 × 40.00 + 30 h × 30.00 = 4260.00, of which 30 % = 1278.00 were paid; 92 × 40.00 + 35 h × 30.00 = 4730.00.
    expect(change.total).toEqual({ before: '4260.00', after: '4730.00', by: '+470.00' });
    expect(change.balance).toEqual({ before: '2982.00', after: '3452.00', by: '+470.00' });
    expect(change.payments).toEqual([
      {
        label: 'Balance, 7 days before the event',
        due: 'Saturday, May 8, 2027',
        before: '2982.00',
        after: '3452.00',
        by: '+470.00',
      },
    ]);
  });

  test('prints them with the rest', async () => {
    const lines = (await guarantee(await supperKitchen(SERVED), '--guests', '92')).split('\n');
    for (const line of [
      'Orders and delivery fees',
      '  Hill Farm  order  +$6.00  $370.00 → $376.00',
      'Staff',
      '  Servers  people  +1    6 → 7',
      '  Servers  hours   +5 h  30 h → 35 h',
      'Payments still open',
      '  Balance, 7 days before the event  Saturday, May 8, 2027  +$470.00  $2,982.00 → $3,452.00',
      '  Client’s total       +$470.00  $4,260.00 → $4,730.00',
      '  Still open in all    +$470.00  $2,982.00 → $3,452.00',
    ])
      expect(lines).toContain(line);
  });

  test('names an order that is dropped and one that is new, with the delivery fee that goes and comes with it', async () => {
    const dir = await supperKitchen(SERVED);
    const dropped = await changeOf(dir, '--guests', '84', '--take', 'Main=lamb-stew:84,pea-pot:0');
    expect(dropped.orders).toContainEqual({ supplier: 'Pea Quay', before: '30.00', after: '', by: '−30.00' });
    expect(dropped.deliveryFees).toEqual([
      { supplier: 'Pea Quay', before: '12.00', after: '', by: '−12.00' },
    ]);
    expect([dropped.staff, dropped.payments, dropped.balance?.by]).toEqual([[], [], '']);
    const said = await guarantee(dir, '--guests', '84', '--take', 'Main=lamb-stew:63,pea-pot:21');
    expect(said).toMatch(/^ {2}Pea Quay +new order +\+\$30\.00 +none → \$30\.00$/m);
    expect(said).toMatch(/^ {2}Pea Quay +delivery fee +\+\$12\.00 +none → \$12\.00$/m);
  });

  test('shows money to be paid back as a balance below nothing', async () => {
    const dir = await supperKitchen(SERVED);
    await done(dir, TODAY, 'payment', EVENT, '2982.00');
    // 80 × 40.00 + 6 × 5 h × 30.00 = 4100.00 of 4260.00 paid.
    const { balance, payments } = await changeOf(dir, '--guests', '80');
    expect([balance, payments]).toEqual([{ before: '0.00', after: '-160.00', by: '−160.00' }, []]);
  });

  test('is on the event’s page as it was printed, and a plan of before without these lists still reads', async () => {
    const dir = await supperKitchen(SERVED);
    const change = await changeOf(dir, '--guests', '92');
    const planned = await plannedEvent(await bookOf(dir), EVENT, TODAY as Day);
    expect(planned.ok && planned.value.plan.ok && planned.value.plan.value.lastChange).toEqual(change);
    const { orders: _, deliveryFees: __, staff: ___, payments: ____, balance: _____, ...older } = change;
    expect(planChangesSchema.safeParse(older).success).toBe(true);
    expect(planChangesSchema.safeParse(change).success).toBe(true);
  });
});
