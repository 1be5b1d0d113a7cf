import { describe, expect, test } from 'vitest';
import { money } from '../../../src/engine/money/money.ts';
import { orderDays } from '../../../src/engine/purchase/order-days.ts';
import { supplierOrders } from '../../../src/engine/purchase/supplier-orders.ts';
import { day, pack } from '../plan/builders.ts';

describe('the day to order', () => {
  // 2027-05-15 is a Saturday.
  test('is lead days before the last delivery day on or before the first task', () => {
    const supplier = { leadDays: 2, deliveryDays: [2, 4] };
    expect(orderDays(supplier, day('2027-05-14'))).toEqual({
      deliverOn: '2027-05-13',
      orderBy: '2027-05-11',
    });
    expect(orderDays(supplier, day('2027-05-13'))).toEqual({
      deliverOn: '2027-05-13',
      orderBy: '2027-05-11',
    });
    expect(orderDays(supplier, day('2027-05-10'))).toEqual({
      deliverOn: '2027-05-06',
      orderBy: '2027-05-04',
    });
  });

  test('is the day before, or the day itself, of who delivers daily', () => {
    expect(orderDays({ leadDays: 1, deliveryDays: [] }, day('2027-05-01'))).toEqual({
      deliverOn: '2027-05-01',
      orderBy: '2027-04-30',
    });
    expect(orderDays({ leadDays: 0, deliveryDays: [6] }, day('2027-05-15')).orderBy).toBe('2027-05-15');
  });

  test('reaches back a whole week for the one day of delivery', () => {
    expect(orderDays({ leadDays: 1, deliveryDays: [0] }, day('2027-05-15')).deliverOn).toBe('2027-05-09');
  });
});

test('orders add up by supplier, with fee, what they lack to the minimum, and the earliest day they are needed', () => {
  const cost = (amount: string) => money(amount, 'USD');
  const purchases = [
    { neededOn: day('2027-05-14'), packs: [{ pack: pack('a', '1 lb', '1.00'), cost: cost('100.25') }] },
    {
      neededOn: day('2027-05-13'),
      packs: [
        { pack: pack('b', '1 lb', '1.00', { supplier: 'hill' }), cost: cost('80.00') },
        { pack: pack('b', '2 lb', '1.00'), cost: cost('20.00') },
      ],
    },
  ];
  const quay = {
    id: 'quay',
    name: 'Quay',
    leadDays: 1,
    deliveryDays: [],
    minimumOrder: '150.00',
    deliveryFee: '25',
  };
  const days = { neededOn: '2027-05-13', deliverOn: '2027-05-13', orderBy: '2027-05-12' };
  const nothing = { minimumOrder: '0.00', deliveryFee: '0.00', short: '' };
  expect(supplierOrders(purchases, new Map([['quay', quay]]), 'USD')).toEqual([
    { supplier: 'hill', name: 'hill', goods: '80.00', total: '80.00', ...nothing, ...days },
    {
      supplier: 'quay',
      name: 'Quay',
      goods: '120.25',
      minimumOrder: '150.00',
      deliveryFee: '25.00',
      total: '145.25',
      short: '29.75',
      ...days,
    },
  ]);
});
