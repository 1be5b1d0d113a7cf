import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { eatenEstimate } from '../../../src/engine/learning/eaten.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { dishesSoFar } from '../../../src/offers/learned/dishes-so-far.ts';
import { type EatenDish, eatenOf, eatenSoFar } from '../../../src/offers/learned/eaten-so-far.ts';
import { portionProposal } from '../../../src/offers/learned/portion-proposals.ts';
import type { EventFact, LeftDish, LeftoversFact } from '../../../src/schema/event-fact.ts';
import { day, dish, must, recipe } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import { acceptedFact, paperOffer, postponedFact } from './paper-event.ts';

const left = (change: Partial<LeftDish> = {}): LeftDish => ({
  course: 'Main',
  recipe: 'hake',
  name: 'Hake',
  perGuest: '1 piece per guest',
  counted: '20',
  came: '20',
  planned: '20 piece',
  carried: '22 piece',
  back: '4 piece',
  cost: null,
  said: '4 pieces',
  ...change,
});

const leftFact = (dishes: LeftDish[], change: Partial<LeftoversFact> = {}): LeftoversFact => ({
  version: 1,
  kind: 'leftovers',
  on: day('2027-06-01'),
  plan: 'kept',
  package: 'supper',
  style: 'plated',
  came: sampleGuests(20),
  dishes,
  ...change,
});

interface Past {
  readonly id: string;
  readonly date: string;
  readonly facts: readonly EventFact[];
}

/** A Book of past suppers, in the order given. */
function bookOf(events: readonly Past[], change: object = {}): Book {
  const made = events.map(({ id, date, facts }) => {
    const offer = paperOffer(sampleChoice(sampleGuests(20), { package: 'supper' }), {
      proposal: id,
      date: day(date),
      occasion: `Supper ${id}`,
    });
    return { id, offer, facts: [acceptedFact(offer), ...facts] };
  });
  return {
    offers: new Map(made.map(({ id, offer }) => [id, [offer]])),
    events: new Map(made.map(({ id, facts }) => [id, { id, facts }])),
    held: new Map(),
    proposals: new Map(),
    recipes: new Map(),
    packages: new Map(),
    ...change,
  } as unknown as Book;
}

const past = (id: string, date: string, ...dishes: LeftDish[]): Past => ({
  id,
  date,
  facts: [leftFact(dishes)],
});
const HAKE_HERE = { recipe: 'hake', style: 'plated', packageId: 'supper', course: 'Main' } as const;

describe('dishes of events so far', () => {
  test('go by date, then event, with what each says of itself; events without leftovers have none', () => {
    const book = bookOf([
      past('c', '2027-05-20', left({ recipe: 'tart' }), left()),
      past('b', '2027-05-20', left()),
      past('a', '2027-06-02', left()),
      past('d', '2027-05-01', left()),
      { id: 'e', date: '2027-05-02', facts: [] },
    ]);
    const found = dishesSoFar(book);
    expect(found.map(({ event, date, dish: { recipe: id } }) => `${date} ${event} ${id}`)).toEqual([
      '2027-05-01 d hake',
      '2027-05-20 b hake',
      '2027-05-20 c tart',
      '2027-05-20 c hake',
      '2027-06-02 a hake',
    ]);
    expect(found[0]).toMatchObject({ occasion: 'Supper d', style: 'plated', packageId: 'supper' });
    expect(found[0]?.amounts.eaten.amount.toFraction()).toBe('18');
  });

  test('of an event that was postponed are none, and of one no longer there neither', () => {
    const facts = [leftFact([left()]), postponedFact(null)];
    expect(dishesSoFar(bookOf([{ id: 'a', date: '2027-05-01', facts }]))).toEqual([]);
    const moved = [postponedFact('2027-06-05'), leftFact([left()])];
    expect(dishesSoFar(bookOf([{ id: 'a', date: '2027-05-01', facts: moved }]))[0]?.date).toBe('2027-06-05');
    const lost = bookOf([past('a', '2027-05-01', left())], { offers: new Map() });
    expect(dishesSoFar(lost)).toEqual([]);
  });

  test('with an amount that is none fail, since their record was checked', () => {
    const book = bookOf([past('a', '2027-05-01', left({ back: 'a few' }))]);
    expect(() => dishesSoFar(book)).toThrow(/a checked record holds an amount that is none/);
  });
});

describe('what was eaten so far', () => {
  test('is for each guest who came, in the unit of the last time and under the last name', () => {
    const book = bookOf([
      past('a', '2027-05-01', left()),
      past('b', '2027-05-08', left({ name: 'Hake, fried', came: '10' })),
    ]);
    const eaten = eatenOf(book, HAKE_HERE);
    expect(eaten).toMatchObject({ ...HAKE_HERE, name: 'Hake, fried', unit: 'piece' });
    expect(eaten?.events.map(({ event }) => event)).toEqual(['a', 'b']);
    // 18 for 20, and 18 for 10.
    expect(eaten?.estimate.mean).toBeCloseTo(1.35, 12);
    expect(eaten?.estimate).toEqual(
      eatenEstimate(
        [
          { perGuest: 0.9, ranOut: false },
          { perGuest: 1.8, ranOut: false },
        ],
        0.9,
      ),
    );
  });

  test('is known of that dish in that place alone', () => {
    const book = bookOf([past('a', '2027-05-01', left())]);
    expect(eatenOf(book, HAKE_HERE)?.estimate.events).toBe(1);
    for (const other of [
      { recipe: 'tart' },
      { style: 'buffet' as const },
      { packageId: 'x' },
      { course: 'x' },
    ])
      expect(eatenOf(book, { ...HAKE_HERE, ...other })).toBeUndefined();
  });

  test('is asked before a day and of a season', () => {
    const book = bookOf([past('a', '2027-05-01', left()), past('b', '2027-06-08', left())]);
    const events = (soFar: Parameters<typeof eatenOf>[2]) =>
      eatenOf(book, HAKE_HERE, soFar)?.events.map(({ event }) => event);
    expect(events({ before: day('2027-06-08') })).toEqual(['a']);
    expect(events({ before: day('2027-06-09') })).toEqual(['a', 'b']);
    expect(events({ before: day('2027-05-01') })).toBeUndefined();
    expect(events({ season: { from: 6, to: 7 } })).toEqual(['b']);
    expect(events({ before: day('2027-06-08'), season: { from: 6, to: 6 } })).toBeUndefined();
    expect(events({ season: { from: 11, to: 5 } })).toEqual(['a']);
    expect(events({ season: { from: 6, to: 4 } })).toEqual(['b']);
    expect(events({ season: { from: 11, to: 4 } })).toBeUndefined();
    expect(eatenSoFar(book, { season: { from: 5, to: 5 } }).map(({ estimate }) => estimate.events)).toEqual([
      1,
    ]);
    expect(eatenSoFar(book, { season: { from: 1, to: 1 } })).toEqual([]);
  });

  test('ran out where nothing came back, or where somebody said so', () => {
    const ranOut = (change: Partial<LeftDish>) =>
      eatenOf(bookOf([past('a', '2027-05-01', left(change))]), HAKE_HERE)?.estimate.ranOut;
    expect(ranOut({})).toBe(0);
    expect(ranOut({ back: '0 piece' })).toBe(1);
    expect(ranOut({ ranOut: true })).toBe(1);
  });

  test('leaves out events to which nobody came, and those in a unit that the recipe no longer leads from', () => {
    const events = [
      past('a', '2027-05-01', left({ carried: '5 lb', back: '1 lb' })),
      past('b', '2027-05-08', left()),
    ];
    const counted = (book: Book) => eatenOf(book, HAKE_HERE)?.events.map(({ event }) => event);
    expect(counted(bookOf(events))).toEqual(['b']);
    const recipes = new Map([['hake', recipe('hake', ['10 pieces', '5 lb'], [])]]);
    const both = bookOf(events, { recipes });
    expect(counted(both)).toEqual(['a', 'b']);
    // 4 lb are 8 pieces, for 20.
    expect(eatenOf(both, HAKE_HERE)?.estimate.mean).toBeCloseTo((0.4 + 0.9) / 2, 12);
    const nobody = past('c', '2027-05-15', left({ came: '0' }));
    expect(counted(bookOf([...events, nobody]))).toEqual(['b']);
    expect(eatenOf(bookOf([nobody]), HAKE_HERE)).toBeUndefined();
    expect(eatenSoFar(bookOf([nobody]))).toEqual([]);
  });
});

describe('what events speak for', () => {
  const HAKE = recipe('hake', ['10 pieces', '5 lb'], []);
  const menu = (perGuest: string, of: Recipe = HAKE) => {
    const course = {
      name: 'Main',
      dishes: [dish(recipe('tart', '1 piece', []), '1 piece per guest'), dish(of, perGuest)],
    };
    return bookOf([], {
      packages: new Map([
        ['supper', { id: 'supper', style: 'plated', courses: [{ name: 'First', dishes: [] }, course] }],
      ]),
    });
  };
  const eaten = (
    perGuest: readonly number[],
    out: readonly number[] = [],
    change: Partial<EatenDish> = {},
  ) => ({
    ...HAKE_HERE,
    name: 'Hake',
    unit: 'piece',
    events: [],
    estimate: eatenEstimate(
      [
        ...perGuest.map((each) => ({ perGuest: each, ranOut: false })),
        ...out.map((each) => ({ perGuest: each, ranOut: true })),
      ],
      0.9,
    ),
    ...change,
  });

  test('is of the dish in its course and style; undefined where the menu no longer has it there', () => {
    const book = menu('1 piece per guest');
    expect(portionProposal(book, eaten([0.7]))).toMatchObject({ packageId: 'supper', course: 'Main' });
    for (const other of [
      { packageId: 'x' },
      { style: 'buffet' as const },
      { course: 'First' },
      { course: 'x' },
      { recipe: 'x' },
    ])
      expect(portionProposal(book, eaten([0.7], [], other))).toBeUndefined();
  });

  test('stays, with no weight, where units do not meet or no event tells anything', () => {
    const stays = { proposed: undefined, weight: 0 };
    expect(portionProposal(menu('1 piece per guest'), eaten([0.7], [], { unit: 'cup' }))).toMatchObject(
      stays,
    );
    expect(portionProposal(menu('1 piece per guest'), eaten([], [0.7]))).toMatchObject(stays);
    expect(portionProposal(menu('1 piece per guest'), eaten([], [1.6]))?.weight).toBeCloseTo(1 / 6, 12);
  });

  test('is written in the unit of the menu, whatever the events counted in', () => {
    const ofEight = (unit: string, perGuest: number) =>
      portionProposal(menu('8 oz per guest'), eaten([perGuest], [], { unit }))?.proposed;
    // 8 oz are a piece; 1.6 pieces eaten move it a sixth of the way, to 8.8 oz.
    expect(ofEight('oz', 12.8)).toEqual(must(parsePerGuest('9 oz per guest')));
    expect(ofEight('piece', 1.6)).toEqual(ofEight('oz', 12.8));
  });

  test('stays below where what was learned ends, by a finer step where the usual one would pass it', () => {
    // Mean 0.83 to 0.9265 at the most; five events go half of the way, to 0.915: 10 for 10 guests would be no change.
    const proposed = portionProposal(
      menu('1 piece per guest'),
      eaten([0.7, 0.77, 0.83, 0.89, 0.96]),
    )?.proposed;
    expect(proposed).toEqual(must(parsePerGuest('23 pieces per 25 guests')));
  });

  test('falls by events with some left alone: one at which it ran out adds no weight', () => {
    const of = (out: number[]) =>
      portionProposal(menu('1 piece per guest'), eaten([0.4, 0.5, 0.6], out))?.weight;
    expect(of([])).toBeCloseTo(3 / 8, 12);
    expect(of([0.3])).toBeCloseTo(3 / 8, 12);
    // Where it rises, an event at which it ran out speaks for that as well.
    expect(portionProposal(menu('1 piece per guest'), eaten([1.4, 1.5, 1.6], [1.2]))?.weight).toBeCloseTo(
      4 / 9,
      12,
    );
    // What was eaten is just what stands: nothing falls.
    expect(portionProposal(menu('1 piece per guest'), eaten([0.9, 1.1]))?.proposed).toBeUndefined();
  });
});
