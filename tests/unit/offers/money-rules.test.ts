import { describe, expect, test } from 'vitest';
import { money } from '../../../src/engine/money/money.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import { cancellation } from '../../../src/offers/event/cancel.ts';
import { confirmation } from '../../../src/offers/event/confirm.ts';
import { payment } from '../../../src/offers/event/payment.ts';
import { postponement } from '../../../src/offers/event/postpone.ts';
import { served } from '../../../src/offers/event/served.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { day, must } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import {
  ACCEPTED,
  acceptedFact,
  cancelledFact,
  confirmedFact,
  DATE,
  PICNIC,
  paperBook,
  paperOffer,
  paymentFact,
  picnic,
  postponedFact,
  servedFact,
  TERMS,
} from './paper-event.ts';

const TODAY = day('2027-04-15');
const bookWith = (...facts: EventFact[]) => picnic(sampleGuests(100), facts).book;
const why = (read: Parsed<unknown>) => (read.ok ? 'taken' : `${read.what} — ${read.wayOut}`);
const usd = (text: string) => money(text, 'USD');

describe('a payment', () => {
  const pay = (
    amount: string,
    facts: EventFact[] = [],
    said: { on?: string; method?: string } = {},
    second = false,
  ) =>
    payment(
      bookWith(...facts),
      PICNIC,
      { amount: usd(amount), on: day(said.on ?? '2027-04-10'), method: said.method },
      TODAY,
      second,
    );

  test('is recorded as it came, with its day and its way', () => {
    expect(must(pay('250.5'))).toStrictEqual({
      number: 2,
      fact: { version: 1, kind: 'payment', on: TODAY, received: { amount: '250.50', on: '2027-04-10' } },
    });
    expect(must(pay('250.50', [], { method: 'cash' })).fact.received.method).toBe('cash');
  });

  test('came in between the acceptance and today', () => {
    expect(
      ['2027-04-04', '2027-04-05', '2027-04-15', '2027-04-16'].map((on) => pay('1', [], { on }).ok),
    ).toEqual([false, true, true, false]);
    expect(why(pay('1', [], { on: '2027-04-16' }))).toBe(
      'money can’t have come in on 2027-04-16 — give a day from 2027-04-05 to 2027-04-15',
    );
  });

  test('of nothing is none', () => {
    expect(why(pay('0'))).toBe('the amount is zero — give the amount that came in');
  });

  test('paid back is at most what has come in', () => {
    const paid = [paymentFact('100.00', '2027-04-08'), paymentFact('50.00', '2027-04-09')];
    expect(pay('-150.00', paid).ok).toBe(true);
    expect(why(pay('-150.01', paid))).toBe(
      '$150.01 can’t be refunded: only $150.00 has come in for quarry-picnic — refund that much or less',
    );
    expect(pay('-0.01').ok).toBe(false);
  });

  test('of the same sum on the same day is asked about, whatever its way unless both ways are stated', () => {
    const at = (method?: string) => [paymentFact('100.00', '2027-04-10', method)];
    expect(why(pay('100.00', at()))).toBe(
      '$100.00 on 2027-04-10 is already recorded for quarry-picnic — if this is a second payment of the same amount, add --again',
    );
    expect(pay('100.00', at(), { method: 'cash' }).ok).toBe(false);
    expect(pay('100.00', at('cash')).ok).toBe(false);
    expect(pay('100.00', at('cash'), { method: 'cash' }).ok).toBe(false);
    expect(pay('100.00', at('cash'), { method: 'check' }).ok).toBe(true);
    expect(pay('100.01', at()).ok).toBe(true);
    const again = { amount: usd('100.00'), on: day('2027-04-10'), method: undefined };
    expect(payment(bookWith(...at()), PICNIC, again, TODAY).ok).toBe(false);
    expect(pay('100.00', at(), { on: '2027-04-11' }).ok).toBe(true);
    expect(pay('100.00', at(), {}, true).ok).toBe(true);
    // The deposit counts as well.
    expect(pay('1070.00', [confirmedFact('1070.00')]).ok).toBe(false);
  });

  test('may come in after the event and for one that was cancelled', () => {
    expect(pay('1', [cancelledFact]).ok).toBe(true);
    const late = { amount: usd('1'), on: day('2027-06-01'), method: undefined };
    expect(payment(bookWith(), PICNIC, late, day('2027-06-01')).ok).toBe(true);
  });
});

describe('a confirmation', () => {
  const confirm = (amount?: string, facts: EventFact[] = [], on = '2027-04-10', today = TODAY) =>
    confirmation(
      bookWith(...facts),
      PICNIC,
      { amount: amount === undefined ? undefined : usd(amount), on: day(on), method: undefined },
      today,
    );

  test('without a sum records the deposit due, or what is still missing of it', () => {
    expect(must(confirm()).fact.received).toStrictEqual({ amount: '1070.00', on: '2027-04-10' });
    expect(must(confirm(undefined, [paymentFact('70.00', '2027-04-08')])).fact.received?.amount).toBe(
      '1000.00',
    );
    expect(must(confirm('900.00')).fact.received?.amount).toBe('900.00');
  });

  test('records no money where the deposit is in, and is refused a sum then', () => {
    const paid = [paymentFact('1070.00', '2027-04-08')];
    expect(must(confirm(undefined, paid)).fact).toEqual({ version: 1, kind: 'confirmed', on: TODAY });
    expect(why(confirm('1070.00', paid))).toBe(
      '$1,070.00 is already recorded for quarry-picnic, the deposit included — to confirm the date, run: confirm quarry-picnic; for any other money: payment quarry-picnic AMOUNT',
    );
    expect(confirm('500.00', [paymentFact('500.00', '2027-04-10')]).ok).toBe(false);
    expect(confirm('500.00', [paymentFact('500.00', '2027-04-09')]).ok).toBe(true);
  });

  test('is given once, and once more for a day on hold, by the deposit of the first', () => {
    expect(why(confirm(undefined, [confirmedFact('1070.00')]))).toBe(
      'quarry-picnic is confirmed already — nothing more to do; record any other money with `payment`',
    );
    const moved = [confirmedFact('900.00'), postponedFact('2027-06-01', true)];
    expect(must(confirm(undefined, moved)).fact).not.toHaveProperty('received');
    // Also where that was paid back since.
    const back = [
      confirmedFact('1070.00'),
      paymentFact('-1070.00', '2027-04-11'),
      postponedFact('2027-06-01', true),
    ];
    expect(must(confirm(undefined, back)).fact).not.toHaveProperty('received');
    expect(why(confirm(undefined, [postponedFact(null)]))).toContain('is postponed without a new date');
  });

  test('has its day of payment between the acceptance and today', () => {
    const days = ['2027-04-04', ACCEPTED, TODAY, '2027-04-16'];
    expect(days.map((on) => confirm('5', [], on).ok)).toEqual([false, true, true, false]);
  });

  test('of an event that asks for no deposit needs a sum, unless money has come in', () => {
    const terms = { ...TERMS, payments: [{ of: 'balance' as const, due: 7 as const }] } as typeof TERMS;
    const offer = paperOffer(sampleChoice(sampleGuests(100)), {}, terms);
    const plain = (amount?: string, ...facts: EventFact[]) =>
      confirmation(
        paperBook([offer], [acceptedFact(offer), ...facts]),
        PICNIC,
        { amount: amount === undefined ? undefined : usd(amount), on: day('2027-04-10'), method: 'cash' },
        TODAY,
      );
    expect(why(plain())).toBe(
      'quarry-picnic has no deposit due, so there is no default amount — give the amount with --received',
    );
    expect(must(plain('50')).fact.received).toEqual({ amount: '50.00', on: '2027-04-10', method: 'cash' });
    const some = paymentFact('20.00', '2027-04-09');
    expect(must(plain(undefined, some)).fact).not.toHaveProperty('received');
    expect(must(plain('50', some)).fact.received?.amount).toBe('50.00');
    expect(plain(undefined, some, paymentFact('-20.00', '2027-04-09')).ok).toBe(false);
  });

  test('comes before the event is over', () => {
    expect(confirm(undefined, [], '2027-04-10', DATE).ok).toBe(true);
    expect(why(confirm(undefined, [], '2027-04-10', day('2027-05-16')))).toContain(
      'took place on 2027-05-15',
    );
  });
});

describe('moving an event', () => {
  const move = (to: string | null, hold = false, ...facts: EventFact[]) =>
    postponement(bookWith(...facts), PICNIC, { to: to === null ? null : day(to), hold }, TODAY);

  test('names the last day it was set for, and may be to any day to come', () => {
    expect(must(move('2027-06-01')).fact).toMatchObject({ from: DATE, to: '2027-06-01', hold: false });
    expect(must(move('2027-06-01', true, postponedFact(null))).fact).toMatchObject({
      from: DATE,
      hold: true,
    });
    expect(must(move(null, false, postponedFact('2027-07-01'))).fact).toMatchObject({
      from: '2027-07-01',
      to: null,
    });
    expect(move(TODAY).ok).toBe(true);
  });

  test.each<[Parameters<typeof move>, string]>([
    [[null, true], 'there is no new date to hold'],
    [[null, false, postponedFact(null)], 'quarry-picnic is already postponed'],
    [['2027-04-14'], '2027-04-14 has passed; today is 2027-04-15'],
    [[DATE], 'quarry-picnic is already on 2027-05-15'],
    [['2027-07-01', false, postponedFact('2027-07-01')], 'quarry-picnic is already on 2027-07-01'],
    [['2027-07-01', false, cancelledFact], 'quarry-picnic is canceled'],
  ])('is refused: %j', (asked, what) => {
    expect(why(move(...asked))).toContain(what);
  });
});

test('an event is called off once, with a reason or none', () => {
  expect(must(cancellation(bookWith(), PICNIC, 'rain', TODAY)).fact).toMatchObject({
    reason: 'rain',
    on: TODAY,
  });
  expect(must(cancellation(bookWith(), PICNIC, undefined, TODAY)).fact).not.toHaveProperty('reason');
  expect(cancellation(bookWith(cancelledFact), PICNIC, undefined, TODAY).ok).toBe(false);
});

describe('who was served', () => {
  const record = (asked: Parameters<typeof served>[2], today: string = DATE, ...facts: EventFact[]) =>
    served(bookWith(...facts), PICNIC, asked, day(today));

  test('is recorded from the event’s day on, groups left out as guaranteed', () => {
    expect(must(record({ adults: 97 })).fact.guests).toEqual(sampleGuests(97));
    expect(must(record({ vendors: 4 }, '2027-05-20', servedFact(sampleGuests(90)))).fact.guests).toEqual(
      sampleGuests(100, { vendors: 4 }),
    );
    expect(why(record({}, '2027-05-14'))).toBe(
      'quarry-picnic is on 2027-05-15, so no one has been served yet — to set the expected count use `guarantee`',
    );
  });

  test('is nobody where the event did not take place, and no more than any event serves', () => {
    expect(why(record({}, DATE, cancelledFact))).toContain(
      'quarry-picnic is cancelled, so no one was served',
    );
    expect(why(record({}, DATE, postponedFact(null)))).toContain('is postponed, so no one was served');
    expect(record({ adults: 100_000 }).ok).toBe(true);
    expect(why(record({ adults: 100_001 }))).toContain('100001 adults is more than any event serves');
    expect(why(record({ staff: 100_001 }))).toContain('100001 staff is more');
  });
});
