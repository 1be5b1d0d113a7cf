import { describe, expect, test } from 'vitest';
import type { DishRole } from '../../../src/engine/course/dish-role.ts';
import { offeredRole, offeredRoles } from '../../../src/offers/event/offered-roles.ts';

type Dish = Parameters<typeof offeredRole>[1];
type Asked = Parameters<typeof offeredRole>[0];

/** A dish as an offer has it, by its recipe; by default so many pieces that nothing tells what it is. */
const offered = (recipe: string, facts: Partial<Dish> = {}): Dish => ({
  recipe,
  perGuest: '1 piece per guest',
  ...facts,
});
const course = (name: string, ...dishes: readonly Dish[]) =>
  ({ name, choose: null, eachGuest: false, dishes }) as unknown as Parameters<typeof offeredRole>[2];

/** A kitchen with a package whose course has a dish of a role, and with recipes of roles. */
function kitchenOf(
  live: readonly [course: string, recipe: string, role?: DishRole][] = [],
  recipes: Readonly<Record<string, DishRole | undefined>> = {},
): Asked {
  const courses = live.map(([name, id, role]) => ({ name, dishes: [{ recipe: { id }, role }] }));
  return {
    packages: new Map([['lunch', { courses }]]),
    recipes: new Map(Object.entries(recipes).map(([id, role]) => [id, { id, role }])),
  } as unknown as Asked;
}

const ROLLS = offered('rolls');

describe('the role of an offered dish', () => {
  const table = course('Table', ROLLS);
  const role = (book: Asked, dish: Dish = ROLLS, of = table, id = 'lunch') => offeredRole(book, dish, of, id);

  test('is what the offer states, else the package now, else the recipe, else the course', () => {
    const book = kitchenOf([['Table', 'rolls', 'side']], { rolls: 'main' });
    expect(role(book, { ...ROLLS, role: 'bread' })).toBe('bread');
    expect(role(book)).toBe('side');
    expect(role(kitchenOf([['Table', 'rolls']], { rolls: 'main' }))).toBe('main');
    expect(role(kitchenOf(), ROLLS, course('Breads', ROLLS))).toBe('bread');
    expect(role(kitchenOf())).toBeUndefined();
  });

  test('is not that of another course, dish or package', () => {
    expect(role(kitchenOf([['Buffet', 'rolls', 'side']]))).toBeUndefined();
    expect(role(kitchenOf([['Table', 'soup', 'side']]))).toBeUndefined();
    expect(role(kitchenOf([['Table', 'rolls', 'side']]), ROLLS, table, 'supper')).toBeUndefined();
    expect(
      role(
        kitchenOf([
          ['Buffet', 'rolls', 'main'],
          ['Table', 'rolls', 'side'],
        ]),
      ),
    ).toBe('side');
  });

  test('that nothing tells is that of the dish it takes the place of', () => {
    const instead = offered('rice cakes', {
      insteadOf: { recipe: 'rolls' } as NonNullable<Dish['insteadOf']>,
    });
    const both = course('Table', { ...ROLLS, role: 'bread' }, instead);
    expect(role(kitchenOf(), instead, both)).toBe('bread');
    expect(role(kitchenOf([], { 'rice cakes': 'side' }), instead, both)).toBe('side');
    // One that names a dish which is not there, or which itself takes the place of one that names it.
    expect(role(kitchenOf(), instead, course('Table', instead))).toBeUndefined();
    const ring = offered('rolls', { insteadOf: { recipe: 'rice cakes' } as NonNullable<Dish['insteadOf']> });
    expect(role(kitchenOf(), instead, course('Table', ring, instead))).toBeUndefined();
  });
});

test('the roles of all that is offered are in the order of the menus, a replaced dish’s by its own recipe', () => {
  const terms = {
    packages: [
      { id: 'lunch', courses: [course('Table', ROLLS, offered('soup')), course('Sides', offered('slaw'))] },
    ],
  } as unknown as Parameters<typeof offeredRoles>[1];
  const swap = (to: string) =>
    [{ what: 'dish', from: 'rolls', to }] as unknown as Parameters<typeof offeredRoles>[2];
  const book = kitchenOf([['Table', 'rolls', 'bread']], { stew: 'main', mash: undefined });
  expect(offeredRoles(book, terms, [])).toEqual([[['bread', null], ['side']]]);
  expect(offeredRoles(book, terms, swap('stew'))).toEqual([[['main', null], ['side']]]);
  expect(offeredRoles(book, terms, swap('mash'))).toEqual([[['bread', null], ['side']]]);
  expect(offeredRoles(book, terms, swap('gone'))).toEqual([[['bread', null], ['side']]]);
});
