import { describe, expect, test } from 'vitest';
import { ALL_STATIONS } from '../../../src/engine/course/sitting.ts';
import type { Need } from '../../../src/engine/food/need.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { dishesOf } from '../../../src/engine/menu/dishes-of.ts';
import {
  fillersFor,
  gapPlace,
  type MenuDish,
  type MenuGap,
  MOST_FILLERS,
  menuDishes,
  placeOf,
} from '../../../src/engine/menu/fillers.ts';
import type { Course, Dish, Package } from '../../../src/engine/menu/package.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

const VEGAN: Need = { kind: 'diet', diet: 'vegan' };
const beans = food('beans', { from: ['plant'] });
const milk = food('milk', { from: ['milk'], allergens: ['milk'] });

const dish = (id: string, facts: Partial<MenuDish> = {}, of = beans): MenuDish => ({
  recipe: recipe(id, '1 lb', [line(of, '1 lb')]),
  package: 'spring',
  course: 'Main course',
  at: 0.5,
  given: 'mass',
  role: 'main',
  ...facts,
});
const served = dish('served');
const gap: MenuGap = { package: 'spring', course: 'Main course', at: 0.5, served: [served.recipe] };
const found = (dishes: readonly MenuDish[], of: MenuGap = gap) =>
  fillersFor(of, VEGAN, [served, ...dishes]).map(({ id }) => id);

describe('dishes that would fill a gap', () => {
  test('suit the need, are not served there already, and are named once', () => {
    expect(
      found([dish('stew'), dish('gratin', {}, milk), dish('served'), dish('stew', { package: 'fall' })]),
    ).toEqual(['stew']);
  });

  test('are first of the same course, then of its namesakes, then of near places, those given out alike before', () => {
    const near = dish('near', { course: 'Second', at: 0.7 });
    const nearer = dish('nearer', { course: 'Second', at: 0.6 });
    const byPiece = dish('by-piece', { course: 'Second', at: 0.5, given: 'count' });
    const namesake = dish('namesake', { package: 'fall', at: 1 });
    const own = dish('own', { given: 'count' });
    expect(found([byPiece, near, nearer, namesake, own])).toEqual([
      'own',
      'namesake',
      'nearer',
      'near',
      'by-piece',
    ]);
  });

  test('stand no further from it than a third of the menu, unless it may stand anywhere', () => {
    const far = dish('far', { course: 'Sweets', at: 0.85 });
    const edge = dish('edge', { course: 'Sweets', at: 0.83 });
    expect(found([far, edge])).toEqual(['edge']);
    expect(found([far, edge], { ...gap, at: null })).toEqual(['far', 'edge']);
  });

  test('are no drink where nothing is poured, no sauce ever, and a main where a main is missing', () => {
    const drink = dish('drink', { given: 'volume', role: 'drink' });
    const sauce = dish('sauce', { role: 'sauce' });
    const side = dish('side', { role: 'side' });
    const unknown = dish('unknown', { role: undefined });
    expect(found([drink, sauce, side, unknown])).toEqual(['side', 'unknown']);
    const poured = dish('poured', { given: 'volume' });
    expect(
      fillersFor({ ...gap, served: [poured.recipe] }, VEGAN, [poured, drink]).map(({ id }) => id),
    ).toEqual(['drink']);
    const main = dish('main');
    expect(found([side, unknown, main], { ...gap, roles: ['main'] })).toEqual(['main']);
    expect(found([side, main], { ...gap, roles: [] })).toEqual(['side', 'main']);
    expect(found([sauce], { ...gap, roles: ['sauce'] })).toEqual(['sauce']);
  });

  test('are five at most', () => {
    const many = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((id) => dish(id));
    expect(found(many)).toEqual(['a', 'b', 'c', 'd', 'e']);
    expect(MOST_FILLERS).toBe(5);
  });
});

test('every dish of a menu has its place, how it is given out, and what it is in its course', () => {
  const plain = (id: string, perGuest: string): Dish => ({
    recipe: dish(id).recipe,
    perGuest: must(parsePerGuest(perGuest)),
    overage: undefined,
    counts: {},
  });
  const course = (name: string, ...dishes: Dish[]): Course => ({
    name,
    choose: null,
    eachGuest: false,
    dishes,
  });
  const spring = {
    id: 'spring',
    courses: [
      course('Bread', plain('loaf', '1 slice per guest')),
      course('Soup', plain('broth', '1 cup per guest'), plain('stew', '8 oz per guest')),
      course('Sweets', plain('plums', '1 each per guest')),
    ],
  } as unknown as Package;
  expect(
    menuDishes([spring, { ...spring, id: 'fall', courses: spring.courses.slice(0, 1) }]).map((each) =>
      [each.package, each.course, each.recipe.id, each.at, each.given, each.role].join(' '),
    ),
  ).toEqual([
    'spring Bread loaf 0 count bread',
    'spring Soup broth 0.5 volume ',
    'spring Soup stew 0.5 mass ',
    'spring Sweets plums 1 count sweet',
    'fall Bread loaf 0 count bread',
  ]);
  expect(dishesOf(spring).map(({ recipe: { id } }) => id)).toEqual(['loaf', 'broth', 'stew', 'plums']);
});

test('a course stands from 0 to 1 in its menu, and all stations anywhere', () => {
  expect([placeOf(0, 1), placeOf(0, 3), placeOf(1, 3), placeOf(2, 3)]).toEqual([0, 0, 0.5, 1]);
  expect([gapPlace(ALL_STATIONS, 1, 3), gapPlace('Sweets', 1, 3)]).toEqual([null, 0.5]);
});
