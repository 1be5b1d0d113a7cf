import { existsSync, linkSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { recordFact } from '../../../src/offers/event/record-fact.ts';
import { recordText } from '../../../src/offers/write-once.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { run } from '../../commands/run.ts';
import { instalmentText } from '../money/instalment-text.ts';
import { wholeSite } from '../views/whole-site.ts';
import { bookOf, changed, done, EVENT, factsIn, refusal, statusOf, supperKitchen } from './supper-kitchen.ts';

const day = (text: string) => text as Day;

async function kitchenFiles(dir: string, today: string) {
  const site = await wholeSite(await bookOf(dir), null, day(today));
  const files = [...site.pages, ...site.prints, ...site.files].map(({ file }) => file);
  const front = site.pages.find(({ file }) => file === 'private/kitchen/index.html')?.view;
  if (front?.kind !== 'kitchen') throw new Error('there is no front page');
  return { files: files.filter((file) => file.startsWith('private/')), front };
}

describe('two changes at once', () => {
  test('are both recorded, whatever their kinds', async () => {
    const dir = await supperKitchen();
    const both = await Promise.all([
      run(dir, 'guarantee', EVENT, '--guests', '90', '--today', '2027-05-01'),
      run(dir, 'payment', EVENT, '100.00', '--today', '2027-05-01'),
    ]);
    expect(both.map(({ code }) => code)).toEqual([0, 0]);
    expect(factsIn(dir).map(({ file }) => file.slice(0, 4))).toEqual(['001-', '002-', '003-', '004-']);
    const status = await statusOf(dir);
    expect(status.choice.guests.adults).toBe(90);
    expect(status.received).toHaveLength(2);
  });

  test('of one kind are all recorded before the deadline', async () => {
    const dir = await supperKitchen();
    const counts = [90, 91, 92];
    const all = await Promise.all(
      counts.map((guests) => run(dir, 'guarantee', EVENT, '--guests', `${guests}`, '--today', '2027-05-01')),
    );
    expect(all.map(({ code, err }) => [code, err])).toEqual(counts.map(() => [0, '']));
    const guaranteed = factsIn(dir).flatMap(({ fact }) =>
      fact.kind === 'guarantee' ? [(fact.guests as { adults: number }).adults] : [],
    );
    expect(guaranteed.sort()).toEqual(counts);
    expect(readdirSync(join(dir, 'events', EVENT)).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('and thirty more, of different kinds, get a number each', async () => {
    const dir = await supperKitchen();
    const on = day('2027-05-01');
    const facts = Array.from({ length: 30 }, (_, index): EventFact => {
      const received = { amount: `${index + 1}.00`, on };
      return index % 2 === 0
        ? { version: 1, kind: 'payment', on, received }
        : { version: 1, kind: 'confirmed', on, received };
    });
    await Promise.all(
      facts.map(async (fact) => {
        for (let number = 3; !(await recordFact(dir, EVENT, { number, fact })); ) number += 1;
      }),
    );
    const written = factsIn(dir).slice(2);
    expect(written.map(({ file }) => Number(file.slice(0, 3)))).toEqual(facts.map((_, index) => index + 3));
    const amounts = written.map(({ fact }) => Number((fact.received as { amount: string }).amount));
    expect(amounts.sort((a, b) => a - b)).toEqual(facts.map((_, index) => index + 1));
    expect((await statusOf(dir)).received).toHaveLength(31);
  });

  test('are checked again by the later one, which is refused where the earlier forbids it', async () => {
    const dir = await supperKitchen();
    const both = await Promise.all([
      run(dir, 'cancel', EVENT, '--today', '2027-05-01'),
      run(dir, 'postpone', EVENT, '--to', '2027-06-12', '--today', '2027-05-01'),
    ]);
    const cancelled = both[0].code;
    expect(cancelled).toBe(0);
    // Whichever was first: after the cancelling nothing more is moved, and before it the move stands.
    const kinds = factsIn(dir).map(({ fact }) => fact.kind);
    expect(kinds.at(-1)).toBe('cancelled');
    expect(both[1].code).toBe(kinds.includes('postponed') ? 0 : 1);
  });

  test('lose nothing where a writer died after claiming its number', async () => {
    const dir = await supperKitchen();
    const folder = join(dir, 'events', EVENT);
    const claimed = {
      version: 1,
      kind: 'payment',
      on: '2027-05-01',
      received: { amount: '75.00', on: '2027-05-01' },
    };
    writeFileSync(join(folder, '.dead.tmp'), recordText(claimed));
    linkSync(join(folder, '.dead.tmp'), join(folder, '.003'));
    await done(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '90');
    expect(existsSync(join(folder, '.003'))).toBe(false);
    const facts = readdirSync(folder).filter((name) => !name.startsWith('.'));
    expect(facts.sort().slice(2)).toEqual(['003-payment.json', '004-guarantee.json']);
    expect((await statusOf(dir)).received).toHaveLength(2);
  });

  test('never put a second fact under a number that is published', async () => {
    const dir = await supperKitchen();
    const fact = { version: 1, kind: 'cancelled', on: day('2027-05-01') } as const;
    expect(await recordFact(dir, EVENT, { number: 2, fact })).toBe(false);
    expect(readdirSync(join(dir, 'events', EVENT))).toEqual(['001-accepted.json', '002-confirmed.json']);
  });
});

describe('a cancelled event', () => {
  test('leaves every combined list and is shown apart, its history kept', async () => {
    const dir = await supperKitchen();
    const before = await kitchenFiles(dir, '2027-05-01');
    expect(before.front.events.map(({ id }) => id)).toEqual([EVENT]);
    expect(before.files.some((file) => file.includes('/days/'))).toBe(true);
    await done(dir, '2027-05-01', 'cancel', EVENT, '--reason', 'The hall burnt down');
    const { files, front } = await kitchenFiles(dir, '2027-05-01');
    expect(front.events).toEqual([]);
    expect(front.days).toEqual([]);
    expect(files).toEqual(['private/kitchen/index.html']);
    expect(front.apart).toMatchObject([
      { id: EVENT, state: 'cancelled', what: 'was set for Saturday, May 15, 2027, $1,008.00 received' },
    ]);
    expect(factsIn(dir).map(({ fact }) => fact.kind)).toEqual(['accepted', 'confirmed', 'cancelled']);
    expect(await refusal(dir, '2027-05-01', 'guarantee', EVENT, '--guests', '90')).toContain('is canceled');
    expect(await refusal(dir, '2027-05-01', 'plan', EVENT)).toContain('nothing is cooked for it');
    // The day it was set for has passed.
    expect((await kitchenFiles(dir, '2027-05-16')).front.apart).toEqual([]);
  });
});

describe('a moved event', () => {
  test('is planned on its new day at that day’s prices, and its payments follow', async () => {
    const dir = await supperKitchen();
    const said = await done(dir, '2027-05-01', 'postpone', EVENT, '--to', '2027-06-12', '--json');
    const { change, state } = JSON.parse(said);
    expect(state).toBe('confirmed');
    // Lamb costs 90.00 a box from 2027-06-01, and the buying day is 2027-06-09: 4 × 10.00 more.
    expect(change.foodCost).toEqual({ before: '400.00', after: '440.00', by: '+40.00' });
    expect(change.days.map(({ date, by }: { date: string; by: string }) => [date, by])).toEqual([
      ['2027-05-13', '−3 h 30 min'],
      ['2027-05-14', '−5 min'],
      // Fritters for 84 are 4.2 batches at 10 min, 42 min, and the peas 20 min.
      ['2027-05-15', '−1 h 2 min'],
      ['2027-06-10', '+3 h 30 min'],
      ['2027-06-11', '+5 min'],
      ['2027-06-12', '+1 h 2 min'],
    ]);
    const status = await statusOf(dir);
    expect(status.deadline).toBe('2027-06-05');
    expect(status.open.map(({ instalment, due }) => [instalmentText(instalment), due])).toEqual([
      ['balance 7 days before', '2027-06-05'],
    ]);
    const { front } = await kitchenFiles(dir, '2027-05-20');
    expect(front.events.map(({ dateText }) => dateText)).toEqual(['Saturday, June 12, 2027']);
    // The old day is free again.
    expect(await done(dir, '2027-05-20', 'guarantee', EVENT, '--guests', '101')).toContain(
      '2027-06-12 has 101',
    );
  });

  test('may have no day for a while, and is held until it is confirmed again', async () => {
    const dir = await supperKitchen();
    await done(dir, '2027-05-01', 'postpone', EVENT);
    const open = await statusOf(dir);
    expect(open).toMatchObject({ state: 'postponed', date: null, deadline: null });
    expect(open.open.at(-1)).toMatchObject({ instalment: { of: 'balance', due: 7 }, due: null });
    const { front, files } = await kitchenFiles(dir, '2027-05-02');
    expect([front.events, front.days, files.length]).toEqual([[], [], 1]);
    expect(front.apart).toMatchObject([{ state: 'postponed' }]);
    expect(await refusal(dir, '2027-05-02', 'confirm', EVENT)).toContain('postponed without a new date');
    await done(dir, '2027-05-02', 'postpone', EVENT, '--to', '2027-06-12', '--hold');
    expect((await statusOf(dir)).state).toBe('accepted');
    await done(dir, '2027-05-03', 'confirm', EVENT);
    const confirmed = await statusOf(dir);
    expect(confirmed.state).toBe('confirmed');
    // The deposit was in already and is not counted twice.
    expect(confirmed.received).toHaveLength(1);
  });

  test('is moved to a day to come, and to another one', async () => {
    const dir = await supperKitchen(changed('suppliers.yaml', 'Hill Farm', 'Hill farm'));
    expect(await refusal(dir, '2027-05-01', 'postpone', EVENT, '--to', '2027-04-30')).toContain('has passed');
    expect(await refusal(dir, '2027-05-01', 'postpone', EVENT, '--to', '2027-05-15')).toContain('already');
    expect(await refusal(dir, '2027-05-16', 'postpone', EVENT, '--to', '2027-06-15')).toContain('took place');
  });
});
