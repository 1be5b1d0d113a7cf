import { describe, expect, test } from 'vitest';
import type { Book } from '../../../src/book/book.ts';
import { parseAllergen } from '../../../src/engine/food/allergen.ts';
import type { Ingredient } from '../../../src/engine/food/ingredient.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import type { DishCorrection } from '../../../src/offers/corrections/corrections.ts';
import { correctionsToRecord } from '../../../src/offers/corrections/record-corrections.ts';
import {
  acceptedTerms,
  correctionsToTell,
  dated,
  substitutionNotices,
  tell,
  toldFile,
} from '../../../src/offers/corrections/told.ts';
import { recipeFacts } from '../../../src/offers/issue/dish-terms.ts';
import type { EventFact } from '../../../src/schema/event-fact.ts';
import type { Told } from '../../../src/schema/told.ts';
import { day, food, line, must, recipe } from '../plan/builders.ts';
import {
  sampleAddOn,
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
  sampleTerms,
} from '../quote/sample-terms.ts';
import { acceptedFact, cancelledFact, PICNIC, paperBook, paperOffer, postponedFact } from './paper-event.ts';

const TODAY = day('2027-04-20');
const leek = food('leek');
const butter = food('butter', { from: ['milk'], allergens: ['milk'] });
const egg = food('egg', { from: ['egg'], allergens: ['egg'] });
const relish = food('relish', { contains: undefined });
const tart = (...foods: Ingredient[]): Recipe =>
  recipe(
    'tart',
    '8 pieces',
    foods.map((each) => line(each, '1 lb')),
    { name: 'Leek tart' },
  );
const soup = (...foods: Ingredient[]): Recipe =>
  recipe(
    'soup',
    '1 gal',
    foods.map((each) => line(each, '1 lb')),
    { name: 'Leek soup' },
  );
const dish = (of: Recipe) => sampleDish({ recipe: of.id, name: of.name, ...recipeFacts(of) });

/** Offered: a menu with the tart, another with the soup, and an add-on with the soup. */
const offer = paperOffer(
  sampleChoice(sampleGuests(40)),
  {},
  sampleTerms({
    packages: [
      samplePackage({ courses: [sampleCourse({ choose: null, dishes: [dish(tart(leek))] })] }),
      samplePackage({ id: 'supper', courses: [sampleCourse({ choose: null, dishes: [dish(soup(leek))] })] }),
    ],
    addOns: [sampleAddOn({ dishes: [dish(soup(leek))] }), sampleAddOn({ id: 'arch', per: 'flat' })],
  }),
);

interface Kitchen {
  readonly recipes?: readonly Recipe[];
  readonly told?: readonly Told[];
  readonly facts?: readonly EventFact[];
  readonly more?: object;
}
function bookOf({ recipes = [tart(leek), soup(leek)], told = [], facts = [], more = {} }: Kitchen): Book {
  return paperBook([offer], facts, {
    recipes: new Map(recipes.map((each) => [each.id, each])),
    ingredients: new Map([butter, egg, relish].map((each) => [each.id, each])),
    corrections: new Map(),
    told: new Map([[PICNIC, told]]),
    ...more,
  });
}
const correction = (facts: Partial<DishCorrection>): DishCorrection => ({
  recipe: 'tart',
  dish: 'Leek tart',
  contains: [],
  mayContain: [],
  lostMarks: [],
  ...facts,
});
const record = (
  dishes: readonly Partial<DishCorrection>[],
  on = '2027-04-10',
  more: Partial<Told> = {},
): Told =>
  ({
    version: 1,
    kind: 'told',
    on: day(on),
    proposal: PICNIC,
    revision: 1,
    dishes: dishes.map(correction),
    ...more,
  }) as Told;
const MILK = { contains: ['milk'], lostMarks: ['vegan'] };
const swapFact = (facts: object = {}): EventFact => ({
  version: 1,
  kind: 'substitution',
  on: day('2027-04-12'),
  what: 'ingredient',
  from: 'leek',
  to: 'butter',
  contains: ['milk'],
  mayContain: [],
  without: [],
  dietsLost: ['vegan'],
  tell: ['Leek tart contains milk since the change.'],
  ...facts,
});

describe('what a client is to be told of dishes', () => {
  const toTell = (kitchen: Kitchen) => correctionsToTell(bookOf(kitchen), offer);

  test('is all that was found while nobody has told it, of every menu that can be chosen', () => {
    expect(toTell({})).toEqual({ untold: [], told: [], unreadable: undefined });
    expect(toTell({ recipes: [tart(butter), soup(egg)] })).toEqual({
      untold: [
        correction(MILK),
        correction({ recipe: 'soup', dish: 'Leek soup', contains: ['egg'], lostMarks: ['vegan'] }),
      ],
      told: [],
      unreadable: undefined,
    });
  });

  test('is only what no record says yet, word by word, with the last day on which the rest was told', () => {
    const recipes = [tart(butter, egg), soup(leek)];
    expect(
      toTell({ recipes, told: [record([MILK]), record([{ contains: ['rye'] }], '2027-04-11')] }),
    ).toEqual({
      untold: [correction({ contains: ['egg'] })],
      told: [correction({ ...MILK, toldOn: day('2027-04-11') })],
      unreadable: undefined,
    });
    const all = record([{ contains: ['egg', 'milk'], lostMarks: ['vegan'] }]);
    expect(toTell({ recipes, told: [all] })).toMatchObject({
      untold: [],
      told: [{ contains: ['egg', 'milk'] }],
    });
  });

  test('is told of its dish, its revision and what is served for it, and of nothing else', () => {
    const recipes = [tart(butter), soup(leek)];
    const untold = (told: Told) => toTell({ recipes, told: [told] }).untold;
    expect(untold(record([MILK]))).toEqual([]);
    expect(untold(record([{ ...MILK, recipe: 'soup' }]))).toHaveLength(1);
    expect(untold(record([{ ...MILK, instead: 'stew' }]))).toHaveLength(1);
    expect(untold(record([MILK], '2027-04-10', { revision: 2 }))).toHaveLength(1);
    expect(untold(record([{ mayContain: ['milk'], lostMarks: ['vegan'] }]))).toEqual([
      correction({ contains: ['milk'] }),
    ]);
  });

  test('is that an allergen is unknown as well, until it was told', () => {
    const recipes = [tart(relish), soup(leek)];
    const [found] = toTell({ recipes }).untold;
    expect(found?.unsaid).toBe(true);
    const { toldOn: _, ...said } = found!;
    const { untold, told } = toTell({ recipes, told: [record([said])] });
    expect([untold, told[0]?.unsaid]).toEqual([[], true]);
    // That it is known again is nothing to tell, nor told.
    const known = toTell({ recipes: [tart(butter), soup(leek)], told: [record([{ ...said, ...MILK }])] });
    expect(known).toEqual({
      untold: [],
      told: [correction({ ...MILK, toldOn: day('2027-04-10') })],
      unreadable: undefined,
    });
    const { unsaid: __, ...less } = said;
    expect(toTell({ recipes, told: [record([less])] }).untold).toEqual([correction({ unsaid: true })]);
  });

  test('of an accepted offer is about what was accepted alone, add-ons taken among it', () => {
    const recipes = [tart(butter), soup(egg)];
    const dishes = (addOns: Record<string, number>) =>
      toTell({ recipes, facts: [acceptedFact(offer, { ...offer.proposed, addOns })] }).untold.map(
        (each) => each.recipe,
      );
    expect(dishes({})).toEqual(['tart']);
    expect(dishes({ espresso: 0, arch: 1 })).toEqual(['tart']);
    expect(dishes({ espresso: 1 })).toEqual(['tart', 'soup']);
    expect(acceptedTerms(bookOf({}), offer)).toBe(offer.terms);
  });

  test('leaves out what a swap told of, and names a dish that cannot be read', () => {
    const facts = [acceptedFact(offer), swapFact()];
    expect(toTell({ facts })).toEqual({ untold: [], told: [], unreadable: undefined });
    expect(toTell({ facts: [acceptedFact(offer), swapFact({ tell: [] })] }).untold).toEqual([
      correction(MILK),
    ]);
    expect(toTell({ recipes: [soup(leek)] }).unreadable).toBe('Leek tart');
  });
});

test('a correction has a day only where all of it was told', () => {
  const milk = correction(MILK);
  expect(dated(milk, [])).toBe(milk);
  expect(dated(milk, [record([{ contains: ['milk'] }])])).toBe(milk);
  for (const days of [
    ['2027-04-10', '2027-04-15'],
    ['2027-04-15', '2027-04-10'],
  ])
    expect(
      dated(
        milk,
        days.map((on) => record([MILK], on)),
      ),
    ).toEqual({ ...milk, toldOn: '2027-04-15' });
});

test('substitutions to tell of go by the number of their fact, each with the day it was told', () => {
  const facts = [acceptedFact(offer), swapFact({ tell: [] }), swapFact(), swapFact({ from: 'oil' })];
  const notices = substitutionNotices(
    bookOf({ facts, told: [record([], '2027-04-14', { substitutions: [3] })] }),
    offer,
  );
  expect(notices.map(({ number, toldOn }) => [number, toldOn])).toEqual([
    [3, '2027-04-14'],
    [4, undefined],
  ]);
  const other = record([], '2027-04-14', { substitutions: [3], revision: 2 });
  expect(substitutionNotices(bookOf({ facts, told: [other] }), offer)[0]).not.toHaveProperty('toldOn');
});

describe('the record that a client was told', () => {
  const tried = (kitchen: Kitchen, on = '2027-04-18', today = TODAY) =>
    tell(bookOf(kitchen), PICNIC, day(on), today);
  const why = (...args: Parameters<typeof tried>) => {
    const read = tried(...args);
    return read.ok ? 'recorded' : read.what;
  };
  const recipes = [tart(butter), soup(leek)];

  test('holds all that was untold, dishes and substitutions', () => {
    expect(must(tried({ recipes }))).toEqual({
      version: 1,
      kind: 'told',
      on: '2027-04-18',
      proposal: PICNIC,
      revision: 1,
      dishes: [correction(MILK)],
    });
    const facts = [acceptedFact(offer), swapFact()];
    expect(must(tried({ facts }))).toMatchObject({ dishes: [], substitutions: [2] });
    const crumbs = food('crumbs', { mayContain: [must(parseAllergen('sesame'))] });
    const both = must(tried({ recipes: [tart(leek, crumbs), soup(leek)], facts }));
    expect(both).toMatchObject({ dishes: [correction({ mayContain: ['sesame'] })], substitutions: [2] });
    const rye = food('rye', { allergens: ['celery'] });
    const equal = must(tried({ recipes: [tart(leek, crumbs, rye), soup(leek)] }));
    expect(equal.dishes).toEqual([correction({ contains: ['celery'], mayContain: ['sesame'] })]);
    expect(must(tried({ recipes: [tart(relish), soup(leek)] })).dishes[0]).toMatchObject({ unsaid: true });
    const served = swapFact({ what: 'dish', from: 'tart', to: 'soup', tell: [] });
    const instead = must(tried({ recipes: [tart(leek), soup(egg)], facts: [acceptedFact(offer), served] }));
    expect(instead.dishes).toEqual([
      correction({ instead: 'soup', dish: 'Leek soup', contains: ['egg'], lostMarks: ['vegan'] }),
    ]);
    expect(toldFile(PICNIC, 7)).toBe('told/quarry-picnic-007.json');
  });

  test('is of a day from the offer to today, and not before the swap it is about', () => {
    expect(why({ recipes }, '2027-04-01')).toBe('recorded');
    expect(why({ recipes }, '2027-03-31')).toBe('2027-03-31 is before the offer was issued');
    expect(why({ recipes }, '2027-04-20')).toBe('recorded');
    expect(why({ recipes }, '2027-04-21')).toBe('2027-04-21 is in the future');
    const facts = [acceptedFact(offer), swapFact(), swapFact({ on: day('2027-04-16') })];
    expect(why({ facts }, '2027-04-11')).toBe('2027-04-11 is before the substitution of 2027-04-12');
    expect(why({ facts }, '2027-04-12')).toBe('recorded');
    const mixed = [acceptedFact(offer), swapFact({ on: day('2027-04-16') }), swapFact()];
    expect(why({ facts: mixed }, '2027-04-13')).toBe('recorded');
  });

  test('is none where there is nothing to tell, or nobody left to feed', () => {
    expect(why({})).toBe('no allergens or dishes of quarry-picnic have changed');
    expect(why({ recipes, told: [record([MILK])] })).toBe(
      'the client of quarry-picnic has already been told of everything',
    );
    const facts = [acceptedFact(offer), swapFact()];
    expect(why({ facts, told: [record([], '2027-04-14', { substitutions: [2] })] })).toBe(
      'the client of quarry-picnic has already been told of everything',
    );
    expect(why({ recipes: [soup(leek)] })).toBe('what is in “Leek tart” can’t be read right now');
    expect(why({ recipes: [soup(egg)] })).toBe('recorded');
    expect(why({ recipes, facts: [acceptedFact(offer), cancelledFact] })).toContain('is no longer in use');
    expect(why({ recipes }, '2027-05-01', day('2027-05-01'))).toContain('is no longer in use');
    expect(tell(bookOf({}), 'gale', TODAY, TODAY)).toMatchObject({ what: 'nothing was issued for “gale”' });
  });

  test('is asked for as well while an event has no day yet: it will have one', () => {
    expect(why({ recipes, facts: [acceptedFact(offer), postponedFact(null)] })).toBe('recorded');
  });
});

describe('what pages were corrected by is recorded', () => {
  const recorded = (kitchen: Kitchen) =>
    correctionsToRecord(bookOf(kitchen), TODAY).flatMap(({ dishes }) => dishes);
  const published = (facts: Partial<DishCorrection>, revision = 1) => ({
    corrections: new Map([
      [
        PICNIC,
        [
          {
            version: 1,
            kind: 'correction',
            on: TODAY,
            proposal: PICNIC,
            revision,
            dishes: [correction(facts)],
          },
        ],
      ],
    ]),
  });

  test('as far as it is new and a recipe says it for certain', () => {
    const recipes = [tart(butter, egg), soup(leek)];
    expect(recorded({})).toEqual([]);
    expect(recorded({ recipes })).toEqual([correction({ contains: ['egg', 'milk'], lostMarks: ['vegan'] })]);
    expect(recorded({ recipes, more: published(MILK) })).toEqual([correction({ contains: ['egg'] })]);
    expect(recorded({ recipes, more: published(MILK, 2) })).toEqual([
      correction({ contains: ['egg', 'milk'], lostMarks: ['vegan'] }),
    ]);
    const warned = [tart(butter, food('crumbs', { mayContain: [must(parseAllergen('rye'))] })), soup(leek)];
    expect(recorded({ recipes: warned, more: published({ ...MILK, mayContain: ['rye'] }) })).toEqual([]);
    expect(recorded({ recipes: warned, more: published({ lostMarks: ['vegan'] }) })).toEqual([
      correction({ contains: ['milk'], mayContain: ['rye'] }),
    ]);
    // While what was published cannot be read, nothing is known to be new.
    const lost = { held: new Map([[`corrections/${PICNIC}`, 'it is no JSON']]) };
    expect(recorded({ recipes, more: lost })).toEqual([]);
    expect(recorded({ recipes, more: published({ ...MILK, recipe: 'soup' }) })[0]?.contains).toEqual([
      'egg',
      'milk',
    ]);
    // A diet lost for want of a fact comes back with the fact.
    expect(recorded({ recipes: [tart(relish), soup(leek)] })).toEqual([]);
    expect(recorded({ recipes: [tart(relish, butter), soup(leek)] })).toEqual([correction(MILK)]);
    expect(recorded({ recipes: [soup(leek)] })).toEqual([]);
  });

  test('of offers in use alone, an event without a day yet among them', () => {
    const recipes = [tart(butter), soup(leek)];
    expect(recorded({ recipes, facts: [acceptedFact(offer), postponedFact(null)] })).toEqual([
      correction(MILK),
    ]);
    expect(recorded({ recipes, facts: [acceptedFact(offer), cancelledFact] })).toEqual([]);
  });
});
