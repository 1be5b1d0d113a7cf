import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import { acceptedOffer } from '../../../src/offers/event/accepted-offer.ts';
import { capacityWarnings, confirmation } from '../../../src/offers/event/confirm.ts';
import { depositDue } from '../../../src/offers/event/deposit-due.ts';
import { eventStatus } from '../../../src/offers/event/status.ts';
import type { Change } from '../../commands/kitchen-copy.ts';
import { instalmentText } from '../money/instalment-text.ts';
import { accepted, day, EVENING, must, secondKitchen, withFacts } from './second-kitchen.ts';

const TODAY = day('2027-05-03');

function statusOf(book: Book) {
  const { offer, facts } = must(acceptedOffer(book, EVENING));
  const status = eventStatus(offer, facts);
  const rows = status.open.map(({ instalment, due, amount }) => [
    instalmentText(instalment, 'EUR', 'en-IE'),
    due,
    moneyText(amount),
  ]);
  return { offer, status, rows, received: status.received.map(({ amount }) => moneyText(amount)) };
}

function confirmedWith(book: Book, amount?: string) {
  const sum = amount === undefined ? undefined : money(amount, 'EUR');
  const deposit = { amount: sum, on: TODAY, method: undefined };
  return withFacts(book, must(confirmation(book, EVENING, deposit, TODAY)).fact);
}

describe('the payments of an event', () => {
  test('are due from the day of acceptance while nothing has come in', async () => {
    const { status, rows, offer } = statusOf(accepted(await secondKitchen()));
    expect(status.state).toBe('accepted');
    expect(rows).toEqual([
      ['25 % when accepted', '2027-04-28', '177.94'],
      ['balance on the day', '2027-05-21', '533.81'],
    ]);
    expect(moneyText(depositDue(offer, status)!)).toBe('177.94');
  });

  test('after the deposit are what came in and the balance, to the cent', async () => {
    const { status, rows, received, offer } = statusOf(confirmedWith(accepted(await secondKitchen())));
    expect(status.state).toBe('confirmed');
    expect(received).toEqual(['177.94']);
    expect(rows).toEqual([['balance on the day', '2027-05-21', '533.81']]);
    expect(depositDue(offer, status)).toBeUndefined();
  });

  test.each([
    ['100.00', '611.75'],
    ['500', '211.75'],
    ['711.75', undefined],
    ['800.00', '-88.25'],
  ])(
    'with %s as deposit keep it as it came, and the balance takes the difference: %s',
    async (amount, balance) => {
      const { rows, received } = statusOf(confirmedWith(accepted(await secondKitchen()), amount));
      expect(received).toEqual([Number(amount).toFixed(2)]);
      expect(rows[0]?.[2]).toBe(balance);
    },
  );

  test('have no deposit where the kitchen asks for none on acceptance', async () => {
    const book = accepted(
      await secondKitchen([
        'kitchen.yaml',
        '[25 % when accepted, balance on the day]',
        '[balance on the day]',
      ]),
    );
    const { status, offer } = statusOf(book);
    expect(depositDue(offer, status)).toBeUndefined();
    expect(statusOf(confirmedWith(book, '50.00')).rows.map((row) => row[2])).toEqual(['661.75']);
  });
});

describe('what the kitchen can do in a day', () => {
  /** The same evening once more under another id, on the same day. */
  async function crowded(events: number, change: Change): Promise<Book> {
    const book = accepted(await secondKitchen(change));
    const [offer] = book.offers.get(EVENING)!;
    const [fact] = book.events.get(EVENING)!.facts;
    const ids = Array.from({ length: events }, (_, index) =>
      index === 0 ? EVENING : `evening-${index + 1}`,
    );
    return {
      ...book,
      offers: new Map(ids.map((id) => [id, [{ ...offer!, proposal: id }]])),
      events: new Map(
        ids.map((id) => [id, { id, facts: [{ ...fact, proposal: id } as typeof fact & object] }]),
      ),
    };
  }

  test('is not exceeded by exactly as many guests and events as it states', async () => {
    expect(
      capacityWarnings(await crowded(2, ['kitchen.yaml', 'guests a day: 90', 'guests a day: 74']), EVENING),
    ).toEqual([]);
  });

  test('is exceeded by one guest more, or one event more, each said with its figures', async () => {
    const warnings = capacityWarnings(
      await crowded(3, ['kitchen.yaml', 'guests a day: 90', 'guests a day: 110']),
      EVENING,
    );
    expect(warnings).toEqual([
      '2027-05-21 has 111 guests over all its events, but the kitchen’s limit is 110 a day',
      '2027-05-21 has 3 events, but the kitchen’s limit is 2 a day',
    ]);
  });

  test('counts other days for nothing, and warns of nothing where the kitchen states nothing', async () => {
    const book = await crowded(3, ['kitchen.yaml', 'guests a day: 90', 'guests a day: 40']);
    const away = (id: string) => ({ ...book.offers.get(id)![0]!, date: day('2027-05-22') });
    const others = ['evening-2', 'evening-3'].map((id) => [id, [away(id)]] as const);
    expect(
      capacityWarnings(
        { ...book, offers: new Map([[EVENING, book.offers.get(EVENING)!], ...others]) },
        EVENING,
      ),
    ).toEqual([]);
    const silent = await crowded(3, [
      'kitchen.yaml',
      'capacity:\n  guests a day: 90\n  events a day: 2\n',
      '',
    ]);
    expect(capacityWarnings(silent, EVENING)).toEqual([]);
  });
});
