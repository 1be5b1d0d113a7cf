import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parseNeed } from '../../../src/engine/food/need.ts';
import { coverageOf, gapsIn } from '../../../src/engine/menu/coverage.ts';
import { fillersFor, type MenuDish } from '../../../src/engine/menu/fillers.ts';
import { guestNeeds, guestNeedText } from '../../../src/engine/menu/guest-needs.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

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
const served = (name: string, ...recipes: (typeof tart)[]) => ({
  name,
  dishes: recipes.map((each) => ({ name: each.id, recipe: each })),
});
const guests = { adults: 60, children: 10, vendors: 2, staff: 4 };
const needs = (...named: [string, number][]) => guestNeeds(new Map(named), guests, undefined);

describe('whom a menu feeds', () => {
  const menu = [served('First', tart, salad), served('Bread', rolls), served('Jars', relish)];

  test('is told by course: what suits, what is made apart, what nobody can tell', () => {
    const [vegan] = coverageOf(menu, needs(['vegan', 2]));
    expect(vegan?.courses).toEqual([
      { course: 'First', suits: ['salad'], onRequest: [], notKnown: [], fed: true },
      {
        course: 'Bread',
        suits: [],
        onRequest: [{ name: 'rolls', changes: ['without cheese'] }],
        notKnown: [],
        fed: true,
      },
      { course: 'Jars', suits: [], onRequest: [], notKnown: ['relish'], fed: false },
    ]);
    expect(vegan?.whole).toBe('some courses');
  });

  test('is asked of combined needs as one: what suits each alone may suit no guest who has both', () => {
    const bread = [served('Bread', rolls, made('rice-cakes', food('rice'), cheese))];
    const fed = (text: string) => coverageOf(bread, needs([text, 1]))[0]?.whole;
    expect([fed('vegan'), fed('no gluten'), fed('vegan + no gluten')]).toEqual([
      'every course',
      'every course',
      'nothing',
    ]);
  });

  test('cannot be told of a need nobody knows', () => {
    expect(coverageOf(menu, needs(['kiwi', 1]))).toMatchObject([{ whole: null, courses: [] }]);
  });
});

describe('needs to cook for', () => {
  test('include a share of the table that eats no meat where nothing was said of them (common practice, no source)', () => {
    const share = new Fraction('2/25');
    const assumed = guestNeeds(new Map([['milk', 1]]), guests, share);
    // 8 % of 70 at the table = 5.6, up to a whole guest.
    expect(assumed.map(guestNeedText)).toEqual(['1 × allergy: milk', '6 × vegetarian (not said; assumed)']);
    expect(guestNeeds(new Map([['vegan + milk', 1]]), guests, share).map(guestNeedText)).toEqual([
      '1 × vegan + milk',
    ]);
    // Asked and answered: there are none.
    expect(guestNeeds(new Map([['vegetarian', 0]]), guests, share)).toEqual([]);
  });
});

describe('a gap', () => {
  const at = (
    of: typeof tart,
    course: string,
    place: number,
    given: MenuDish['given'] = 'count',
  ): MenuDish => ({
    recipe: of,
    package: 'other',
    course,
    at: place,
    given,
  });
  const [gapped] = coverageOf([served('Sweet', tart)], needs(['vegan', 1]));
  const gap = { package: 'own', course: 'Sweet', at: 1, served: [tart] };
  const vegan = must(parseNeed('vegan'));
  const names = (dishes: readonly MenuDish[]) => fillersFor(gap, vegan, dishes).map(({ id }) => id);

  test('is named with the dishes that would fill it: of its own course first, then of courses at its place', () => {
    expect(gapsIn(gapped!).map(({ course }) => course)).toEqual(['Sweet']);
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
