import { describe, expect, test } from 'vitest';
import { type DishRole, type PlacedIn, roleOf, usualRole } from '../../../src/engine/course/dish-role.ts';
import { type DishForNeed, hasAll, roleGaps } from '../../../src/engine/course/role-gaps.ts';
import { ALL_STATIONS, sittingsOf } from '../../../src/engine/course/sitting.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { must } from '../plan/builders.ts';

describe('what a dish is in its course', () => {
  const usual = (course: string, perGuest: string, facts: Partial<PlacedIn> = {}) =>
    usualRole(must(parsePerGuest(perGuest)), { name: course, choose: null, eachGuest: false, ...facts });

  test.each<[string, DishRole | undefined]>([
    ['Sides', 'side'],
    ['Beside the roast', 'side'],
    ['Breads & butter', 'bread'],
    ['Sauces', 'sauce'],
    ['Desserts', 'sweet'],
    ['Pudding', 'sweet'],
    ['Drinks', 'drink'],
    ['Beverages', 'drink'],
    // Sides are often listed with mains.
    ['Main course', undefined],
    ['Entrées', undefined],
    ['First course', undefined],
    // Two words, two roles; half a word, none.
    ['Mains and sides', undefined],
    ['Sides / sweets', undefined],
    ['Sweets, desserts', 'sweet'],
    ['Sidekicks', undefined],
    ['constructor', undefined],
  ])('where everybody gets all of “%s” is %s', (course, role) => {
    expect(usual(course, '4 oz per guest')).toBe(role);
  });

  test('is one role where they stand in for one another: a main where each guest takes one, a side where the client chooses', () => {
    expect([
      usual('Supper', '1 piece per guest', { eachGuest: true }),
      usual('Sweets', '1 piece per guest', { eachGuest: true }),
    ]).toEqual(['main', 'sweet']);
    expect([
      usual('Supper', '1 piece per guest', { choose: 2 }),
      usual('Mains', '1 piece per guest', { choose: 1 }),
    ]).toEqual(['side', 'main']);
    expect([
      usual('Entrées', '4 oz per guest', { choose: 1 }),
      usual('Drinks', '1 fl oz per guest', { choose: 1 }),
    ]).toEqual(['main', 'drink']);
  });

  test('poured is a sauce up to an ounce for each guest, and beyond that nothing that can be told', () => {
    expect([
      usual('Buffet', '1 fl oz per guest'),
      usual('Buffet', '30 ml per guest'),
      usual('Sides', '2 tbsp per guest'),
    ]).toEqual(['sauce', 'sauce', 'sauce']);
    expect([usual('Buffet', '31 ml per guest'), usual('Sides', '1 cup per guest')]).toEqual([
      undefined,
      undefined,
    ]);
    expect([usual('Buffet', '1 qt per 40 guests'), usual('Buffet', '1 qt per 30 guests')]).toEqual([
      'sauce',
      undefined,
    ]);
    expect([usual('Sauces', '1 cup per guest'), usual('Drinks', '1 fl oz per guest')]).toEqual([
      'sauce',
      'drink',
    ]);
  });

  test('is what its package states before its recipe, and what its recipe states before its course', () => {
    const perGuest = must(parsePerGuest('4 oz per guest'));
    const course = { name: 'Sides', choose: null, eachGuest: false };
    expect(roleOf({ perGuest, role: 'main', recipe: { role: 'bread' } }, course)).toBe('main');
    expect(roleOf({ perGuest, recipe: { role: 'bread' } }, course)).toBe('bread');
    expect(roleOf({ perGuest, recipe: {} }, course)).toBe('side');
  });
});

describe('what a course lacks for somebody', () => {
  const dish = (text: string): DishForNeed => {
    const [name = '', role, feeds] = text.split(' ');
    return { name, role: role === '?' ? undefined : (role as DishRole), feeds: feeds === 'feeds' };
  };
  const gaps = (oneEach: boolean, ...dishes: string[]) => {
    const found = roleGaps(dishes.map(dish), oneEach);
    expect(hasAll(found)).toBe(!found.nothing && found.missing.length === 0 && found.asked.length === 0);
    return found;
  };
  const nothing = { nothing: true, missing: [], asked: [] };
  const all = { nothing: false, missing: [], asked: [] };

  test('is everything where they can eat none of it, a sauce aside', () => {
    expect(gaps(false, 'roast main not', 'greens side not')).toEqual(nothing);
    expect(gaps(false, 'roast main not', 'gravy sauce feeds')).toEqual(nothing);
    expect(gaps(false)).toEqual(nothing);
    // A course of sauces alone is looked at as it is.
    expect(gaps(false, 'gravy sauce not', 'relish sauce feeds')).toEqual(all);
  });

  test('is each role that others have and they have not, once', () => {
    expect(gaps(false, 'roast main not', 'ham main not', 'greens side feeds', 'loaf bread not')).toEqual({
      nothing: false,
      missing: ['main', 'bread'],
      asked: [],
    });
    expect(gaps(false, 'roast main not', 'pie main feeds', 'gravy sauce not')).toEqual(all);
    expect(hasAll(gaps(false, 'roast main not', 'greens side feeds'))).toBe(false);
  });

  test('is nothing where each takes one dish and one is theirs', () => {
    expect(gaps(true, 'roast main not', 'greens side feeds')).toEqual(all);
    expect(gaps(true, 'roast main not')).toEqual(nothing);
  });

  test('is asked for where a dish of unknown role would decide it', () => {
    // What they can eat may be the main that is missing.
    expect(gaps(false, 'roast main not', 'tart ? feeds')).toEqual({
      nothing: false,
      missing: [],
      asked: ['tart'],
    });
    // What they cannot eat may be a main, and so may what they can.
    expect(gaps(false, 'terrine ? not', 'tart ? feeds', 'greens side feeds')).toEqual({
      nothing: false,
      missing: [],
      asked: ['terrine', 'tart'],
    });
    // Nothing is missing, so that the tart need not be known.
    expect(gaps(false, 'roast main not', 'pie main feeds', 'tart ? feeds')).toEqual(all);
    expect(gaps(false, 'roast main not', 'terrine ? not', 'greens side feeds')).toEqual({
      nothing: false,
      missing: ['main'],
      asked: ['terrine'],
    });
    expect([
      hasAll({ nothing: true, missing: [], asked: [] }),
      hasAll({ nothing: false, missing: ['main'], asked: [] }),
      hasAll({ nothing: false, missing: [], asked: ['tart'] }),
      hasAll(all),
    ]).toEqual([false, false, false, true]);
  });
});

test('stations are one sitting, courses of any other style are each their own', () => {
  const courses = [
    { name: 'Grill', dishes: ['a', 'b'] },
    { name: 'Salads', dishes: ['c'] },
  ];
  expect(sittingsOf('stations', courses)).toEqual([{ name: ALL_STATIONS, dishes: ['a', 'b', 'c'] }]);
  expect([
    sittingsOf('buffet', courses),
    sittingsOf('stations', courses.slice(0, 1)),
    sittingsOf('stations', []),
  ]).toEqual([courses, courses.slice(0, 1), []]);
});
