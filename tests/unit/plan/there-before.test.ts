import { expect, test } from 'vitest';
import { thereBefore } from '../../../src/engine/plan/purchases/there-before.ts';
import type { Supplier } from '../../../src/engine/purchase/price-list.ts';
import { day, food, line, pack, prices, recipe } from './builders.ts';

// A Saturday; 0 is Sunday, 5 Friday.
const EVENT = { date: day('2027-05-15'), buyingDay: day('2027-05-10') };
const FRIDAY = day('2027-05-14');
const listed = prices(pack('kale', '5 lb', '9.00'));

function isThere(
  since: string,
  { leadDays, deliveryDays }: { leadDays: number; deliveryDays: number[] },
  { keepsDays, ...event }: { keepsDays?: number; date?: never; buyingDay?: ReturnType<typeof day> } = {},
  days = 1,
) {
  const chips = recipe('kale chips', '1 gal', [line(food('kale', { keepsDays }), '1 lb')]);
  const supplier = { id: 'quay', name: 'Quay', leadDays, deliveryDays } as unknown as Supplier;
  const sources = { prices: listed, suppliers: new Map([['quay', supplier]]) };
  return thereBefore(chips, { ...EVENT, ...event }, day(since), sources, days);
}

test('food that comes any day can be had a day earlier by whoever can still order it', () => {
  const anyDay = { leadDays: 2, deliveryDays: [] };
  expect(isThere('2027-05-12', anyDay)).toBe(true);
  expect(isThere('2027-05-13', anyDay)).toBe(false);
});

test('food that comes on Friday for Saturday is there on Friday, whenever that is planned', () => {
  expect(isThere('2027-05-14', { leadDays: 2, deliveryDays: [5] })).toBe(true);
  expect(isThere('2027-05-14', { leadDays: 2, deliveryDays: [6] })).toBe(false);
});

test('food that would come days earlier has to keep until the event', () => {
  // For Saturday it comes on Saturday, for Friday on Tuesday.
  const twice = { leadDays: 1, deliveryDays: [2, 6] };
  expect(isThere('2027-05-01', twice, { keepsDays: 4 })).toBe(true);
  expect(isThere('2027-05-01', twice, { keepsDays: 3 })).toBe(false);
});

test('nothing is there before the day on which the event buys', () => {
  const anyDay = { leadDays: 0, deliveryDays: [] };
  expect(isThere('2027-05-01', anyDay, { buyingDay: FRIDAY })).toBe(true);
  expect(isThere('2027-05-01', anyDay, { buyingDay: EVENT.date })).toBe(false);
});

test('one food that is not there is enough, and one supplier who can’t bring it', () => {
  const late = { id: 'quay', name: 'Quay', leadDays: 2, deliveryDays: [6] } as unknown as Supplier;
  const early = { ...late, id: 'mill', name: 'Mill', deliveryDays: [5] };
  const suppliers = new Map([
    ['quay', late],
    ['mill', early],
  ]);
  const [kale, flour] = [food('kale'), food('flour')];
  const both = prices(pack('kale', '5 lb', '9.00'), pack('flour', '5 lb', '4.00', { supplier: 'mill' }));
  const there = (of: ReturnType<typeof recipe>, list = both) =>
    thereBefore(of, EVENT, FRIDAY, { prices: list, suppliers }, 1);
  const breadIsThere = recipe('bread', '1 lb', [line(flour, '1 lb')]);
  expect(there(breadIsThere)).toBe(true);
  expect(there(recipe('chips', '1 lb', [line(kale, '1 lb')]))).toBe(false);
  expect(there(recipe('pie', '1 lb', [line(kale, '1 lb'), line(flour, '1 lb')]))).toBe(false);
  const either = prices(pack('kale', '5 lb', '9.00'), pack('kale', '5 lb', '9.50', { supplier: 'mill' }));
  expect(there(recipe('chips', '1 lb', [line(kale, '1 lb')]), either)).toBe(false);
  // What is bought from nobody, and what is cooked in the kitchen, holds nothing back.
  expect(there(recipe('salt', '1 lb', [line(food('salt'), '1 lb')]))).toBe(true);
  expect(there(recipe('toast', '1 lb', [line(breadIsThere, '1 lb')]))).toBe(true);
});

test('food for two days before has to come, and be ordered, a day sooner still', () => {
  const anyDay = { leadDays: 2, deliveryDays: [] };
  expect(isThere('2027-05-11', anyDay, {}, 2)).toBe(true);
  expect(isThere('2027-05-12', anyDay, {}, 2)).toBe(false);
  expect(isThere('2027-05-10', anyDay, { keepsDays: 1 }, 2)).toBe(false);
  expect(isThere('2027-05-10', anyDay, { buyingDay: day('2027-05-14') }, 2)).toBe(false);
});
