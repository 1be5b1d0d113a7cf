import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { type DishRole, type PlacedIn, roleOf, usualRole } from '../../../src/engine/course/dish-role.ts';
import type { ServiceStyle } from '../../../src/engine/course/service-style.ts';
import { parseNeed } from '../../../src/engine/food/need.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { fillersFor, type MenuDish } from '../../../src/engine/menu/fillers.ts';
import { guestNeedSaid, guestNeeds } from '../../../src/engine/menu/guest-needs.ts';
import type { EventDish } from '../../../src/engine/plan/event-input.ts';
import { coverageOf, gapsIn, servedCourses } from '../../../src/engine/plan/servings/coverage.ts';
import { partDishes } from '../../../src/engine/plan/servings/portions.ts';
import { inWords } from '../../in-words.ts';
import { dish, food, line, must, recipe } from './builders.ts';

const made = (id: string, ...foods: Parameters<typeof line>[0][]) =>
  recipe(
    id,
    '10 pieces',
    foods.map((each) => line(each, '1 lb')),
  );
const cheese = food('cheese', { from: ['milk'], allergens: ['milk'] });
const flour = food('flour', { allergens: ['wheat'] });
const tart = made('tart', cheese, flour);
const salad = made('salad', food('leaves'));
const rolls = recipe('rolls', '10 pieces', [line(flour, '1 lb'), line(cheese, '1 oz')], {
  changes: [{ item: 'cheese', instead: undefined, needs: ['vegan'] }],
});
const relish = made('relish', food('jar', { contains: undefined }));
const guests = { adults: 60, children: 10, vendors: 2, staff: 4 };
const needs = (...named: [string, number][]) => guestNeeds(new Map(named), guests, undefined);

/** A course of these dishes, each a piece for everybody; a role stands before the recipe. */
function course(name: string, ...dishes: (Recipe | [DishRole, Recipe])[]): EventDish[] {
  return dishes.map((each) => {
    const [role, of] = Array.isArray(each) ? each : [undefined, each];
    return { ...dish(of, '1 piece per guest'), course: name, role };
  });
}

function covered(dishes: readonly EventDish[], ...named: [string, number][]) {
  return coveredAs('buffet', dishes, ...named);
}

function coveredAs(style: ServiceStyle, dishes: readonly EventDish[], ...named: [string, number][]) {
  const asked = needs(...named);
  return coverageOf(servedCourses(style, partDishes(dishes, guests, asked).dishes), asked);
}

describe('stations that guests walk between', () => {
  const stations = [...course('By the river', ['main', tart]), ...course('In the garden', ['main', salad])];

  test('feed whom any of them has a dish for, where courses that follow one another would not', () => {
    const whole = (style: ServiceStyle) => coveredAs(style, stations, ['vegan', 2]).map((need) => need.whole);
    expect([whole('stations'), whole('buffet')]).toEqual([['every course'], ['some courses']]);
    const [vegan] = coveredAs('stations', stations, ['vegan', 2]);
    expect(vegan?.courses.map(({ course: name, suits }) => [name, suits])).toEqual([
      ['The stations', ['salad']],
    ]);
  });

  test('lack what none of them has', () => {
    const withBread = [...stations, ...course('By the oven', ['bread', made('loaf', flour)])];
    const [gluten] = coveredAs('stations', withBread, ['no gluten', 1]);
    expect(gapsIn(gluten!).map(({ course: name, missing }) => [name, missing])).toEqual([
      ['The stations', ['bread']],
    ]);
  });
});

describe('whom a menu feeds', () => {
  const menu = [
    ...course('First', ['side', tart], ['side', salad]),
    ...course('Bread', rolls),
    ...course('Jars', relish),
  ];

  test('is told by course: what suits, what is made apart, what nobody can tell', () => {
    const [vegan] = covered(menu, ['vegan', 2]);
    const all = { nothing: false, missing: [], asked: [], short: 0, fed: true };
    expect(vegan?.courses).toEqual([
      {
        course: 'First',
        suits: ['salad'],
        onRequest: [],
        notKnown: [],
        roles: [{ role: 'side', dishes: ['salad'] }],
        ...all,
      },
      {
        course: 'Bread',
        suits: [],
        onRequest: [
          {
            name: 'rolls',
            changes: [{ key: 'dishes.differs.without', values: { item: 'cheese' } }],
          },
        ],
        notKnown: [],
        roles: [{ role: undefined, dishes: ['rolls'] }],
        ...all,
      },
      {
        course: 'Jars',
        suits: [],
        onRequest: [],
        notKnown: ['relish'],
        roles: [],
        ...all,
        nothing: true,
        fed: false,
      },
    ]);
    expect(vegan?.whole).toBe('some courses');
  });

  test('is asked of combined needs as one: what suits each alone may suit no guest who has both', () => {
    const bread = course('Bread', ['bread', rolls], ['bread', made('rice-cakes', food('rice'), cheese)]);
    const fed = (text: string) => covered(bread, [text, 1])[0]?.whole;
    expect([fed('vegan'), fed('no gluten'), fed('vegan + no gluten')]).toEqual([
      'every course',
      'every course',
      'nothing',
    ]);
  });

  test('cannot be told of a need nobody knows', () => {
    expect(covered(menu, ['kiwi', 1])).toMatchObject([{ whole: null, courses: [] }]);
  });
});

describe('roles in a course', () => {
  const lamb = made('lamb', food('shoulder', { from: ['lamb'] }));
  const pot = made('pot', food('beans'));
  const toast = made('toast', flour);
  const dip = made('dip', food('yogurt', { from: ['milk'], allergens: ['milk'] }));
  const lacking = (...dishes: Parameters<typeof course>[1][]) => {
    const [vegan] = covered(course('Table', ...dishes), ['vegan', 4]);
    const { nothing, missing, asked, fed } = vegan!.courses[0]!;
    return { nothing, missing, asked, fed };
  };

  test('toast is no main: whoever eats no meat lacks one where only the bread is for them', () => {
    expect(lacking(['main', lamb], ['bread', toast])).toEqual({
      nothing: false,
      missing: ['main'],
      asked: [],
      fed: false,
    });
    expect(lacking(['main', lamb], ['main', pot], ['bread', toast]).fed).toBe(true);
  });

  test('where no role is stated nobody takes one dish for another, and the role is asked for', () => {
    expect(lacking(lamb, toast)).toMatchObject({ missing: [], asked: ['lamb', 'toast'], fed: false });
    expect(lacking(['main', lamb], toast)).toMatchObject({ missing: [], asked: ['toast'], fed: false });
    // Whatever the pot and the toast are, all of it is for them.
    expect(lacking(pot, toast)).toMatchObject({ asked: [], fed: true });
    // Whatever the lamb is, they have nothing.
    expect(lacking(lamb)).toMatchObject({ nothing: true, asked: [], fed: false });
  });

  test('a sauce feeds nobody and is missed by nobody', () => {
    expect(lacking(['main', lamb], ['sauce', pot])).toMatchObject({ nothing: true, fed: false });
    expect(lacking(['main', pot], ['sauce', dip]).fed).toBe(true);
    expect(lacking(['sauce', dip])).toMatchObject({ nothing: true, fed: false });
  });
});

describe('the role of a dish of which none is stated', () => {
  const at = (name: string, amount: string, facts: Partial<PlacedIn> = {}) =>
    usualRole(must(parsePerGuest(amount)), { name, choose: null, eachGuest: false, ...facts });

  test('is told by a course whose dishes stand in for one another', () => {
    expect(at('Second', '1 serving per guest', { eachGuest: true })).toBe('main');
    expect(at('Pudding', '1 serving per guest', { eachGuest: true })).toBe('sweet');
    expect(at('Mains', '12 fl oz per guest', { choose: 2 })).toBe('main');
    expect(at('In the bowls', '3 oz per guest', { choose: 2 })).toBe('side');
  });

  test('is told by the name of a course, but never a main where everybody gets every dish', () => {
    expect(at('Bread', '1 piece per guest')).toBe('bread');
    expect(at('Beside them', '3 oz per guest')).toBe('side');
    expect(at('Dessert', '1 piece per guest')).toBe('sweet');
    expect(at('Entrée', '1 serving per guest')).toBeUndefined();
    expect(at('Mains and sides', '1 serving per guest')).toBeUndefined();
    expect(at('To share', '1 serving per guest')).toBeUndefined();
  });

  test('is a sauce up to an ounce poured for each guest; more may be a drink, a soup or a custard', () => {
    expect(at('Beside them', '1 fl oz per guest')).toBe('sauce');
    expect(at('Beside them', '30 ml per guest')).toBe('sauce');
    expect(at('Sweet and cold', '8 fl oz per guest')).toBeUndefined();
    expect(at('To drink', '1 fl oz per guest')).toBe('drink');
  });

  test('gives way to what the recipe states, and that to what the package states', () => {
    const placed = { perGuest: must(parsePerGuest('1 piece per guest')), recipe: { role: 'side' as const } };
    const bread = { name: 'Bread', choose: null, eachGuest: false };
    expect(roleOf({ ...placed, recipe: {} }, bread)).toBe('bread');
    expect(roleOf(placed, bread)).toBe('side');
    expect(roleOf({ ...placed, role: 'main' }, bread)).toBe('main');
  });
});

describe('needs to cook for', () => {
  test('include a share of the table that eats no meat where nothing was said of them (common practice, no source)', () => {
    const share = new Fraction('2/25');
    const assumed = guestNeeds(new Map([['milk', 1]]), guests, share);
    // 8 % of 70 at the table = 5.6, up to a whole guest.
    expect(assumed.map(guestNeedSaid).map(inWords)).toEqual([
      '1 × allergy: milk',
      '6 × vegetarian (not stated; assumed)',
    ]);
    expect(
      guestNeeds(new Map([['vegan + milk', 1]]), guests, share)
        .map(guestNeedSaid)
        .map(inWords),
    ).toEqual(['1 × vegan + milk']);
    // Asked and answered: there are none.
    expect(guestNeeds(new Map([['vegetarian', 0]]), guests, share)).toEqual([]);
  });
});

describe('a gap', () => {
  const at = (
    of: typeof tart,
    inCourse: string,
    place: number,
    given: MenuDish['given'] = 'count',
  ): MenuDish => ({
    recipe: of,
    package: 'other',
    course: inCourse,
    at: place,
    given,
  });
  const [gapped] = covered(course('Sweet', tart), ['vegan', 1]);
  const gap = { package: 'own', course: 'Sweet', at: 1, served: [tart] };
  const vegan = must(parseNeed('vegan'));
  const names = (dishes: readonly MenuDish[]) => fillersFor(gap, vegan, dishes).map(({ id }) => id);

  test('is named with the dishes that would fill it: of its own course first, then of courses at its place', () => {
    expect(gapsIn(gapped!).map(({ course: name }) => name)).toEqual(['Sweet']);
    const own = { ...at(made('sorbet', food('fruit')), 'Sweet', 1), package: 'own' };
    const dishes = [
      { ...at(tart, 'Sweet', 1), package: 'own' },
      at(salad, 'First', 0),
      at(made('compote', food('plums')), 'Pudding', 1),
      at(made('figs', food('fig')), 'Sweet', 0.5),
      at(made('cheesecake', cheese), 'Sweet', 1),
      own,
    ];
    expect(names(dishes)).toEqual(['sorbet', 'figs', 'compote']);
  });

  test('is not filled by a drink where the course pours nothing, nor by more than five', () => {
    const many = Array.from({ length: 8 }, (_, index) =>
      at(made(`fruit-${index}`, food('fruit')), 'Sweet', 1),
    );
    expect(names([at(made('coffee', food('beans')), 'Drinks', 1, 'volume'), ...many])).toEqual([
      'fruit-0',
      'fruit-1',
      'fruit-2',
      'fruit-3',
      'fruit-4',
    ]);
  });
});
