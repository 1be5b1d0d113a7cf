import type { Book } from '../../../src/book/book.ts';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import type { Guests } from '../../../src/engine/quote/counts.ts';
import type { Terms } from '../../../src/engine/quote/terms.ts';
import { makeAcceptance } from '../../../src/offers/answers/make-acceptance.ts';
import { digestOfRecord } from '../../../src/offers/digest.ts';
import { eventStatus } from '../../../src/offers/event/status.ts';
import type { AcceptedFact, EventFact } from '../../../src/schema/event-fact.ts';
import type { Offer } from '../../../src/schema/offer.ts';
import { day } from '../plan/builders.ts';
import { sampleChoice, sampleCourse, sampleDish, samplePackage, sampleTerms } from '../quote/sample-terms.ts';

export const PICNIC = 'quarry-picnic';
export const ISSUED = day('2027-04-01');
export const ACCEPTED = day('2027-04-05');
/** A week before it the count can fall for the last time. */
export const DATE = day('2027-05-15');

/** A buffet at 40.00 a guest, half of it for children, and a plated supper with two mains; 7 % tax on both. */
export const TERMS = sampleTerms({
  packages: [
    samplePackage({ tiers: [{ from: 1, to: 500, perHead: '40.00' }] }),
    samplePackage({
      id: 'supper',
      name: 'Supper',
      courses: [
        sampleCourse({
          name: 'Main',
          choose: null,
          eachGuest: true,
          dishes: [
            sampleDish({ recipe: 'hake', name: 'Hake' }),
            sampleDish({ recipe: 'squash', name: 'Squash' }),
          ],
        }),
      ],
    }),
  ],
  payments: [
    { of: 'rate', rate: '25 %', due: 'accepted' },
    { of: 'balance', due: 7 },
  ],
});

/** An offer on paper, with no files behind it. */
export function paperOffer(proposed: Choice, change: Partial<Offer> = {}, terms: Terms = TERMS): Offer {
  const offer = {
    version: 1 as const,
    kind: 'offer' as const,
    proposal: PICNIC,
    revision: 1,
    issued: ISSUED,
    link: 'a'.repeat(26),
    kitchen: {
      name: 'Ruddock Kitchen',
      locale: 'en-US',
      measures: 'us' as const,
      paper: 'letter' as const,
      accent: '#335577',
      allergenLaws: ['us' as const],
      timeZone: 'UTC',
    },
    client: { name: 'Nobody' },
    occasion: 'Picnic',
    date: DATE,
    serveAt: '18:00',
    placeName: 'The quarry',
    venue: {},
    validUntil: day('2027-04-30'),
    guests: proposed.guests,
    needs: proposed.needs,
    letter: '',
    legal: '',
    terms,
    proposed,
    stories: {},
    samples: [],
    notices: [],
    ...change,
  };
  return { ...offer, digest: digestOfRecord(offer) } as Offer;
}

/** The acceptance of an offer on the day of its acceptance, with the choice given. */
export function acceptedFact(offer: Offer, choice: Choice = offer.proposed): AcceptedFact {
  const signature = { name: 'N', email: 'n@quarry.example', note: '', accepted: ACCEPTED };
  const acceptance = makeAcceptance(offer, choice, signature);
  const { proposal, revision, digest } = offer;
  return { version: 1, kind: 'accepted', on: ACCEPTED, proposal, revision, digest, acceptance };
}

/** What the functions of `offers/event` read of a Book: offers, events, and what is held back. */
export function paperBook(offers: readonly Offer[], facts: readonly EventFact[], change: object = {}): Book {
  const book: Pick<Book, 'offers' | 'events' | 'held' | 'proposals'> = {
    offers: new Map([[PICNIC, [...offers]]]),
    events: facts.length === 0 ? new Map() : new Map([[PICNIC, { id: PICNIC, facts }]]),
    held: new Map(),
    proposals: new Map(),
  };
  return { ...book, kitchen: { capacity: {}, locale: 'en-US' }, ...change } as Book;
}

/** A picnic for these guests as it stands after some facts, besides its acceptance. */
export function picnic(guests: Guests, facts: readonly EventFact[] = [], change: Partial<Choice> = {}) {
  const offer = paperOffer(sampleChoice(guests, change));
  const all = [acceptedFact(offer), ...facts];
  return { offer, facts: all, book: paperBook([offer], all), status: eventStatus(offer, all) };
}

export const guaranteeFact = (
  guests: Guests,
  on = '2027-05-01',
  facts: Partial<Extract<EventFact, { kind: 'guarantee' }>> = {},
): EventFact => ({ version: 1, kind: 'guarantee', on: day(on), guests, needs: {}, mains: {}, ...facts });

export const paymentFact = (amount: string, on: string, method?: string): EventFact => ({
  version: 1,
  kind: 'payment',
  on: day(on),
  received: { amount, on: day(on), ...(method === undefined ? {} : { method }) },
});

export const confirmedFact = (amount?: string, on = '2027-04-10'): EventFact => ({
  version: 1,
  kind: 'confirmed',
  on: day(on),
  ...(amount === undefined ? {} : { received: { amount, on: day(on) } }),
});

export const postponedFact = (to: string | null, hold = false): EventFact => ({
  version: 1,
  kind: 'postponed',
  on: day('2027-04-12'),
  from: DATE,
  to: to === null ? null : day(to),
  hold,
});

export const servedFact = (guests: Guests): EventFact => ({ version: 1, kind: 'served', on: DATE, guests });

export const cancelledFact: EventFact = { version: 1, kind: 'cancelled', on: day('2027-04-20') };
