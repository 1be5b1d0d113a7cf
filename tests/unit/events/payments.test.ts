import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { moneyText } from '../../../src/engine/money/money.ts';
import { invoice } from '../../../src/exports/invoice.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import type { BrandView } from '../../../src/views/brand/brand-view.ts';
import { eventSide } from '../../../src/views/kitchen/event-side.ts';
import { invoiceView } from '../../../src/views/kitchen/invoice-view-of.ts';
import { instalmentText } from '../money/instalment-text.ts';
import {
  acceptedSupper,
  bookOf,
  changed,
  done,
  EVENT,
  factsIn,
  refusal,
  statusOf,
} from './supper-kitchen.ts';

/** 84 adults at 40.00: 3360.00 in all, 1008.00 on acceptance, 1344.00 by April 15, 1008.00 by May 8. */
const THREE = changed(
  'kitchen.yaml',
  '[30 % when accepted, balance 7 days before]',
  '[30 % when accepted, 40 % 30 days before, balance 7 days before]',
);
const openIn = async (dir: string) =>
  (await statusOf(dir)).open.map(
    ({ instalment, due, amount }) => `${instalmentText(instalment)}: ${moneyText(amount)} ${due}`,
  );

/** What the plan of the event says is late on a day. */
async function lateIn(dir: string, today: string): Promise<string[]> {
  const side = await eventSide(await bookOf(dir), EVENT, today as Day);
  if (!side.ok) throw new Error(side.what);
  return side.value.document.event.open.filter(({ late }) => late).map(({ what }) => what);
}

async function invoiceIn(dir: string) {
  const found = currentEvent(await bookOf(dir), EVENT);
  if (!found.ok) throw new Error(found.what);
  const made = invoice(found.value);
  if (!made.ok) throw new Error(made.what);
  const view = invoiceView(made.value, found.value.offer.terms, {} as BrandView, null, false);
  return { document: made.value, view };
}

describe('a payment', () => {
  test('of the second instalment by its day closes it, in plan, invoice and what is due', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'confirm', EVENT);
    expect(await lateIn(dir, '2027-04-16')).toContain('A payment: 40 %, 30 days before the event.');
    await done(dir, '2027-04-15', 'payment', EVENT, '1344.00', '--on', '2027-04-15');
    expect(await openIn(dir)).toEqual(['balance 7 days before: 1008.00 2027-05-08']);
    expect((await lateIn(dir, '2027-04-16')).filter((what) => what.includes('payment'))).toEqual([]);
    // More guests since: what was paid stays paid, and the balance takes the difference.
    await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '90');
    expect(await openIn(dir)).toEqual(['balance 7 days before: 1248.00 2027-05-08']);
    const { document, view } = await invoiceIn(dir);
    expect(document.received.map(({ paid }) => paid)).toEqual([
      [{ label: '30 % on acceptance', amount: '1008.00' }],
      [{ label: '40 %, 30 days before the event', amount: '1344.00' }],
    ]);
    expect(view.received.map(({ paid }) => paid)).toEqual([
      '30 % on acceptance',
      '40 %, 30 days before the event',
    ]);
  });

  test('of more than an instalment asks pays on the next', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'confirm', EVENT, '--received', '1500.00');
    expect(await openIn(dir)).toEqual([
      '40 % 30 days before: 852.00 2027-04-15',
      'balance 7 days before: 1008.00 2027-05-08',
    ]);
    expect((await invoiceIn(dir)).view.received.map(({ paid }) => paid)).toEqual([
      '30 % on acceptance: $1,008.00, 40 %, 30 days before the event: $492.00',
    ]);
  });

  test('that is recorded already is refused, unless it is told to be a second one', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'confirm', EVENT, '--method', 'transfer');
    const words = ['payment', EVENT, '500.00', '--on', '2027-04-10'] as const;
    await done(dir, '2027-04-10', ...words, '--method', 'cheque');
    const told =
      'Can’t do that: $500.00 on Saturday, April 10, 2027 is already recorded for pell-supper — if this is a second payment of the same amount, add --again.';
    expect(await refusal(dir, '2027-04-11', ...words, '--method', 'cheque')).toBe(told);
    expect(await refusal(dir, '2027-04-11', ...words)).toBe(told);
    expect(await refusal(dir, '2027-04-11', 'payment', EVENT, '1008', '--on', '2027-04-02')).toContain(
      '$1,008.00 on Friday, April 2, 2027 is already recorded',
    );
    expect(factsIn(dir)).toHaveLength(3);
    // Another way, another sum or another day is another payment.
    await done(dir, '2027-04-11', ...words, '--method', 'cash');
    await done(dir, '2027-04-11', 'payment', EVENT, '500.00');
    await done(dir, '2027-04-11', ...words, '--method', 'cheque', '--again');
    expect(moneyText((await statusOf(dir)).account.received)).toBe('3008.00');
  });
});

describe('the deposit', () => {
  test('recorded as a payment is not recorded again when the event is confirmed', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'payment', EVENT, '1008.00');
    expect(await refusal(dir, '2027-04-03', 'confirm', EVENT, '--received', '1008.00')).toBe(
      'Can’t do that: $1,008.00 is already recorded for pell-supper, the deposit included — to confirm the date, run: confirm pell-supper; for any other money: payment pell-supper AMOUNT.',
    );
    expect(await done(dir, '2027-04-03', 'confirm', EVENT)).toBe(
      'Confirmed: pell-supper; the deposit is already in.\n',
    );
    expect(factsIn(dir).at(-1)?.fact).toEqual({ version: 1, kind: 'confirmed', on: '2027-04-03' });
    const { state, account } = await statusOf(dir);
    expect([state, moneyText(account.received)]).toEqual(['confirmed', '1008.00']);
  });

  test('that is in by part asks for the rest alone', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'payment', EVENT, '600.00');
    expect(await done(dir, '2027-04-03', 'confirm', EVENT)).toBe(
      'Confirmed: pell-supper; $408.00 received on 2027-04-03.\n',
    );
    expect(moneyText((await statusOf(dir)).account.received)).toBe('1008.00');
  });

  test('is no condition where none is asked for and money is in', async () => {
    const dir = await acceptedSupper(
      changed('kitchen.yaml', '[30 % when accepted, balance 7 days before]', '[balance 7 days before]'),
    );
    expect(await refusal(dir, '2027-04-02', 'confirm', EVENT)).toContain('has no deposit due');
    await done(dir, '2027-04-02', 'payment', EVENT, '50.00');
    expect(await refusal(dir, '2027-04-02', 'confirm', EVENT, '--received', '50.00')).toContain(
      '$50.00 is already recorded for pell-supper',
    );
    await done(dir, '2027-04-03', 'confirm', EVENT);
    expect(moneyText((await statusOf(dir)).account.received)).toBe('50.00');
  });
});

describe('a refund', () => {
  test('is a negative sum, shown as one, and never counted as income', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'confirm', EVENT);
    await done(dir, '2027-04-15', 'payment', EVENT, '2452.00');
    const told = await done(dir, '2027-05-02', 'payment', EVENT, '-100.00', '--method', 'transfer');
    expect(told).toBe(
      'Refunded: $100.00 for pell-supper on 2027-05-02.\nPaid in full: $0.00 of $3,360.00.\n',
    );
    expect(factsIn(dir).at(-1)?.fact.received).toEqual({
      amount: '-100.00',
      on: '2027-05-02',
      method: 'transfer',
    });
    const { document, view } = await invoiceIn(dir);
    expect([document.receivedInAll, document.balance, document.due]).toEqual(['3360.00', '0.00', []]);
    expect(view.received.at(-1)).toMatchObject({ paid: 'refund', amount: '−$100.00' });
    expect(view.receivedLabel).toBe('Received, less refunds');
    expect(await openIn(dir)).toEqual([]);
  });

  test('of money that never came in is refused', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'confirm', EVENT);
    expect(await refusal(dir, '2027-04-03', 'payment', EVENT, '-1008.01')).toBe(
      'Can’t do that: $1,008.01 can’t be refunded: only $1,008.00 has come in for pell-supper — refund that much or less.',
    );
    await done(dir, '2027-04-03', 'payment', EVENT, '-$1008');
    expect((await openIn(dir))[0]).toBe('30 % when accepted: 1008.00 2027-04-01');
  });

  test('that is due is told without a day, and not as a payment of the client', async () => {
    const dir = await acceptedSupper(THREE);
    await done(dir, '2027-04-02', 'confirm', EVENT, '--received', '3400.00');
    const side = await eventSide(await bookOf(dir), EVENT, '2027-05-10' as Day);
    if (!side.ok) throw new Error(side.what);
    const { open } = side.value.document.event;
    expect(open.find(({ what }) => what.startsWith('Money'))).toMatchObject({
      what: 'Money to pay back to the client.',
      due: '',
      late: false,
    });
    expect((await invoiceIn(dir)).view).toMatchObject({ balanceLabel: 'To be paid back', due: [] });
  });
});
