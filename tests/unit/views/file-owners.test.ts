import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { keptOwners } from '../../../src/build/kept-owners.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { offerProblem } from '../../../src/offers/check-offer.ts';
import { siteOf } from '../../../src/views/site-of.ts';

const fixture = fileURLToPath(new URL('../../fixtures/version-1/', import.meta.url));
const { book } = await readBook(join(fixture, 'content'), offerProblem);
const accepted = book!.offers.get('harbour-watch')![0]!.digest;
const event = 'private/kitchen/events/harbour-watch/prep-plan.json';

describe('whose a file of the kitchen’s side is', () => {
  test('an event’s is its accepted offer’s, a day’s that of every event it works for', async () => {
    const { part } = siteOf(book!, null, '2027-05-20' as Day);
    const { pages, prints, files } = await part!.make();
    const of = new Map([...pages, ...prints, ...files].map((each) => [each.file, each.of]));
    expect(of.get(event)).toEqual([accepted]);
    expect(of.get('private/kitchen/days/2027-05-29/index.html')).toEqual([accepted]);
    expect(of.get('private/kitchen/index.html')).toBeUndefined();
  });

  test('after its day it stays for that offer alone, and the days stay for any offer of this kitchen', () => {
    const { stays } = siteOf(book!, null, '2027-06-20' as Day);
    expect(stays!(event)).toEqual(new Set([accepted]));
    expect(stays!('private/kitchen/events/another/prep-plan.json')).toBeUndefined();
    expect(stays!('private/kitchen/days/2027-05-29/index.html')).toContain(accepted);
    expect(stays!('private/kitchen/days/2027-06-29/index.html')).toBeUndefined();
    expect(stays!('public/proposals/x/index.html')).toBeUndefined();
  });

  test('in an output of an earlier Salver it is told by the plan beside it', () => {
    expect(keptOwners(join(fixture, 'out'), event)).toEqual([accepted]);
    expect(keptOwners(join(fixture, 'out'), 'private/kitchen/days/2027-05-29/index.html')).toBeUndefined();
  });
});
