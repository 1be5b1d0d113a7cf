import { describe, expect, test } from 'vitest';
import { money, moneyText } from '../../../src/engine/money/money.ts';
import { choiceFor, eventStatus } from '../../../src/offers/event/status.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { instalmentText } from '../money/instalment-text.ts';
import { day } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import {
  ACCEPTED,
  acceptedFact,
  cancelledFact,
  confirmedFact,
  DATE,
  guaranteeFact,
  paperOffer,
  paymentFact,
  picnic,
  postponedFact,
  servedFact,
} from './paper-event.ts';

const GUESTS = sampleGuests(100);
const statusOf = (...facts: readonly EventFact[]) => picnic(GUESTS, facts).status;

describe('the state of an event', () => {
  test.each<[string, readonly EventFact[], string, string | null, string]>([
    ['its acceptance', [], 'accepted', DATE, DATE],
    ['a payment', [paymentFact('500.00', '2027-04-08')], 'accepted', DATE, DATE],
    ['its confirmation', [confirmedFact('1070.00')], 'confirmed', DATE, DATE],
    ['being put off', [confirmedFact('1.00'), postponedFact(null)], 'postponed', null, DATE],
    [
      'being moved',
      [confirmedFact('1.00'), postponedFact('2027-06-01')],
      'confirmed',
      '2027-06-01',
      '2027-06-01',
    ],
    ['being moved unconfirmed', [postponedFact('2027-06-01')], 'accepted', '2027-06-01', '2027-06-01'],
    [
      'being moved to a day on hold',
      [confirmedFact('1.00'), postponedFact('2027-06-01', true)],
      'accepted',
      '2027-06-01',
      '2027-06-01',
    ],
    [
      'the new day’s confirmation',
      [confirmedFact('1.00'), postponedFact('2027-06-01', true), confirmedFact()],
      'confirmed',
      '2027-06-01',
      '2027-06-01',
    ],
    [
      'being put off and moved',
      [postponedFact(null), postponedFact('2027-07-01')],
      'accepted',
      '2027-07-01',
      '2027-07-01',
    ],
    [
      'being moved and put off',
      [postponedFact('2027-07-01'), postponedFact(null)],
      'postponed',
      null,
      '2027-07-01',
    ],
    [
      'being put off, whatever is paid meanwhile',
      [postponedFact(null), paymentFact('1.00', '2027-04-13')],
      'postponed',
      null,
      DATE,
    ],
    ['being called off', [confirmedFact('1.00'), cancelledFact], 'cancelled', null, DATE],
    [
      'being called off, whatever follows',
      [postponedFact('2027-06-01'), cancelledFact, confirmedFact('1.00'), postponedFact('2027-07-01')],
      'cancelled',
      null,
      '2027-06-01',
    ],
  ])('after %s', (_, facts, state, date, lastDate) => {
    expect(statusOf(...facts)).toMatchObject({ state, date, lastDate });
  });

  test('begins with an acceptance and nothing else', () => {
    const offer = paperOffer(sampleChoice(GUESTS));
    for (const facts of [[], [confirmedFact('1.00'), acceptedFact(offer)]])
      expect(() => eventStatus(offer, facts)).toThrow('an event starts with its acceptance');
  });
});

describe('the counts of an event', () => {
  test('are held to the accepted count’s floor until a week before its day, wherever that is', () => {
    expect(statusOf()).toMatchObject({ floor: 90, deadline: '2027-05-08', served: null });
    expect(statusOf(postponedFact('2027-06-08')).deadline).toBe('2027-06-01');
    expect(statusOf(postponedFact(null)).deadline).toBeNull();
  });

  test('are those guaranteed last, needs and mains with them, and the floor stays', () => {
    const first = guaranteeFact(sampleGuests(96), '2027-04-20', { needs: { vegan: 3 } });
    const last = guaranteeFact(sampleGuests(94, { children: 2 }), '2027-05-01', { needs: { milk: 1 } });
    const status = statusOf(first, servedFact(sampleGuests(80)), last);
    expect(status.choice).toMatchObject({ guests: { adults: 94, children: 2 }, needs: { milk: 1 } });
    expect(status.guarantee).toEqual(last);
    expect([status.floor, status.served?.adults]).toEqual([90, 80]);
    expect(statusOf().guarantee).toBeUndefined();
  });

  test('bill the larger of guaranteed and served, never under the floor', () => {
    const billed = (...facts: EventFact[]) => {
      const status = statusOf(...facts);
      return [status.billed.guests.adults, status.billed.guests.children, moneyText(status.total)];
    };
    // 40.00 and 7 % for each guest.
    expect(billed()).toEqual([100, 0, '4280.00']);
    expect(billed(guaranteeFact(sampleGuests(92)))).toEqual([92, 0, '3937.60']);
    expect(billed(guaranteeFact(sampleGuests(70)))).toEqual([90, 0, '3852.00']);
    expect(billed(servedFact(sampleGuests(104)))).toEqual([104, 0, '4451.20']);
    expect(billed(guaranteeFact(sampleGuests(92)), servedFact(sampleGuests(60)))).toEqual([92, 0, '3937.60']);
    expect(billed(servedFact(sampleGuests(104)), servedFact(sampleGuests(101)))).toEqual([101, 0, '4322.80']);
    expect(billed(guaranteeFact(sampleGuests(90)), servedFact(sampleGuests(90, { children: 5 })))).toEqual([
      90,
      5,
      '3959.00',
    ]);
  });

  test('share mains out anew for those billed, in the proportions given', () => {
    const mains = { Main: { hake: 75, squash: 25 } };
    const served = servedFact(sampleGuests(120));
    const { status } = picnic(GUESTS, [served], { package: 'supper', mains });
    expect(status.choice.mains).toEqual(mains);
    expect(status.billed.mains).toEqual({ Main: { hake: 90, squash: 30 } });
  });
});

describe('the account of an event', () => {
  const rows = (...facts: EventFact[]) =>
    statusOf(...facts).open.map(
      ({ instalment, due, amount }) => `${instalmentText(instalment)} ${due} ${moneyText(amount)}`,
    );

  test('asks for the deposit from the day of acceptance, and for the balance a week before', () => {
    expect(rows()).toEqual([
      `25 % when accepted ${ACCEPTED} 1070.00`,
      'balance 7 days before 2027-05-08 3210.00',
    ]);
    expect(rows(postponedFact('2027-06-08'))[1]).toBe('balance 7 days before 2027-06-01 3210.00');
  });

  test('takes a deposit of any size for the whole of it, and a payment for what it is', () => {
    expect(rows(confirmedFact('1000.00'))).toEqual(['balance 7 days before 2027-05-08 3280.00']);
    expect(rows(paymentFact('1000.00', '2027-04-08'))).toEqual([
      `25 % when accepted ${ACCEPTED} 70.00`,
      'balance 7 days before 2027-05-08 3210.00',
    ]);
    const status = statusOf(confirmedFact('1000.00'), paymentFact('-20.00', '2027-04-11', 'cash'));
    expect(status.received).toEqual([
      { on: '2027-04-10', amount: money('1000.00', 'USD'), settles: 0, method: undefined },
      { on: '2027-04-11', amount: money('-20.00', 'USD'), settles: null, method: 'cash' },
    ]);
  });

  test('keeps what was paid in full under an earlier count, so that the balance takes the change', () => {
    const paid = paymentFact('1070.00', '2027-04-08');
    const fewer = guaranteeFact(sampleGuests(92), '2027-05-01');
    expect(rows(paid, fewer)).toEqual(['balance 7 days before 2027-05-08 2867.60']);
    const more = guaranteeFact(sampleGuests(110), '2027-05-02');
    expect(rows(paid, fewer, more)).toEqual(['balance 7 days before 2027-05-08 3638.00']);
    expect(rows(paid, fewer, servedFact(sampleGuests(93)))).toEqual([
      'balance 7 days before 2027-05-08 2910.40',
    ]);
  });

  test('holds each payment to the total that stood when it came in', () => {
    // 92 guests on the day of the deposit: 25 % of 3,937.60. What comes later goes to the balance.
    const fewer = guaranteeFact(sampleGuests(92), '2027-04-06');
    const paid = paymentFact('984.40', '2027-04-08');
    const more = guaranteeFact(sampleGuests(110), '2027-05-02');
    expect(rows(fewer, paid, more)).toEqual(['balance 7 days before 2027-05-08 3723.60']);
    expect(rows(paymentFact('1070.00', '2027-04-08'), servedFact(sampleGuests(104)))).toEqual([
      'balance 7 days before 2027-05-08 3381.20',
    ]);
    const between = guaranteeFact(sampleGuests(96), '2027-04-07');
    expect(rows(fewer, between, paid, more)).toEqual([
      // 96 guests: 25 % of 4,108.80 is 1,027.20, of which 984.40 came in; 110 guests: 1,177.00.
      `25 % when accepted ${ACCEPTED} 192.60`,
      'balance 7 days before 2027-05-08 3531.00',
    ]);
  });

  test('asks a cancelled event for nothing, and keeps what it paid', () => {
    const status = statusOf(confirmedFact('1070.00'), cancelledFact);
    expect(status.open).toEqual([]);
    expect(moneyText(status.account.received)).toBe('1070.00');
  });

  test('of terms without a deposit settles no instalment by a confirmation', () => {
    const terms = { ...picnic(GUESTS).offer.terms, payments: [{ of: 'balance' as const, due: 7 }] };
    const offer = paperOffer(sampleChoice(GUESTS), {}, terms as typeof terms & object);
    const status = eventStatus(offer, [acceptedFact(offer), confirmedFact('100.00')]);
    expect(status.received[0]?.settles).toBeNull();
    expect(status.open.map(({ amount }) => moneyText(amount))).toEqual(['4180.00']);
  });
});

test('another count of a menu that is none keeps the choice, with its guests', () => {
  const offer = paperOffer(sampleChoice(GUESTS));
  const choice = sampleChoice(GUESTS, { package: 'brunch', mains: { Main: { hake: 1 } } });
  expect(choiceFor(offer, choice, sampleGuests(7))).toEqual({ ...choice, guests: sampleGuests(7) });
});

test('what was swapped is told in the order decided', () => {
  const swap = (from: string): EventFact => ({
    version: 1,
    kind: 'substitution',
    on: day('2027-04-20'),
    what: 'ingredient',
    from,
    to: 'oil',
    contains: [],
    mayContain: [],
    without: [],
    dietsLost: [],
    tell: [],
  });
  expect(
    statusOf(swap('butter'), confirmedFact('1.00'), swap('cream')).substitutions.map(({ from }) => from),
  ).toEqual(['butter', 'cream']);
});
