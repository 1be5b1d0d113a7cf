import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import type { Guests } from '../../../src/engine/quote/counts.ts';
import type { PlanChangesDocument } from '../../../src/exports/form/changes.ts';
import { makeCountChange } from '../../../src/offers/answers/make-count-change.ts';
import { digestOfRecord } from '../../../src/offers/digest.ts';
import { currentEvent } from '../../../src/offers/event/current-event.ts';
import { choiceFor } from '../../../src/offers/event/status.ts';
import { plannedEvent } from '../../../src/views/kitchen/planned-event.ts';
import { fileWith } from '../../commands/accepted-kitchen.ts';
import { bookOf, done, EVENT, factsIn, refusal, statusOf, supperKitchen } from './supper-kitchen.ts';

describe('a guarantee that rises from 84 to 92', () => {
  test('changes dishes, batches, packs, hours and money as worked by hand', async () => {
    const dir = await supperKitchen();
    const said = await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '92', '--json');
    const { fact, change } = JSON.parse(said) as { fact: unknown; change: PlanChangesDocument };
    // 63 and 21 of 84 are 69 and 23 of 92.
    expect(fact).toMatchObject({
      kind: 'guarantee',
      on: '2027-05-01',
      guests: { adults: 92, children: 0 },
      mains: { Main: { 'lamb-stew': 69, 'pea-pot': 23 } },
    });
    expect(change.dishes).toEqual([
      { course: 'First', dish: 'Bean fritters', before: '84 pieces', after: '92 pieces', by: '+8 pieces' },
      { course: 'Main', dish: 'Lamb stew', before: '63 servings', after: '69 servings', by: '+6 servings' },
      { course: 'Main', dish: 'Pea pot', before: '21 servings', after: '23 servings', by: '+2 servings' },
    ]);
    // Stew in whole batches of ten: 63 and 69 servings are both 7, so it is not in the list. Fritters: 84 ÷ 20 = 4.2
    // and 92 ÷ 20 = 4.6 batches, each with 1 qt of yogurt. Peas: 2.1 and 2.3 batches.
    expect(change.batches.map(({ recipe, before, after }) => [recipe, before, after])).toEqual([
      ['Herb yogurt', '4.2', '4.6'],
      ['Bean fritters', '4.2', '4.6'],
      ['Pea pot', '2.1', '2.3'],
    ]);
    // Yogurt 4.2 qt and 4.6 qt: 2 gal both. Peas 10.5 lb and 11.5 lb: one sack both. Lamb 28 lb ÷ 80 % = 35 lb: 4
    // boxes both. Beans 2 lb a batch, 8.4 lb and 9.2 lb: 3 and 4 bags of 3 lb.
    expect(change.packs).toEqual([
      {
        ingredient: 'White beans',
        supplier: 'Hill Farm',
        pack: '3 lb bag',
        before: '3',
        after: '4',
        by: '+1',
      },
    ]);
    // 84 ÷ 20 up is 5 trays, and 92 ÷ 20 up is 5. Nothing else goes along.
    expect(change.packOut).toEqual([]);
    // Stew 7 × 30 min, yogurt 5 min, peas 20 min, and fritters 10 min a batch: 4.2 × 10 = 42 min, then 4.6 × 10 = 46.
    expect(change.handsOn).toEqual({ before: '4 h 37 min', after: '4 h 41 min', by: '+4 min' });
    // 84 × 40.00 and 92 × 40.00. Food: 2 × 16 + 4 × 80 + 30 and 3 or 4 × 6.
    expect(change.total).toEqual({ before: '3360.00', after: '3680.00', by: '+320.00' });
    expect(change.foodCost).toEqual({ before: '400.00', after: '406.00', by: '+6.00' });
    expect(change.late).toEqual([]);
  });

  test('adds a batch, a box and hours once it reaches them, and says what comes too late', async () => {
    const dir = await supperKitchen();
    // On the 14th the stew was braised the day before: 7 batches. 100 guests take 75 and 25: 8 batches.
    const said = await done(dir, '2027-05-14', 'guarantee', EVENT, '--guests', '100', '--json');
    const { change } = JSON.parse(said) as { change: PlanChangesDocument };
    expect(change.batches.find(({ recipe }) => recipe === 'Lamb stew')).toEqual({
      recipe: 'Lamb stew',
      before: '7',
      after: '8',
      by: '+1',
    });
    // Lamb: 32 lb ÷ 80 % = 40 lb are four boxes still. Yogurt 5 qt are 2 gal still. Beans 10 lb are 4 bags, not 3.
    expect(change.packs.map(({ pack, by }) => [pack, by])).toEqual([['3 lb bag', '+1']]);
    expect(change.days).toEqual([
      {
        date: '2027-05-13',
        dateText: 'Thursday, May 13, 2027',
        before: '3 h 30 min',
        after: '4 h',
        by: '+30 min',
      },
      // Fritters: 4.2 batches at 10 min, then 5; the peas take 20 min for any amount.
      {
        date: '2027-05-15',
        dateText: 'Saturday, May 15, 2027',
        before: '1 h 2 min',
        after: '1 h 10 min',
        by: '+8 min',
      },
    ]);
    // The lamb is braised on the 13th, so that the one order to the farm had to go out by the 12th.
    expect(change.late).toEqual([
      'Lamb stew: started on Thursday, May 13, 2027 for 7 batches: cook 1 batch more.',
      'White beans: Hill Farm took orders until Wednesday, May 12, 2027: buy 1 × 3 lb bag elsewhere, or ask.',
    ]);
    // 81 take the stew: 9 batches, 36 lb ÷ 80 % = 45 lb, which four boxes do not hold. Beans 10.6 lb: 4 bags still.
    const more = await done(
      dir,
      '2027-05-14',
      'guarantee',
      EVENT,
      '--guests',
      '106',
      '--take',
      'Main=lamb-stew:81,pea-pot:25',
      '--json',
    );
    expect((JSON.parse(more) as { change: PlanChangesDocument }).change.packs).toMatchObject([
      { ingredient: 'Lamb neck', pack: '10 lb box', before: '4', after: '5', by: '+1' },
    ]);
  });

  test('is on the event’s page as it was printed', async () => {
    const dir = await supperKitchen();
    const said = await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '92', '--json');
    const planned = await plannedEvent(await bookOf(dir), EVENT, '2027-05-01' as Day);
    if (!planned.ok || !planned.value.plan.ok) throw new Error('the event cannot be planned');
    const { lastChange, event } = planned.value.plan.value;
    expect(lastChange).toEqual(JSON.parse(said).change);
    expect(event.guarantee).toMatchObject({ until: '2027-05-08', floorGuests: 76, givenOn: '2027-05-01' });
  });
});

describe('a guarantee’s deadline and floor', () => {
  test('may fall on the day of the deadline, and only rise from the day after', async () => {
    const dir = await supperKitchen();
    await done(dir, '2027-05-08', 'guarantee', EVENT, '--guests', '80');
    expect(await refusal(dir, '2027-05-09', 'guarantee', EVENT, '--guests', '79')).toBe(
      'Can’t do that: the deadline of Saturday, May 8, 2027 has passed, so pell-supper can’t go below 80 guests at the table; 79 is fewer — keep 80 or more (or, if the client gave it in time, say when with --on); `served` records how many actually came, and the larger number is billed.',
    );
    await done(dir, '2027-05-09', 'guarantee', EVENT, '--guests', '81');
    // A count given before the last one cannot follow it.
    expect(
      await refusal(dir, '2027-05-09', 'guarantee', EVENT, '--guests', '79', '--on', '2027-05-07'),
    ).toContain('give 2027-05-09, the only day possible');
    // As many at the table, but a child for an adult: the bill would fall.
    expect(
      await refusal(dir, '2027-05-09', 'guarantee', EVENT, '--adults', '80', '--children', '1'),
    ).toContain('can’t go below 81 adults');
    expect((await statusOf(dir)).choice.guests.adults).toBe(81);
  });

  test('never go under the minimum of 90 %, up to whole guests, unless fewer eat and the floor is billed', async () => {
    const dir = await supperKitchen();
    // 84 × 90 % = 75.6.
    expect(await refusal(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '75')).toBe(
      'Can’t do that: pell-supper has a minimum of 76 guests at the table (90% of the 84 guests accepted), and 75 is fewer — give 76 or more, or add --below-floor to cook for 75 and bill 76.',
    );
    expect(factsIn(dir)).toHaveLength(2);
    await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '76');
    const said = await done(dir, '2027-05-02', 'guarantee', EVENT, '--guests', '60', '--below-floor');
    expect(said).toContain('Cooked for 60 guests at the table; the minimum of 76 is billed.');
    const status = await statusOf(dir);
    expect(status.choice.guests.adults).toBe(60);
    expect(status.billed.guests.adults).toBe(76);
    expect(status.total.amount.toFixed(2)).toBe('3040.00');
  });

  test('take needs and mains as the client gives them, and refuse mains that do not sum', async () => {
    const dir = await supperKitchen();
    await done(dir, '2027-05-01', 'guarantee', EVENT, '--need', 'vegan=6', '--need', 'milk=0');
    expect((await statusOf(dir)).choice.needs).toEqual({ vegan: 6 });
    expect(await refusal(dir, '2027-05-01', 'guarantee', EVENT, '--need', 'vegam=6')).toContain('vegam');
    expect(
      await refusal(dir, '2027-05-01', 'guarantee', EVENT, '--take', 'Main=lamb-stew:60,pea-pot:20'),
    ).toContain('The counts for Main must add up to 84, one for each guest: 4 too few');
  });

  test('warn where the day’s guests are more than the kitchen serves', async () => {
    const dir = await supperKitchen();
    expect(await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '101')).toContain(
      'Warning: 2027-05-15 has 101 guests over all its events, but the kitchen’s limit is 100 a day.',
    );
  });
});

describe('a count change from the client’s page', () => {
  const bySelf = { name: 'Tamsin Pell', note: '' };

  async function changeFor(dir: string, guests: Partial<Guests>, needs: Record<string, number>) {
    const found = currentEvent(await bookOf(dir), EVENT);
    if (!found.ok) throw new Error(found.what);
    const { offer, status } = found.value;
    const all = { ...status.choice.guests, ...guests };
    const choice = choiceFor(offer, { ...status.choice, needs }, all);
    const made = '2027-05-02' as Day;
    return makeCountChange(choice, { event: EVENT, offer: offer.digest, made, ...bySelf });
  }

  test('is taken in as the guarantee, with all its needs in the client’s words', async () => {
    const dir = await supperKitchen();
    const change = await changeFor(dir, { adults: 88 }, { milk: 2, vegan: 5, 'no raw onion': 1 });
    await done(dir, '2027-05-03', 'guarantee', '--from', fileWith(JSON.stringify(change)));
    expect((await statusOf(dir)).choice).toMatchObject({
      guests: { adults: 88 },
      needs: { milk: 2, vegan: 5, 'no raw onion': 1 },
      mains: { Main: { 'lamb-stew': 66, 'pea-pot': 22 } },
    });
  });

  test('counts by the day it was given where it is taken in after the deadline, and not by its own word', async () => {
    const dir = await supperKitchen();
    const file = fileWith(JSON.stringify(await changeFor(dir, { adults: 80 }, { milk: 2, vegan: 4 })));
    expect(await refusal(dir, '2027-05-09', 'guarantee', '--from', file)).toContain('the deadline of');
    await done(dir, '2027-05-09', 'guarantee', '--from', file, '--on', '2027-05-08');
    expect(factsIn(dir).at(-1)?.fact).toMatchObject({ on: '2027-05-09', given: '2027-05-08' });
  });

  test('is refused where it was altered, is for another offer or an event that is not there', async () => {
    const dir = await supperKitchen();
    const change = await changeFor(dir, { adults: 88 }, {});
    const altered = { ...change, guests: { ...change.guests, adults: 100 } };
    const sealed = (record: object) => JSON.stringify({ ...record, digest: digestOfRecord(record) });
    const bad: [string, string][] = [
      [JSON.stringify(altered), 'altered or damaged'],
      [sealed({ ...change, offer: 'f'.repeat(64) }), 'for another offer than pell-supper accepted'],
      [sealed({ ...change, event: 'pell-super' }), 'did you mean pell-supper?'],
      [sealed({ ...change, more: 1 }), 'not a count change that Salver knows'],
      ['{', 'it is not JSON'],
    ];
    for (const [text, sentence] of bad)
      expect(await refusal(dir, '2027-05-03', 'guarantee', '--from', fileWith(text))).toContain(sentence);
    expect(factsIn(dir)).toHaveLength(2);
  });
});
