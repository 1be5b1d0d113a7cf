import { describe, expect, test } from 'vitest';
import { offerInUse, offersInUse, placeOfOffer, useText } from '../../../src/offers/offer-in-use.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { day } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import { acceptedFact, cancelledFact, PICNIC, paperBook, paperOffer, postponedFact } from './paper-event.ts';

const FIRST = paperOffer(sampleChoice(sampleGuests(40)));
const SECOND = paperOffer(sampleChoice(sampleGuests(40)), { revision: 2, letter: 'Dear all,' });
const inUse = (today: string, facts: readonly EventFact[] = [], more: object = {}) =>
  offerInUse(paperBook([FIRST, SECOND], facts, more), PICNIC, day(today))?.revision;

describe('the offer that may still feed somebody', () => {
  test('is the newest until the last day on which it can be accepted, unless it is withdrawn', () => {
    expect(['2027-04-01', '2027-04-30', '2027-05-01'].map((on) => inUse(on))).toEqual([2, 2, undefined]);
    const proposals = (withdrawn: boolean) => ({ proposals: new Map([[PICNIC, { id: PICNIC, withdrawn }]]) });
    expect(inUse('2027-04-10', [], proposals(true))).toBeUndefined();
    expect(inUse('2027-04-10', [], proposals(false))).toBe(2);
    expect(offerInUse(paperBook([], []), PICNIC, day('2027-04-10'))).toBeUndefined();
  });

  test('is the accepted one until the day of the event, wherever that was moved', () => {
    const facts = [acceptedFact(FIRST)];
    expect(['2027-04-20', '2027-05-15', '2027-05-16'].map((on) => inUse(on, facts))).toEqual([
      1,
      1,
      undefined,
    ]);
    const moved = [...facts, postponedFact('2027-06-01')];
    expect(['2027-06-01', '2027-06-02'].map((on) => inUse(on, moved))).toEqual([1, undefined]);
    expect(offerInUse(paperBook([SECOND], facts), PICNIC, day('2027-04-20'))).toBeUndefined();
  });

  test('is one postponed without a new day too, on any day, and none that was cancelled', () => {
    const put = [acceptedFact(FIRST), postponedFact(null)];
    expect([inUse('2027-04-20', put), inUse('2028-01-01', put)]).toEqual([1, 1]);
    expect(inUse('2027-04-20', [...put, cancelledFact])).toBeUndefined();
  });

  test('is the newest of an event that cannot be read, until its day', () => {
    const held = { held: new Map([[`event/${PICNIC}`, 'a fact is missing']]) };
    expect(['2027-05-15', '2027-05-16'].map((on) => inUse(on, [], held))).toEqual([2, undefined]);
  });

  test('is one of each proposal', () => {
    const offers = new Map([
      [PICNIC, [FIRST, SECOND]],
      ['gale', [{ ...FIRST, proposal: 'gale' }]],
    ]);
    const found = offersInUse(paperBook([], [], { offers }), day('2027-04-10'));
    expect(found.map(({ proposal, revision }) => [proposal, revision])).toEqual([
      [PICNIC, 2],
      ['gale', 1],
    ]);
  });
});

test('what uses an offer is told with its day, or that it has none yet', () => {
  const told = (...facts: EventFact[]) => useText(paperBook([FIRST], facts), FIRST);
  expect(told()).toBe('the open offer quarry-picnic revision 1');
  expect(told(acceptedFact(FIRST))).toBe('the event quarry-picnic on 2027-05-15');
  expect(told(acceptedFact(FIRST), postponedFact('2027-06-01'))).toBe(
    'the event quarry-picnic on 2027-06-01',
  );
  expect(told(acceptedFact(FIRST), postponedFact(null))).toBe(
    'the event quarry-picnic, which has no new date yet,',
  );
  expect(placeOfOffer(SECOND)).toEqual({ file: 'offers/quarry-picnic-r2.json', line: 1, column: 1 });
});
