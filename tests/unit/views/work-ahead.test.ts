import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { projectDir } from '../../../src/build/project-dir.ts';
import { readBook } from '../../../src/check/read-book.ts';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import { explain } from '../../../src/exports/explanation.ts';
import { withFact, withFacts } from '../../../src/offers/event/current-event.ts';
import { eventSide } from '../../../src/views/kitchen/event-side.ts';
import { explainedHours } from '../../../src/views/kitchen/explained-hours.ts';
import { plannedTogether } from '../../../src/views/kitchen/schedule-for.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

// The demo’s supper with one cook on its day, from 10:00: more than that cook has time for.
const SUPPER = 'weir-crew-supper';
const TODAY = '2027-04-26' as Day;
const [FRIDAY, SATURDAY] = ['2027-06-04' as Day, '2027-06-05' as Day];
const SLAW = 'cabbage-apple-slaw';
// The minute follows from all that the demo cooks on that day.
const WHY =
  /done a day early: on Saturday, June 5, 2027 work would have to start at 09:\d\d, but the crew starts at 10:00/;

const LABEL = {
  friday: ['Friday, June 4, 2027', 'Saturday, June 5, 2027'],
  saturday: ['Saturday, June 5, 2027', 'Sunday, June 6, 2027'],
};

let demo: Book;
let full: Book;
beforeAll(async () => {
  demo = (await readBook(join(projectDir, 'content'))).book!;
  full = withCooks(demo, 1);
});

function withCooks(book: Book, people: number): Book {
  const supper = book.proposals.get(SUPPER)!;
  const cooks = { people, each: minutes(600), from: '10:00' };
  return { ...book, proposals: new Map(book.proposals).set(SUPPER, { ...supper, cooks }) };
}

const movedIn = (book: Book, today: Day) =>
  (plannedTogether(book, today).plans.get(SUPPER)?.input.earlier ?? []).map(({ recipe }) => recipe);

test('a day with room moves nothing', () => {
  expect(movedIn(demo, TODAY)).toEqual([]);
  expect(movedIn(withCooks(demo, 4), TODAY)).toEqual([]);
});

test('what has no room on its day is on the day before in the whole plan, with its reason', async () => {
  const side = await eventSide(full, SUPPER, TODAY);
  if (!side.ok) throw new Error(side.what);
  const { document } = side.value;
  expect(movedIn(full, TODAY)).toEqual([SLAW]);
  const on = (date: Day) => document.days.find((each) => each.date === date)?.tasks ?? [];
  expect(on(SATURDAY).filter(({ recipe }) => recipe === SLAW)).toEqual([]);
  const tasks = on(FRIDAY).filter(({ recipe }) => recipe === SLAW);
  expect(tasks.length).toBeGreaterThan(0);
  for (const { why } of tasks) expect(why).toMatch(WHY);
  // Nothing else says so, and what is done the day before anyway does not.
  expect(on(FRIDAY).filter(({ why, recipe }) => why?.includes('early') && recipe !== SLAW)).toEqual([]);
  const written = await eventSide(demo, SUPPER, TODAY);
  if (!written.ok) throw new Error(written.what);
  const labels = (of: typeof document) => of.labels.filter(({ dish }) => dish.startsWith('White cabbage'));
  expect(labels(document).length).toBeGreaterThan(0);
  // It keeps two days, the first included.
  for (const { madeOn, useBy } of labels(document)) expect([madeOn, useBy]).toEqual(LABEL.friday);
  for (const { madeOn, useBy } of labels(written.value.document))
    expect([madeOn, useBy]).toEqual(LABEL.saturday);
  const cabbage = (of: typeof side.value) =>
    of.plan.purchases.find(({ ingredient }) => ingredient.id === 'cabbage');
  expect([cabbage(side.value)?.neededOn, cabbage(written.value)?.neededOn]).toEqual([FRIDAY, SATURDAY]);
  const told = explain(document, SLAW, wordsIn('en-US'), explainedHours(full, SUPPER, TODAY));
  if (!told.ok) throw new Error(told.what);
  expect(told.value.flatMap(({ why }) => why).some((why) => WHY.test(why))).toBe(true);
  expect(document.findings.map(({ what }) => what).join()).not.toContain('work must start');
});

describe('what is moved', () => {
  test('is the same on every day on which it is asked', () => {
    for (const today of [FRIDAY, SATURDAY]) expect(movedIn(full, today)).toEqual([SLAW]);
  });

  test('stays done once its day is past, whatever is decided later', () => {
    const count = { kind: 'guarantee' as const, version: 1 as const, needs: {}, mains: {} };
    const guests = { adults: 20, children: 0, vendors: 0, staff: 0 };
    const of = (on: Day) => movedIn(withFact(full, SUPPER, { ...count, on, guests }), on);
    // Twenty guests are no work for a day before, but on Saturday the slaw is made.
    expect(of(FRIDAY)).toEqual([]);
    expect(of(SATURDAY)).toEqual([SLAW]);
  });

  test('is nothing where nobody knew of the event in time', () => {
    const acceptedOn = (on: Day) => {
      const [accepted, ...rest] = full.events.get(SUPPER)!.facts;
      return movedIn(withFacts(full, SUPPER, [{ ...accepted!, on } as never, ...rest]), on);
    };
    expect(acceptedOn(SATURDAY)).toEqual([]);
    // What is delivered for Saturday comes on Friday.
    expect(acceptedOn(FRIDAY)).toEqual([SLAW]);
  });
});
