import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/engine/calendar/day.ts';
import { guestList, guestListOf, isLate, listedCourses } from '../../../src/offers/guest-list/guest-list.ts';
import type { EventFact, GuestListFact } from '../../../src/schema/event-fact.ts';
import { day, must } from '../plan/builders.ts';
import { sampleGuests } from '../quote/sample-terms.ts';
import { ACCEPTED, cancelledFact, DATE, PICNIC, picnic, postponedFact } from './paper-event.ts';

const TODAY = day('2027-04-20');
const ROWS = 'name,table,main,need\nAda Fenn,1,hake,\nBert Rook,2,squash,vegan\n';

const supper = (...facts: EventFact[]) =>
  picnic(sampleGuests(2), facts, { package: 'supper', mains: { Main: { hake: 1, squash: 1 } } });

const listFact = (on: string, change: Partial<GuestListFact> = {}): GuestListFact => ({
  version: 1,
  kind: 'guest list',
  on: day(on),
  guests: [
    { name: 'Ada Fenn', table: '1', mains: { Main: 'hake' }, need: '' },
    { name: 'Bert Rook', table: '2', mains: { Main: 'squash' }, need: 'vegan' },
  ],
  ...change,
});

const swapped = (name?: string): EventFact => ({
  version: 1,
  kind: 'substitution',
  on: day('2027-04-12'),
  what: 'dish',
  from: 'hake',
  to: 'smoked-eel',
  ...(name === undefined ? {} : { name }),
  contains: [],
  mayContain: [],
  without: [],
  dietsLost: [],
  tell: [],
});

interface Asked {
  readonly csv?: string;
  readonly given?: string;
  readonly offer?: string;
  readonly today?: Day;
  readonly names?: Readonly<Record<string, string>>;
}

const take = (facts: EventFact[], { csv = ROWS, given, offer, today = TODAY, names = {} }: Asked = {}) => {
  const { book } = supper(...facts);
  const recipes = new Map(Object.entries(names).map(([id, name]) => [id, { name }]));
  return guestList(
    { ...book, recipes } as never,
    PICNIC,
    { csv, ...(given === undefined ? {} : { given: day(given) }), ...(offer === undefined ? {} : { offer }) },
    today,
  );
};
const why = (facts: EventFact[], asked?: Asked) => {
  const read = take(facts, asked);
  return read.ok ? 'taken' : { what: read.what, wayOut: read.wayOut };
};

describe('a guest list', () => {
  test('becomes the next fact, with the day it was given where that was earlier', () => {
    expect(must(take([]))).toStrictEqual({
      number: 2,
      fact: listFact('2027-04-20'),
      notes: [],
    });
    expect(must(take([], { given: '2027-04-18' })).fact.given).toBe('2027-04-18');
    expect('given' in must(take([], { given: '2027-04-20' })).fact).toBe(false);
    const [note] = must(take([], { csv: 'name,table,main\nAda,,hake\n' })).notes;
    expect(note).toEqual({ key: 'guests.no-table', values: { row: '2', name: 'Ada' } });
  });

  test('was given between the acceptance, or the last list, and today', () => {
    const taken = (facts: EventFact[], ...days: string[]) =>
      days.map((given) => take(facts, { csv: ROWS.replace('hake', 'squash'), given }).ok);
    expect(taken([], '2027-04-04', ACCEPTED, '2027-04-20', '2027-04-21')).toEqual([false, true, true, false]);
    // A list counts from the day the client gave it, not from the day it was written down.
    expect(taken([listFact('2027-04-15')], '2027-04-14', '2027-04-15')).toEqual([false, true]);
    const earlier = [listFact('2027-04-15', { given: day('2027-04-10') })];
    expect(taken(earlier, '2027-04-09', '2027-04-10')).toEqual([false, true]);
    expect(why([], { given: '2027-04-21' })).toEqual({
      what: 'this list can’t have been given on 2027-04-21',
      wayOut: 'give a day from 2027-04-05 to 2027-04-20',
    });
  });

  test('is taken for the offer accepted or for none named, and refused for another', () => {
    const { digest } = supper().offer;
    expect(take([], { offer: digest }).ok).toBe(true);
    expect(why([], { offer: 'another' })).toEqual({
      what: { key: 'answers.list-other-offer', values: { event: PICNIC } },
      wayOut: { key: 'answers.other-offer.way', values: {} },
    });
  });

  test('is taken on the event’s day and not after it, nor for what was canceled', () => {
    expect(take([], { today: DATE }).ok).toBe(true);
    expect(take([], { today: day('2027-05-16') }).ok).toBe(false);
    expect(take([cancelledFact]).ok).toBe(false);
    expect(take([postponedFact(null)]).ok).toBe(true);
  });

  test('that says what the last one says is refused; one letter more is another list', () => {
    const last = [listFact('2027-04-15')];
    expect(why(last)).toEqual({
      what: 'this list is the same as the last one',
      wayOut: 'nothing more to do',
    });
    for (const [from, to] of [
      ['Ada Fenn', 'Ada Fern'],
      ['Rook,2', 'Rook,3'],
      ['hake', 'squash'],
      ['vegan', 'vegetarian'],
    ] as const)
      expect(take(last, { csv: ROWS.replace(from, to) }).ok).toBe(true);
    const reversed = ['name,table,main,need', ...ROWS.trim().split('\n').slice(1).reverse()].join('\n');
    expect(take(last, { csv: reversed }).ok).toBe(true);
    // Only the last list counts, not one before it.
    expect(take([listFact('2027-04-14'), listFact('2027-04-15', { guests: [] })]).ok).toBe(true);
  });

  test('with rows that can’t be planned is refused with the first twenty, and how many more there are', () => {
    const csv = (rows: number) => `name,main\n${'Ada,soup\n'.repeat(rows)}`;
    const told = (rows: number) => why([], { csv: csv(rows) }) as { what: { key: string; values: object } };
    expect(told(20)).toMatchObject({
      what: { key: 'guests.problems' },
      wayOut: { key: 'guests.problems.way' },
    });
    expect(told(20).what.values).toMatchObject({ problems: { by: 'lines', list: { length: 20 } } });
    expect(told(22).what).toMatchObject({
      key: 'guests.problems-more',
      values: { n: '2', problems: { by: 'lines', list: { length: 20 } } },
    });
  });

  test('asks for the courses of which each guest takes one dish, and of a buffet for none', () => {
    const { offer, status } = supper();
    expect(listedCourses(offer, status).map(({ name }) => name)).toEqual(['Main']);
    const buffet = picnic(sampleGuests(2));
    expect(listedCourses(buffet.offer, buffet.status)).toEqual([]);
    const gone = { choice: { ...status.choice, package: 'gone' } };
    expect(listedCourses(offer, gone)).toEqual([]);
    const shared = {
      ...offer,
      terms: {
        ...offer.terms,
        packages: offer.terms.packages.map((each) => ({
          ...each,
          courses: each.courses.map((course) => ({ ...course, eachGuest: false })),
        })),
      },
    };
    expect(listedCourses(shared, status)).toEqual([]);
  });

  test('names a dish served instead of another by its new name, today’s too, or by the old one', () => {
    const mainOf = (written: string, facts: EventFact[], names?: Record<string, string>) => {
      const read = take(facts, { csv: `name,table,main\nAda,1,${written}\n`, ...(names ? { names } : {}) });
      return read.ok ? read.value.fact.guests[0]?.mains.Main : undefined;
    };
    const both = { 'smoked-eel': 'Eel, smoked' };
    for (const written of ['Hake', 'Smoked fish', '"Eel, smoked"'])
      expect(mainOf(written, [swapped('Smoked fish')], both)).toBe('hake');
    expect(mainOf('Squash', [swapped('Smoked fish')], both)).toBe('squash');
    // A fact from before names were kept goes by the recipe's name, or by its id in words where the recipe is gone.
    expect(mainOf('"Eel, smoked"', [swapped()], both)).toBe('hake');
    expect(mainOf('smoked eel', [swapped()])).toBe('hake');
    expect(mainOf('smoked eel', [swapped('Smoked fish')])).toBeUndefined();
    expect(mainOf('Smoked fish', [])).toBeUndefined();
  });

  test('that stands is the last one', () => {
    const [first, second] = [listFact('2027-04-14'), listFact('2027-04-15')];
    expect(guestListOf([first, second, cancelledFact])).toBe(second);
    expect(guestListOf([cancelledFact])).toBeUndefined();
  });

  test('is late from the day after the guarantee’s deadline, by the day it was given', () => {
    const deadline = day('2027-05-08');
    expect(isLate(listFact('2027-05-08'), { deadline })).toBe(false);
    expect(isLate(listFact('2027-05-09'), { deadline })).toBe(true);
    expect(isLate(listFact('2027-05-09', { given: day('2027-05-08') }), { deadline })).toBe(false);
    expect(isLate(listFact('2027-05-09'), { deadline: null })).toBe(false);
  });
});
