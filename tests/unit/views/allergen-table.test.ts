import { describe, expect, test } from 'vitest';
import type { DishTerms } from '../../../src/engine/quote/terms.ts';
import { allergenTable } from '../../../src/views/client/allergen-table-of.ts';
import { names } from '../../../src/views/client/package-view-of.ts';
import { legendFor, marksAsRead, marksOf } from '../../../src/views/diet-marks.ts';
import { wordsIn } from '../../../src/words/words-in.ts';

function dish(name: string, contains: string[], facts: Partial<DishTerms> = {}): DishTerms {
  return {
    recipe: name,
    name,
    perGuest: '1 piece per guest',
    counts: { adults: '1' },
    marks: [],
    contains,
    mayContain: [],
    ...facts,
  };
}

function tableOf(dishes: readonly DishTerms[], ...laws: ('us' | 'eu')[]) {
  const packages = [{ name: 'Menu', courses: [{ name: 'All', choose: null, eachGuest: false, dishes }] }];
  const addOns = [{ name: 'Pot', dishes: [dish('mussels', ['mollusc (mussel)'])] }, { name: 'Hour' }];
  const { allergens, menus } = allergenTable({ packages, addOns, locale: 'en-US' } as never, laws);
  const told = menus.map(({ name, rows }) => [
    name,
    ...rows.map(({ dish: of, cells }) => [
      of,
      ...cells.flatMap(({ says, kinds }, index) =>
        says === '' ? [] : [`${allergens[index]}: ${[says, ...kinds].join(' ')}`],
      ),
    ]),
  ]);
  return { allergens, told };
}

describe('the table of dishes by allergen', () => {
  const dishes = [
    dish('bread', ['rye', 'spelt'], { mayContain: ['almond', 'pine nut'] }),
    dish('slaw', ['celery', 'fish (anchovy)', 'sulphites']),
  ];

  test('has the nine of US law, each with its kinds, and in plain words what that law does not ask for', () => {
    const { allergens, told } = tableOf(dishes, 'us');
    expect(allergens).toEqual([
      'milk',
      'egg',
      'fish',
      'crustacean shellfish',
      'tree nuts',
      'wheat',
      'peanuts',
      'soybeans',
      'sesame',
      'rye',
      'celery',
      'sulfites',
      'mollusk (mussel)',
    ]);
    expect(told).toEqual([
      [
        'Menu',
        ['bread', 'tree nuts: may contain almond pine nut', 'wheat: contains spelt', 'rye: contains'],
        ['slaw', 'fish: contains anchovy', 'celery: contains', 'sulfites: contains'],
      ],
      ['Pot', ['mussels', 'mollusk (mussel): contains']],
    ]);
  });

  test('has the fourteen of EU law: rye is a cereal there, a pine nut no nut', () => {
    const { allergens, told } = tableOf(dishes, 'eu');
    expect(allergens).toHaveLength(15);
    expect(allergens.at(-1)).toBe('pine nut');
    expect(told[0]).toEqual([
      'Menu',
      [
        'bread',
        'cereals containing gluten: contains rye spelt',
        'nuts: may contain almond',
        'pine nut: may contain',
      ],
      ['slaw', 'fish: contains anchovy', 'celery: contains', 'sulfur dioxide and sulfites: contains'],
    ]);
  });

  test('under both laws has each group once, by the law that covers more of it', () => {
    const { allergens } = tableOf(dishes, 'us', 'eu');
    expect(allergens).toHaveLength(14);
    expect(allergens).toContain('cereals containing gluten');
    expect(allergens).not.toContain('wheat');
    expect(allergens).toContain('tree nuts');
  });

  test('of a draft says not known where nobody has said, and never leaves such a field empty', () => {
    const { told } = tableOf([dish('jar', ['milk'], { unsaid: true })], 'us');
    expect(told[0]?.[1]?.slice(0, 3)).toEqual(['jar', 'milk: contains', 'egg: not known']);
    expect(told[0]?.[1]).toHaveLength(11);
  });
});

describe('the table on a sheet', () => {
  const menu = (name: string, dishes: DishTerms[]) => ({
    name,
    courses: [{ name: 'All', choose: null, eachGuest: false, dishes }],
  });
  const sheetOf = (packages: readonly object[]) => {
    const addOns = [
      { name: 'Pot', dishes: [dish('mussels', ['mollusc (mussel)'])] },
      { name: 'Urn', dishes: [dish('tea', [])] },
    ];
    const { once, menus } = allergenTable({ packages, addOns, locale: 'en-US' } as never, ['eu']);
    const rows = (groups: typeof once) => groups.flatMap((group) => group.rows);
    // Whatever is merged: no dish, and nothing said of one, is lost.
    const facts = (groups: typeof once) =>
      new Set(rows(groups).map((row) => `${row.dish} ${JSON.stringify(row.cells)}`));
    expect(facts(once)).toEqual(facts(menus));
    return once.map(({ name, rows: own }) => [name, ...own.map((row) => `${row.dish}: ${row.perGuest}`)]);
  };
  const bread = dish('bread', ['rye']);
  const soup = dish('soup', ['celery']);

  test('has each dish once: of both menus, of each alone, and of the add-ons', () => {
    const more = { ...soup, perGuest: '2 pieces per guest' };
    expect(
      sheetOf([menu('Lunch', [bread, soup]), menu('Supper', [bread, more, dish('pie', ['wheat'])])]),
    ).toEqual([
      [
        'In both menus',
        'bread: 1 piece per guest',
        'soup: 1 piece per guest (Lunch), 2 pieces per guest (Supper)',
      ],
      ['Supper', 'pie: 1 piece per guest'],
      ['Add-ons', 'mussels: 1 piece per guest (Pot)', 'tea: 1 piece per guest (Urn)'],
    ]);
  });

  test('names the menus where a dish is not in all, and keeps apart what has other allergens', () => {
    const white = dish('bread', ['wheat']);
    expect(sheetOf([menu('A', [bread, soup]), menu('B', [bread, white]), menu('C', [soup])])).toEqual([
      ['In more than one menu', 'bread: 1 piece per guest (A, B)', 'soup: 1 piece per guest (A, C)'],
      ['B', 'bread: 1 piece per guest'],
      ['Add-ons', 'mussels: 1 piece per guest (Pot)', 'tea: 1 piece per guest (Urn)'],
    ]);
  });
});

test('one allergen has two names by two laws, or none by one of them', () => {
  const words = ['barley', 'soy', 'lupin', 'crustacean (shrimp)'];
  expect(names(words, ['us'], 'en-US')).toEqual([
    'crustacean shellfish (shrimp)',
    'soybeans',
    'barley',
    'lupin',
  ]);
  expect(names(words, ['eu'], 'en-US')).toEqual([
    'cereals containing gluten (barley)',
    'crustaceans (shrimp)',
    'soybeans',
    'lupin',
  ]);
});

describe('marks', () => {
  test('say the strictest diet that can be made on request, and allergens that can be left out', () => {
    const marks = (own: string[], onRequest: string[]) =>
      marksAsRead({ marks: own, onRequest }, 'en-US').filter((mark) => mark.endsWith('on request'));
    expect(marks(['vegetarian'], ['vegan'])).toEqual(['vegan on request']);
    expect(marks([], ['vegetarian', 'vegan', 'pescatarian'])).toEqual(['vegan on request']);
    expect(marks(['vegan', 'vegetarian'], ['no gluten', 'tree nuts'])).toEqual([
      'no gluten on request',
      'no tree nuts on request',
    ]);
    expect(marks([], ['vegan', 'no gluten', 'vegan + no gluten'])).toEqual([
      'vegan on request',
      'no gluten on request',
    ]);
    expect(marks([], ['vegan + tree nuts'])).toEqual(['vegan + no tree nuts on request']);
    expect(marksOf(['vegetarian', 'pescatarian'])).toEqual(['vegetarian']);
  });

  test('have a legend that says what on request means', () => {
    expect(
      legendFor(wordsIn('en-US'), [{ marks: [], onRequest: ['vegan'] }]).map(({ mark }) => mark),
    ).toEqual(['vegan', 'on request']);
    expect(legendFor(wordsIn('en-US'), [{ marks: ['vegan'] }]).map(({ mark }) => mark)).toEqual(['vegan']);
  });
});
