import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readBook } from '../../../src/check/read-book.ts';
import { eventFactSchema } from '../../../src/schema/event-fact.ts';
import { EVENT, supperKitchen } from './supper-kitchen.ts';

const guests = { adults: 84, children: 6, vendors: 4, staff: 9 };

/** Files of version 1 as they were first written; each must be read for ever. */
const VERSION_1 = [
  { version: 1, kind: 'confirmed', on: '2027-04-02', received: { amount: '1008.00', on: '2027-04-02' } },
  { version: 1, kind: 'confirmed', on: '2027-04-02' },
  {
    version: 1,
    kind: 'payment',
    on: '2027-04-02',
    received: { amount: '5.00', on: '2027-04-01', method: 'cash' },
  },
  {
    version: 1,
    kind: 'guarantee',
    on: '2027-04-02',
    guests,
    needs: { vegan: 2 },
    mains: { Main: { a: 90 } },
  },
  { version: 1, kind: 'guarantee', on: '2027-04-02', guests, needs: {}, mains: {}, belowFloor: true },
  { version: 1, kind: 'served', on: '2027-05-16', guests },
  {
    version: 1,
    kind: 'substitution',
    on: '2027-04-02',
    what: 'dish',
    from: 'a',
    to: 'b',
    perGuest: '1 serving per guest',
    contains: ['milk'],
    mayContain: [],
    without: ['egg'],
    dietsLost: ['vegan'],
    tell: ['B is served instead of A.'],
  },
  { version: 1, kind: 'postponed', on: '2027-04-02', from: '2027-05-15', to: null, hold: false },
  { version: 1, kind: 'postponed', on: '2027-04-02', from: '2027-05-15', to: '2027-06-12', hold: true },
  { version: 1, kind: 'cancelled', on: '2027-04-02', reason: 'The hall burnt down' },
] as const;

describe('facts of an event', () => {
  test.each(VERSION_1)('of version 1 are read as written: $kind', (fact) => {
    expect(eventFactSchema.parse(fact)).toEqual(fact);
  });

  test('of an unknown kind, another version or with an unknown entry are refused', () => {
    const [, , , guarantee] = VERSION_1;
    for (const wrong of [
      { ...guarantee, kind: 'guess' },
      { ...guarantee, version: 2 },
      { ...guarantee, more: 1 },
      { ...guarantee, guests: { ...guests, adults: 1.5 } },
      { ...guarantee, on: '2027-02-30' },
    ])
      expect(eventFactSchema.safeParse(wrong).success).toBe(false);
  });

  test('hold their event back with a sentence where their kind is not known', async () => {
    const dir = await supperKitchen();
    const fact = { version: 1, kind: 'wager', on: '2027-05-01' };
    writeFileSync(join(dir, 'events', EVENT, '003-wager.json'), JSON.stringify(fact));
    const { book, findings } = await readBook(dir);
    expect(book?.events.has(EVENT)).toBe(false);
    expect(findings.map(({ what }) => what)).toContain(
      'kind is not as it was written: this version of Salver does not know this kind of fact; a newer one may have written it',
    );
  });
});
