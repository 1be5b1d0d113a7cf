import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import type { CountChange } from '../../../src/schema/count-change.ts';
import { whyNotLater } from '../../../src/serve/judge-later-answer.ts';
import type { ProposalView } from '../../../src/views/client/proposal-view.ts';
import { clientSite } from '../../../src/views/client/site.ts';
import { bookOf, done, EVENT, factsIn, refusal, supperKitchen } from './supper-kitchen.ts';

const TODAY = '2027-05-01' as Day;

/** The supper with a need of two parts on record, which no form lists by itself. */
async function withCombinedNeed(): Promise<string> {
  const dir = await supperKitchen();
  await done(dir, '2027-04-20', 'guarantee', EVENT, '--guests', '84', '--need', 'vegan + tree nuts=1');
  return dir;
}

/** A count change of the event as it stands, with some of it said otherwise, and a file of it. */
async function changeOf(dir: string, change: Partial<CountChange>) {
  const found = currentEvent(await bookOf(dir), EVENT);
  if (!found.ok) throw new Error(found.what);
  const { offer, status } = found.value;
  const { withoutNeeds, guests, needs, mains } = { ...status.choice, ...change };
  const made = makeCountChange(
    { guests, needs, mains },
    {
      event: EVENT,
      offer: offer.digest,
      made: TODAY,
      name: 'Tamsin Pell',
      note: '',
      ...(withoutNeeds ? { withoutNeeds } : {}),
    },
  );
  const file = join(dir, 'count.json');
  writeFileSync(file, JSON.stringify(made));
  return { file, why: whyNotLater(made, offer, { digest: offer.digest, status }, TODAY) };
}

const NEEDS = { milk: 2, vegan: 4, 'vegan + tree nuts': 1 };
const PEOPLE = { adults: 84, children: 0, vendors: 0, staff: 0 };

describe('a need on record', () => {
  test('has a field in the page’s form, whatever words it was given in', async () => {
    const [page] = clientSite(await bookOf(await withCombinedNeed()), TODAY).pages;
    const { change } = (page!.view as ProposalView).answering;
    expect(change?.needs.map(({ label, value }) => [label, value])).toEqual([
      ['allergy: milk', '2'],
      ['vegan', '4'],
      ['vegetarian', ''],
      ['no gluten', ''],
      ['vegan + allergy: tree nuts', '1'],
    ]);
  });

  test('is named and asked for before a count change takes it off, by the receiver and by guarantee', async () => {
    const dir = await withCombinedNeed();
    const { 'vegan + tree nuts': _, ...fewer } = NEEDS;
    const unasked = await changeOf(dir, { needs: fewer });
    expect(unasked.why).toBe(
      'These counts leave out the need on record for vegan + tree nuts (1 guest). Please open the page again.',
    );
    const asked = await changeOf(dir, { needs: fewer, withoutNeeds: ['vegan + tree nuts'] });
    expect(asked.why).toBeUndefined();
    const before = factsIn(dir);
    expect(await refusal(dir, TODAY, 'guarantee', '--from', asked.file)).toContain(
      'it drops the need on record for vegan + tree nuts (1 guest), so nothing would be cooked for them — ask the client; if it is right, record it with --drop-needs',
    );
    expect(factsIn(dir)).toEqual(before);
    const said = await done(dir, TODAY, 'guarantee', '--from', asked.file, '--drop-needs');
    expect(said).toContain('  Guests with vegan + tree nuts: 0 (was 1)\n');
    expect(factsIn(dir).at(-1)?.fact.needs).toEqual(fewer);
  });

  test('set to nobody is taken off as well, while the same need in other letters is not', async () => {
    const dir = await withCombinedNeed();
    const zero = await changeOf(dir, { needs: { ...NEEDS, milk: 0 } });
    expect(zero.why).toContain('leave out the need on record for milk (2 guests)');
    const { milk, ...rest } = NEEDS;
    expect((await changeOf(dir, { needs: { ...rest, ' Milk': milk } })).why).toBeUndefined();
  });
});

describe('a count change says only what a client may', () => {
  test.each([
    ['crew meals', { ...PEOPLE, staff: 400 }, 'The caterer sets the number of crew meals: 0, not 400'],
    [
      'guests beyond any party',
      { ...PEOPLE, adults: 421 },
      'You can enter up to 420 guests here, and you entered 421',
    ],
    [
      'more vendors than guests',
      { ...PEOPLE, vendors: 85 },
      'That is 85 vendor meals for 84 guests at the table',
    ],
  ])('and is refused with %s, when it arrives and when it is taken in', async (_, guests, what) => {
    const dir = await supperKitchen();
    const mains = { Main: { 'lamb-stew': guests.adults - 21, 'pea-pot': 21 } };
    const { file, why } = await changeOf(dir, { guests, mains });
    expect(why).toContain(what);
    expect(await refusal(dir, TODAY, 'guarantee', '--from', file)).toContain(what);
    expect(factsIn(dir)).toHaveLength(2);
  });

  test('what it changes is named when it is taken in', async () => {
    const dir = await supperKitchen();
    const mains = { Main: { 'lamb-stew': 65, 'pea-pot': 21 } };
    const { file } = await changeOf(dir, { guests: { ...PEOPLE, adults: 86, vendors: 2 }, mains });
    const said = await done(dir, TODAY, 'guarantee', '--from', file);
    expect(said).toContain('  Adults: 86 (was 84)\n  Vendor meals: 2 (was 0)\n');
    expect(said).toContain('  Main: Lamb stew 65, Pea pot 21 (was Lamb stew 63, Pea pot 21)\n');
  });
});
