import { describe, expect, test } from 'vitest';
import type { Choice } from '../../../src/engine/quote/choice.ts';
import type { Terms } from '../../../src/engine/quote/terms.ts';
import { acceptanceSchema } from '../../../src/schema/acceptance.ts';
import { eventFactSchema } from '../../../src/schema/event-fact.ts';
import { termsSchema } from '../../../src/schema/terms.ts';

const choice: Choice = {
  package: 'supper',
  guests: { adults: 40, children: 0, vendors: 2, staff: 0 },
  courses: { Mains: ['lentil-soup'] },
  mains: { 'Main course': { 'lentil-soup': 40 } },
  addOns: { 'extra-hour': 1.5 },
  needs: { vegan: 2 },
};

const acceptance = {
  version: 1,
  kind: 'acceptance',
  proposal: 'gale',
  revision: 1,
  offer: 'a'.repeat(64),
  accepted: '2027-04-20',
  choice,
  total: '1234.50',
  name: 'Tamsin Gale',
  email: 'tamsin@example.org',
  note: 'Two lines\nare fine here.',
  agreed: true,
  digest: 'b'.repeat(64),
};

/** Terms with every field there is, so that the schema cannot lack one. */
const terms: Terms = {
  version: 1,
  currency: 'USD',
  locale: 'en-US',
  taxBy: 'invoice',
  place: {
    id: 'hill-town',
    name: 'Hill Town',
    taxIncluded: false,
    tax: {
      food: '7 %',
      drink: '7 %',
      'service charge': '0 %',
      rental: '6.25 %',
      labour: '0 %',
      delivery: '0 %',
    },
  },
  exempt: false,
  eventDate: '2027-05-15' as Terms['eventDate'],
  packages: [
    {
      id: 'supper',
      name: 'Supper',
      style: 'buffet',
      tiers: [{ from: 20, to: null, perHead: '30.125' }],
      neverLessInAll: true,
      tierCounts: { adults: '1', children: '1/2' },
      child: { rate: '50 %' },
      vendor: { price: '24.00' },
      minimumGuests: 20,
      minimumCounts: { adults: '1' },
      minimumSpend: { amount: '500.00', base: ['food'], class: 'food' },
      hours: '5 hours',
      courses: [
        {
          name: 'Mains',
          choose: 1,
          eachGuest: false,
          dishes: [
            {
              recipe: 'lentil-soup',
              name: 'Lentil soup',
              perGuest: '8 fl oz per guest',
              counts: { adults: '1' },
              marks: ['vegan'],
              contains: ['celery'],
              mayContain: [],
              supplement: '1.50',
            },
          ],
        },
      ],
      addOns: ['extra-hour'],
    },
  ],
  addOns: [
    {
      id: 'extra-hour',
      name: 'Extra hour',
      class: 'labour',
      price: '240.00',
      per: 'guests',
      guests: 50,
      counts: {},
    },
  ],
  staff: [
    {
      role: 'server',
      name: 'Servers',
      rate: '38.00',
      hours: '5.5',
      one: 1,
      per: 30,
      counts: { adults: '1' },
      atLeast: 2,
      packages: ['supper'],
    },
  ],
  delivery: { label: 'Delivery', price: '85.00' },
  discount: { label: 'Early booking', rate: '5 %', base: ['food'] },
  serviceCharge: { label: 'Service charge', rate: '20 %', base: ['food', 'drink'], afterDiscount: true },
  minimumSpend: null,
  payments: [
    { of: 'rate', rate: '30 %', due: 'accepted' },
    { of: 'amount', amount: '500.00', due: 30 },
    { of: 'balance', due: -14 },
  ],
  guarantee: { daysBefore: 7, floorRate: '90 %' },
};

describe('the forms of what Salver writes', () => {
  test('terms with every field are read back as they are', () => {
    expect(termsSchema.parse(JSON.parse(JSON.stringify(terms)))).toEqual(terms);
  });

  test('an acceptance is read back as it is', () => {
    expect(acceptanceSchema.parse(JSON.parse(JSON.stringify(acceptance)))).toEqual(acceptance);
  });

  test.each([
    ['another version', { version: 2 }],
    ['a total that is a number', { total: 1234.5 }],
    ['a total with an exponent', { total: '1e3' }],
    ['a date that does not exist', { accepted: '2027-02-30' }],
    ['a name of two lines, which could forge a mail’s header', { name: 'Tamsin\nBcc: all@example.org' }],
    ['no agreement', { agreed: false }],
    ['a digest in capitals', { digest: 'B'.repeat(64) }],
    ['a proposal that leads out of its folder', { proposal: '../gale' }],
    ['half a guest', { choice: { ...choice, guests: { ...choice.guests, adults: 40.5 } } }],
    ['more guests than any event has', { choice: { ...choice, guests: { ...choice.guests, adults: 1e9 } } }],
    ['a field nobody asked for', { cost: '9.00' }],
    ['a note without end', { note: 'x'.repeat(4001) }],
  ])('an acceptance with %s is refused', (_what, change) => {
    expect(acceptanceSchema.safeParse({ ...acceptance, ...change }).success).toBe(false);
  });

  test('facts are told apart by their kind and read back as they are', () => {
    const received = { amount: '370.35', on: '2027-04-22', method: 'transfer' };
    const facts = [
      {
        version: 1,
        kind: 'accepted',
        on: '2027-04-20',
        proposal: 'gale',
        revision: 1,
        digest: 'a'.repeat(64),
        acceptance,
      },
      { version: 1, kind: 'confirmed', on: '2027-04-22', received },
      { version: 1, kind: 'payment', on: '2027-05-02', received },
    ];
    for (const fact of facts) expect(eventFactSchema.parse(fact)).toEqual(fact);
    expect(eventFactSchema.safeParse({ version: 1, kind: 'payment', on: '2027-04-22' }).success).toBe(false);
  });
});
