import { describe, expect, test } from 'vitest';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import { readAcceptance, takeAcceptance } from '../../../src/offers/answers/accept.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { askedBy } from '../../../src/offers/answers/read-count-change.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { digestOfRecord, shortDigest } from '../../../src/offers/digest.ts';
import type { Acceptance } from '../../../src/schema/acceptance.ts';
import type { Offer } from '../../../src/schema/offer.ts';
import { inWords } from '../../in-words.ts';
import { day, must } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import {
  ACCEPTED,
  acceptedFact,
  guaranteeFact,
  PICNIC,
  paperBook,
  paperOffer,
  picnic,
} from './paper-event.ts';

const CHOICE = sampleChoice(sampleGuests(40, { staff: 2 }), { needs: { vegan: 2 } });
const FIRST = paperOffer(CHOICE);
const TODAY = day('2027-04-20');

const signed = (offer: Offer, change: Partial<Choice> = {}, accepted = ACCEPTED): Acceptance =>
  makeAcceptance(
    offer,
    { ...offer.proposed, ...change },
    { name: 'N', email: 'n@quarry.example', note: '', accepted },
  );
const resealed = (acceptance: Acceptance, change: Partial<Acceptance>) => {
  const record = { ...acceptance, ...change };
  return { ...record, digest: digestOfRecord(record) };
};

/** What comes of an acceptance of the picnic. */
function taken(
  acceptance: object,
  { offers = [FIRST], today = TODAY, drop = false, more = {} as object } = {},
): string {
  const read = takeAcceptance(paperBook(offers, [], more), JSON.stringify(acceptance), today, {
    dropNeeds: drop,
  });
  return read.ok ? 'taken' : `${inWords(read.what)} — ${inWords(read.wayOut)}`;
}

describe('an acceptance', () => {
  test('as the page makes it is taken, and names the offer it is of', () => {
    const text = JSON.stringify(signed(FIRST));
    expect(must(takeAcceptance(paperBook([FIRST], []), text, TODAY))).toEqual({
      version: 1,
      kind: 'accepted',
      on: TODAY,
      proposal: PICNIC,
      revision: 1,
      digest: FIRST.digest,
      acceptance: must(readAcceptance(text)),
    });
  });

  test('is dated between the offer and the last day it is valid, and not after today', () => {
    const dated = (on: string, today = '2027-05-02') =>
      taken(signed(FIRST, {}, day(on)), { today: day(today) });
    expect(['2027-04-01', '2027-04-30'].map((on) => dated(on))).toEqual(['taken', 'taken']);
    expect(dated('2027-03-31')).toBe(
      'it is dated Wednesday, March 31, 2027, before the offer of Thursday, April 1, 2027 — ask the client to accept again',
    );
    expect(dated('2027-05-01')).toContain(
      'the offer was valid until Friday, April 30, 2027, but it is dated Saturday, May 1, 2027',
    );
    expect(dated('2027-04-20', '2027-04-20')).toBe('taken');
    expect(dated('2027-04-21', '2027-04-20')).toContain(
      'it is dated Wednesday, April 21, 2027, and today is Tuesday, April 20, 2027',
    );
  });

  test('names the total that the terms give, to the cent', () => {
    // 40 × 40.00 and 7 %.
    expect(signed(FIRST).total).toBe('1712.00');
    expect(taken(resealed(signed(FIRST), { total: '1712.01' }))).toBe(
      'its total is $1,712.01, but by the offer’s terms it is $1,712.00 — ask the client to accept again from the page',
    );
    expect(taken(resealed(signed(FIRST), { total: '1711.99' }))).toContain('its total is $1,711.99');
  });

  test('chooses what the terms and the client may', () => {
    expect(taken(signed(FIRST, { guests: sampleGuests(40, { staff: 3 }) }))).toBe(
      'its choice does not fit the offer at guests.staff: The caterer sets the number of crew meals: 2, not 3 — ask the client to choose again',
    );
    expect(taken(resealed(signed(FIRST), { choice: { ...CHOICE, package: 'brunch' } }))).toContain(
      'its choice does not fit the offer at package',
    );
  });

  test('takes off a need that was proposed only where somebody has asked', () => {
    const fewer = signed(FIRST, { needs: {} });
    expect(taken(fewer)).toBe(
      'it drops the need proposed for vegan (2 guests), so nothing would be cooked for them — ask the client; if it is right, accept it with --drop-needs',
    );
    expect(taken(fewer, { drop: true })).toBe('taken');
    expect(takeAcceptance(paperBook([FIRST], []), JSON.stringify(fewer), TODAY).ok).toBe(false);
    expect(taken(signed(FIRST, { needs: { vegan: 1, milk: 1 } }))).toBe('taken');
  });

  test('altered by one letter is refused', () => {
    expect(taken({ ...signed(FIRST), name: 'M' })).toContain('was altered or damaged');
    expect(takeAcceptance(paperBook([FIRST], []), 'Yes, please', TODAY).ok).toBe(false);
  });
});

describe('the offer that an acceptance names', () => {
  const second = paperOffer(CHOICE, { revision: 2, letter: 'Dear all,' });

  test('is the newest, with its own digest', () => {
    expect(taken(signed(second), { offers: [FIRST, second] })).toBe('taken');
    expect(taken(signed(FIRST), { offers: [FIRST, second] })).toBe(
      'it accepts revision 1 of quarry-picnic, which revision 2 has replaced — send the client the page again; it shows the latest revision',
    );
    const third = paperOffer(CHOICE, { revision: 3, letter: 'Dear everybody,' });
    expect(taken(signed(second), { offers: [FIRST, second, third] })).toContain(
      'which revision 3 has replaced',
    );
    expect(taken(signed(third), { offers: [FIRST, second, third] })).toBe('taken');
    expect(taken(resealed(signed(FIRST), { revision: 2 }), { offers: [FIRST, second] })).toContain(
      'revision 2 of quarry-picnic, as it stands in this file, was never issued here',
    );
    expect(taken(resealed(signed(FIRST), { revision: 3 }))).toContain('revision 3 of quarry-picnic');
    expect(taken(resealed(signed(FIRST), { proposal: 'gale' }))).toContain('revision 1 of gale');
  });

  test('stands: it is neither accepted, withdrawn, held back nor changed', () => {
    const withdrawn = { proposals: new Map([[PICNIC, { id: PICNIC, withdrawn: true }]]) };
    expect(taken(signed(FIRST), { more: withdrawn })).toContain('quarry-picnic was withdrawn');
    const open = { proposals: new Map([[PICNIC, { id: PICNIC, withdrawn: false }]]) };
    expect(taken(signed(FIRST), { more: open })).toBe('taken');
    const unread = { held: new Map([[`proposal/${PICNIC}`, 'its date is none']]) };
    expect(taken(signed(FIRST), { more: unread })).toContain(
      'the proposal quarry-picnic can’t be read (its date is none), so there is no telling whether it was withdrawn',
    );
    expect(taken(signed(FIRST), { more: { ...unread, ...open } })).toBe('taken');
    const held = { held: new Map([[`offer/${PICNIC}-r2`, 'it is no JSON']]) };
    expect(taken(signed(FIRST), { more: held })).toContain('quarry-picnic-r2 can’t be used: it is no JSON');
    const others = { held: new Map([['offer/quarry-r2', 'it is no JSON']]) };
    expect(taken(signed(FIRST), { more: others })).toBe('taken');
    const accepted = { events: new Map([[PICNIC, { id: PICNIC, facts: [acceptedFact(FIRST)] }]]) };
    expect(taken(signed(FIRST), { more: accepted })).toContain('quarry-picnic has been accepted already');
    const altered = { ...FIRST, occasion: 'Wedding' };
    expect(taken(signed(FIRST), { offers: [altered] })).toContain('was changed after it was issued');
  });
});

describe('an offer as it was issued', () => {
  const sample = (total: string) =>
    paperOffer(CHOICE, {
      samples: [
        { choice: CHOICE, total: '1712.00' },
        { choice: CHOICE, total },
      ],
    });

  test('gives each of its sample totals again, whichever of them it is', () => {
    expect(offerProblem(sample('1712.00'))).toBeUndefined();
    expect(offerProblem(sample('1712.01'))?.what).toBe(
      'offer quarry-picnic revision 1 was issued with a total of $1,712.01, but it now comes to $1,712.00',
    );
    const unpriced = { ...CHOICE, package: 'brunch' };
    const offer = paperOffer(CHOICE, { samples: [{ choice: unpriced, total: '1.00' }] });
    expect(offerProblem(offer)?.what).toContain(
      'but it can’t be priced now: there is no package "brunch" in these terms',
    );
  });

  test('has a digest of all that it says but itself, and its beginning for paper', () => {
    expect(digestOfRecord({ b: 1, a: [2], digest: 'x' })).toBe(digestOfRecord({ a: [2], b: 1 }));
    expect(digestOfRecord({ a: [2], b: 2 })).not.toBe(digestOfRecord({ a: [2], b: 1 }));
    expect(shortDigest('3f9a02c471be5555')).toBe('3f9a 02c4 71be');
  });
});

describe('a count change', () => {
  const guests = sampleGuests(40, { staff: 2, vendors: 1 });
  const { offer, status, facts } = picnic(guests, [
    guaranteeFact(guests, '2027-05-01', { needs: { vegan: 2, milk: 1 } }),
  ]);
  const change = (counts: Partial<Pick<Choice, 'guests' | 'needs' | 'mains'>>, of = offer.digest) =>
    makeCountChange(
      { guests, needs: { vegan: 2, milk: 1 }, mains: {}, ...counts },
      { event: PICNIC, offer: of, made: TODAY, name: 'N', note: '' },
    );
  const asked = (counts: Parameters<typeof change>[0], dropNeeds = false, of = offer.digest) =>
    askedBy(change(counts, of), { offer, status, facts }, { dropNeeds });

  test('asks for people, needs and mains as they are written, and leaves the crew alone', () => {
    const { staff: _, ...people } = guests;
    expect(must(asked({ needs: { vegan: 3, milk: 1, kiwi: 1 } }))).toEqual({
      adults: people.adults,
      children: people.children,
      vendors: people.vendors,
      needs: { vegan: 3, milk: 1, kiwi: 1 },
      needsAsWritten: true,
      mains: {},
    });
    const without = makeCountChange(
      { guests, needs: {}, mains: {} },
      { event: PICNIC, offer: '', made: TODAY, name: 'N', note: '' },
    );
    expect(without).not.toHaveProperty('withoutNeeds');
  });

  test('is refused for another offer, for what a client may not, and for a need taken off unasked', () => {
    const why = (...args: Parameters<typeof asked>) => {
      const read = asked(...args);
      return read.ok ? read.value.needs : inWords(read.what);
    };
    expect(why({}, false, 'f'.repeat(64))).toBe(
      'this count change is for another offer than quarry-picnic accepted',
    );
    expect(why({ guests: sampleGuests(40, { staff: 9 }) })).toBe(
      'it does not fit the offer at guests.staff: The caterer sets the number of crew meals: 2, not 9',
    );
    expect(why({ needs: { vegan: 2 } })).toBe(
      'it drops the need on record for milk (1 guest), so nothing would be cooked for them',
    );
    expect(why({ needs: { vegan: 2 } }, true)).toEqual({ vegan: 2, milk: 0 });
    expect(why({ needs: { Vegan: 2, milk: 1 } })).toEqual({ vegan: 0, Vegan: 2, milk: 1 });
  });
});
