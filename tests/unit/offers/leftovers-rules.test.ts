import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import type { CarriedDish } from '../../../src/engine/learning/carried-dish.ts';
import type { Parsed } from '../../../src/engine/parsed.ts';
import type { PriceList } from '../../../src/engine/purchase/price-list.ts';
import {
  carriedFood,
  eventThatWasServed,
  type LeftSaid,
  leftovers,
  leftoversOf,
} from '../../../src/offers/learned/leftovers.ts';
import { dishCalled, leftoversRows } from '../../../src/offers/learned/leftovers-rows.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import { day, food, line, must, pack, prices, q, recipe } from '../plan/builders.ts';
import { sampleChoice, sampleGuests } from '../quote/sample-terms.ts';
import {
  acceptedFact,
  cancelledFact,
  DATE,
  guaranteeFact,
  PICNIC,
  paperBook,
  paperOffer,
  postponedFact,
  servedFact,
} from './paper-event.ts';

const COD = food('cod');
const HAKE = recipe('hake', ['10 pieces', '5 lb'], [line(COD, '4 lb')]);
const EEL = recipe('eel', '10 pieces', [line(COD, '2 lb')]);

const carried = (change: Partial<CarriedDish> = {}): CarriedDish => ({
  course: 'Main',
  recipe: 'hake',
  name: 'Hake',
  perGuest: '1 piece per guest',
  counted: new Fraction(20n),
  planned: q('20 pieces'),
  carried: q('22 pieces'),
  containers: [],
  ...change,
});

const swap: EventFact = {
  version: 1,
  kind: 'substitution',
  on: day('2027-04-12'),
  what: 'dish',
  from: 'hake',
  to: 'eel',
  contains: [],
  mayContain: [],
  without: [],
  dietsLost: [],
  tell: [],
};

/** A supper for 40, of whom 20 take hake at $8.00 a pound of cod until the day before, and so many more facts. */
function supper(facts: readonly EventFact[], recipes: readonly Recipe[] = [HAKE, EEL], priced?: PriceList) {
  const offer = paperOffer(
    sampleChoice(sampleGuests(40), { package: 'supper', mains: { Main: { hake: 20, squash: 20 } } }),
  );
  return paperBook([offer], [acceptedFact(offer), ...facts], {
    recipes: new Map(recipes.map((each) => [each.id, each])),
    packages: new Map(),
    prices:
      priced ??
      prices(
        pack('cod', '1 lb', '8.00'),
        // Bought three days before: this price comes a day too late.
        pack('cod', '1 lb', '9.00', { validFrom: day('2027-05-13') }),
      ),
    kitchen: { capacity: {}, overage: new Map(), addOns: new Map(), buying: 3, currency: 'USD' },
  });
}

const record = (
  facts: readonly EventFact[],
  dishes: readonly LeftSaid[],
  { today = '2027-05-16', book = supper(facts) } = {},
) => leftovers(book, PICNIC, { plan: 'kept', dishes }, day(today));
const why = (read: Parsed<unknown>) => (read.ok ? 'taken' : `${read.what} — ${read.wayOut}`);
const said = (text: string, change: Partial<CarriedDish> = {}, note?: string): LeftSaid => ({
  dish: carried(change),
  said: text,
  ...(note === undefined ? {} : { note }),
});
const ALL = [servedFact(sampleGuests(40))];

describe('leftovers', () => {
  test('freeze what went out, for how many, who came and what it cost on the day it was bought for', () => {
    const read = must(record([servedFact(sampleGuests(30))], [said('4 pieces', {}, 'a little dry')]));
    expect(read).toStrictEqual({
      number: 3,
      fact: {
        version: 1,
        kind: 'leftovers',
        on: '2027-05-16',
        plan: 'kept',
        package: 'supper',
        style: 'buffet',
        came: sampleGuests(30),
        dishes: [
          {
            course: 'Main',
            recipe: 'hake',
            name: 'Hake',
            perGuest: '1 piece per guest',
            counted: '20',
            // 30 of 40 came, so 15 of 20.
            came: '15',
            planned: '20 piece',
            carried: '22 piece',
            back: '4 piece',
            // 22 of 10 pieces take 8.8 lb of cod at $8.00.
            cost: '70.40',
            said: '4 pieces',
            note: 'a little dry',
          },
        ],
      },
    });
  });

  test('that ran out say so, with the time where somebody looked', () => {
    const of = (text: string) => must(record(ALL, [said(text)])).fact.dishes[0];
    expect(of('ran out at 20:15')).toMatchObject({ ranOut: true, at: '20:15', back: '0 piece' });
    expect(of('ran out')).toMatchObject({ ranOut: true });
    expect(of('ran out')).not.toHaveProperty('at');
    expect(of('nothing')).not.toHaveProperty('ranOut');
    expect(must(record(ALL, [said('nothing', {}, '')])).fact.dishes[0]).not.toHaveProperty('note');
  });

  test('of a dish that counts some guests by half go by who came of those it counts', () => {
    const guests = { adults: 30, children: 15, vendors: 5, staff: 0 };
    const offer = paperOffer(
      sampleChoice(guests, { package: 'supper', mains: { Main: { hake: 20, squash: 20 } } }),
    );
    const [buffet, plated] = offer.terms.packages;
    const counting = {
      ...plated!,
      style: 'plated' as const,
      courses: plated!.courses.map((course) => ({
        ...course,
        dishes: course.dishes.map((dish) => ({ ...dish, counts: { adults: '1', children: '1/2' } })),
      })),
    };
    const halves = { ...offer, terms: { ...offer.terms, packages: [buffet!, counting] } };
    const facts = [
      acceptedFact(halves),
      servedFact({ adults: 30, children: 10, vendors: 0, staff: 0 }),
      swap,
    ];
    const book = paperBook([halves], facts, {
      ...supper([]),
      offers: new Map([[PICNIC, [halves]]]),
      events: new Map([[PICNIC, { id: PICNIC, facts }]]),
    });
    const cameOf = (change: Partial<CarriedDish>) =>
      must(record([], [said('nothing', change)], { book })).fact.dishes[0]?.came;
    // Planned for 30 + 7½, and 30 + 5 came: 35 ÷ 37½ of 20.
    expect(cameOf({ recipe: 'eel' })).toBe('56/3');
    // What replaced hake stands in its place, so hake itself is no dish of this menu; nor is one of another course.
    // Those count adults and children alike: 40 of 45.
    expect(cameOf({ recipe: 'hake' })).toBe('160/9');
    expect(cameOf({ recipe: 'eel', course: 'Late' })).toBe('160/9');
    expect(must(record([], [said('nothing')], { book })).fact.style).toBe('plated');
  });

  test('count all who were planned for as there where nobody was counted', () => {
    const none = [guaranteeFact(sampleGuests(0, { staff: 4 })), servedFact(sampleGuests(10))];
    expect(must(record(none, [said('1 piece')])).fact.dishes[0]?.came).toBe('20');
  });

  test('have no cost where the recipe is gone or a price is missing', () => {
    const costOf = (book: ReturnType<typeof supper>) =>
      must(record(ALL, [said('1 piece')], { book })).fact.dishes[0]?.cost;
    expect(costOf(supper(ALL, []))).toBeNull();
    expect(costOf(supper(ALL, [HAKE], prices()))).toBeNull();
    expect(costOf(supper(ALL))).toBe('70.40');
  });

  test('are refused before the day, after none, without who came, without a dish, and where words can’t be read', () => {
    const one = [said('1 piece')];
    expect(record(ALL, one, { today: DATE }).ok).toBe(true);
    expect(why(record(ALL, one, { today: '2027-05-14' }))).toBe(
      'quarry-picnic is on 2027-05-15, so nothing has come back yet — record it when the event is over',
    );
    expect(why(record([...ALL, cancelledFact], one))).toBe(
      'quarry-picnic is cancelled, so nothing was served — check which event is meant',
    );
    expect(why(record([postponedFact(null)], one))).toMatch(/^quarry-picnic is postponed, so nothing/);
    expect(why(record([], one))).toBe(
      'how many came to quarry-picnic is not recorded — give it with --adults, or record it: served quarry-picnic',
    );
    expect(why(record(ALL, []))).toBe(
      'there is no entry for any dish — name at least one and what came back of it',
    );
    expect(why(record(ALL, [...one, said('23 pieces')]))).toMatch(
      /^Hake: “23 pieces” is 23 pieces, but only 22 pieces went out — /,
    );
    expect(why(eventThatWasServed(supper([]), 'quarry', day('2027-05-16')))).toMatch(/^there is no event/);
  });

  test('said again are refused on any day, and replaced where anything in them differs', () => {
    const last = must(record(ALL, [said('1 piece')])).fact;
    expect(why(record([...ALL, last], [said('1 piece')], { today: '2027-05-20' }))).toBe(
      'these leftovers are the same as the last ones — nothing more to do',
    );
    const next = must(record([...ALL, last], [said('2 pieces')]));
    expect(next.number).toBe(4);
    expect(leftoversOf([last, next.fact, cancelledFact])).toBe(next.fact);
    expect(leftoversOf([cancelledFact])).toBeUndefined();
  });
});

describe('what leftovers are read against', () => {
  const container = (id: string, each: string) => ({ id, name: id, each: q(each) });

  test('are its containers in its own unit, each as filled last; one that can’t be converted is none', () => {
    const containers = [
      container('tray', '5 lb'),
      container('tub', '3 qt'),
      container('pan', '4 pieces'),
      container('tray', '10 pieces'),
    ];
    const read = carriedFood(supper([]), carried({ containers }));
    expect(read.carried).toEqual(q('22 pieces'));
    expect(read.containers).toEqual([container('tray', '10 pieces'), container('pan', '4 pieces')]);
    const [filled] = carriedFood(supper([]), carried({ containers: containers.slice(0, 1) })).containers;
    expect(filled?.each).toEqual(q('10 pieces'));
    expect(carriedFood(supper([], []), carried({ containers })).containers).toHaveLength(2);
  });
});

describe('a list of leftovers', () => {
  const DISHES = [
    carried(),
    carried({ recipe: 'pea-pot', name: 'Pea pot' }),
    carried({ recipe: 'slaw', name: 'Slaw', course: 'First' }),
    carried({ recipe: 'slaw', name: 'Slaw', course: 'Late' }),
  ];
  const read = (...rows: string[]) => leftoversRows(rows.join('\n'), DISHES);
  const texts = (...rows: string[]) => {
    const { dishes, problems } = read(...rows);
    expect(problems).toEqual([]);
    return dishes.map(({ dish, said: words, note }) => [dish.recipe, dish.course, words, note]);
  };

  test('has its dishes by id or name, whatever its case, and passes over those it says nothing of', () => {
    expect(
      texts(
        'Dish,Came back,ran out,note,course',
        'hake,4 pieces,,a little dry,',
        'PEA POT,,,,',
        'slaw,1 piece,no,,late',
        'Slaw,,20:15,,First',
      ),
    ).toEqual([
      ['hake', 'Main', '4 pieces', 'a little dry'],
      ['slaw', 'Late', '1 piece', undefined],
      ['slaw', 'First', 'ran out at 20:15', undefined],
    ]);
  });

  test('may say that it ran out beside nothing, and not beside an amount', () => {
    for (const back of ['', 'nothing', 'None', '0'])
      for (const out of ['yes', 'X'])
        expect(texts('dish,came back,ran out', `hake,${back},${out}`)).toEqual([
          ['hake', 'Main', 'ran out', undefined],
        ]);
    expect(read('dish,came back,ran out', 'hake,10 pieces,yes', 'pea-pot,nothing left,yes').problems).toEqual(
      [
        'row 2: it ran out, but 10 pieces came back; keep one of the two',
        'row 3: it ran out, but nothing left came back; keep one of the two',
      ],
    );
    expect(texts('dish,came back,ran out', 'hake,,about x')).toEqual([
      ['hake', 'Main', 'ran out at about x', undefined],
    ]);
    expect(texts('dish,came back,ran out', 'hake,1 piece,No')).toHaveLength(1);
  });

  test('tells every row that can’t be taken, and takes the others', () => {
    const { dishes, problems } = read(
      'dish,came back',
      'hake,1 piece',
      ',2 pieces',
      'slaw,3 pieces',
      'hakke,4 pieces',
      'mousse,5 pieces',
      'Hake,6 pieces',
    );
    expect(problems).toEqual([
      'row 3: the dish is missing',
      'row 4: “slaw” is in First and in Late; add a column called course',
      'row 5: “hakke” is not a dish that went out; did you mean hake?',
      'row 6: “mousse” is not a dish that went out; one of hake, pea-pot, slaw, slaw',
      'row 7: Hake is already in row 2',
    ]);
    expect(dishes.map(({ said: words }) => words)).toEqual(['1 piece', '6 pieces']);
  });

  test('without its columns or without rows is told once, and a broken row by its line', () => {
    expect(read('dish,left', 'hake,1')).toEqual({
      dishes: [],
      problems: ['there is no column called came back; the columns are dish, left'],
    });
    expect(read('meal,came back', 'hake,1').problems).toEqual([
      'there is no column called dish; the columns are meal, came back',
    ]);
    expect(read('dish,came back').problems).toEqual(['the list has no dishes']);
    expect(read('').problems).toEqual(['row 1: the file is empty; name the columns on the first line']);
    const broken = read('dish,came back', 'hake,"1 piece');
    expect(broken.dishes).toEqual([]);
    expect(broken.problems).toHaveLength(1);
    expect(broken.problems[0]).toMatch(/^row 2: /);
  });

  test('finds a dish by its whole name alone', () => {
    expect(dishCalled(' Hake ', '', DISHES)).toBe(DISHES[0]);
    expect(dishCalled('hake', 'MAIN', DISHES)).toBe(DISHES[0]);
    expect(dishCalled('hake', 'First', DISHES)).toBe(
      '“hake” is not a dish that went out; did you mean hake?',
    );
    expect(dishCalled('pea', '', DISHES)).toMatch(/is not a dish that went out/);
  });
});
