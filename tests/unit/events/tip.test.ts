import { expect, test } from 'vitest';
import { moneyText } from '../../../src/engine/money/money.ts';
import { invoice } from '../../../src/exports/invoice.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import { bookOf, done, EVENT, refusal, statusOf, supperKitchen } from './supper-kitchen.ts';

const AFTER = '2027-05-16';

test('a tip is told beside the bill and in no sum of it', async () => {
  const dir = await supperKitchen();
  const before = await statusOf(dir);
  expect(await done(dir, AFTER, 'tip', EVENT, '150.00', '--method', 'cash')).toBe(
    'Tip recorded for pell-supper: $150.00. Tips in all: $150.00; no bill holds them.\n',
  );
  const after = await statusOf(dir);
  for (const sum of ['total', 'received', 'balance'] as const)
    expect(moneyText(sum === 'total' ? after.total : after.account[sum])).toBe(
      moneyText(sum === 'total' ? before.total : before.account[sum]),
    );
  const found = currentEvent(await bookOf(dir), EVENT);
  const made = found.ok ? invoice(found.value) : found;
  if (!made.ok) throw new Error(made.what);
  expect(made.value.tips).toEqual([{ on: AFTER, amount: '150.00', method: 'cash' }]);
  expect(made.value.received.map(({ amount }) => amount)).not.toContain('150.00');
});

test('a tip is recorded once, and no more is taken back than was given', async () => {
  const dir = await supperKitchen();
  await done(dir, AFTER, 'tip', EVENT, '80.00');
  expect(await refusal(dir, AFTER, 'tip', EVENT, '80.00')).toContain('is already recorded');
  expect(await refusal(dir, AFTER, 'tip', EVENT, '-90.00')).toContain('more than was given in tips');
  expect(await done(dir, AFTER, 'tip', EVENT, '-80.00')).toContain('Tips in all: $0.00');
  expect(await refusal(dir, AFTER, 'tip', EVENT, '0')).toContain('the amount is zero');
});
