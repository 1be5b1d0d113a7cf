import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import type { DishRole } from '../../../src/engine/course/dish-role.ts';
import type { Recipe } from '../../../src/engine/food/recipe.ts';
import { type GuestNeed, guestNeeds } from '../../../src/engine/menu/guest-needs.ts';
import type { EventDish } from '../../../src/engine/plan/event-input.ts';
import { partDishes } from '../../../src/engine/plan/servings/portions.ts';
import { splitDish } from '../../../src/engine/plan/servings/split-dish.ts';
import {
  cookedFor,
  eatersOf,
  replacedFor,
  takesHeldBack,
} from '../../../src/engine/plan/servings/who-eats.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { dish, food, line, recipe } from './builders.ts';

const TABLE = { adults: 90, children: 10, vendors: 0, staff: 0 };
const needs = (of: Record<string, number>): GuestNeed[] =>
  guestNeeds(new Map(Object.entries(of)), TABLE, undefined);
const one = (text: string, guests = 4, said = true): GuestNeed => ({
  ...needs({ [text]: guests })[0]!,
  said,
});

const beef = food('beef', { from: ['beef'] });
const butter = food('butter', { from: ['milk'], allergens: ['milk'] });
const plated = (
  id: string,
  of: Recipe['lines'],
  facts: Partial<EventDish> = {},
  changes: Recipe['changes'] = [],
) => ({
  ...dish(recipe(id, '10 servings', of, { changes }), '1 serving per guest'),
  ...facts,
});
const stew = plated('stew', [line(beef, '1 lb')], { role: 'main' });
const mash = plated('mash', [line(butter, '1 lb'), line(food('potato'), '9 lb')], { role: 'side' }, [
  { item: 'butter', instead: undefined, needs: ['vegan', 'milk'] },
]);
const pot = plated('pot', [line(food('beans'), '1 lb')], { role: 'main' });
const relish = plated('relish', [line(food('relish', { contains: undefined }), '1 lb')]);
const instead = (of: EventDish, facts: Partial<EventDish> = {}): EventDish => ({
  ...pot,
  others: new Fraction(0n),
  insteadOf: { recipe: of.recipe.id },
  ...facts,
});
const as = (of: EventDish, role: DishRole | undefined): EventDish => ({ ...of, role });

describe('who can eat a dish', () => {
  const eaten = (of: EventDish, need: GuestNeed, course: readonly EventDish[] = [of]) =>
    eatersOf(of, need, course).map(({ guests, variant }) => [guests, variant?.recipe.id ?? null]);

  test('eats it as it is where it suits for certain, else as it is made for them, else not at all', () => {
    expect(eaten(pot, one('vegan', 3))).toEqual([[3, null]]);
    expect(eaten(mash, one('vegan', 3))).toEqual([[3, 'mash--without-butter']]);
    expect(eaten(stew, one('vegan'))).toEqual([]);
    expect(eaten(relish, one('milk'))).toEqual([]);
    expect(eaten(pot, { ...one('vegan'), need: null })).toEqual([]);
  });

  test('gets nothing made for a need that nobody stated, where another dish of the same known role suits', () => {
    const assumed = one('vegan', 4, false);
    const side = as(pot, 'side');
    expect(eaten(mash, assumed, [mash, side])).toEqual([]);
    expect(eaten(mash, one('vegan'), [mash, side])).toHaveLength(1);
    expect(eaten(mash, assumed, [mash, pot])).toHaveLength(1);
    expect(eaten(as(mash, undefined), assumed, [mash, as(pot, undefined)])).toHaveLength(1);
    expect(eaten(mash, assumed, [mash, as(stew, 'side')])).toHaveLength(1);
  });
});

describe('the dish that a guest gets in place of another', () => {
  const replaced = (original: EventDish, need: GuestNeed, ...course: EventDish[]) =>
    replacedFor(original, need, [original, ...course])?.recipe.id;

  test('is the first that suits, or can be made to, and only for who cannot eat the other', () => {
    expect(replaced(stew, one('vegan'), instead(stew))).toBe('pot');
    expect(replaced(stew, one('sesame'), instead(stew))).toBeUndefined();
    const first = { ...mash, others: new Fraction(0n), insteadOf: { recipe: 'stew' } };
    expect(replaced(stew, one('vegan'), first, instead(stew))).toBe('mash');
    expect(replaced(stew, one('vegan'), { ...relish, insteadOf: { recipe: 'stew' } }, instead(stew))).toBe(
      'pot',
    );
    expect(replaced(stew, one('vegan'), instead(mash))).toBeUndefined();
    expect(replaced(stew, { ...one('vegan'), need: null }, instead(stew))).toBeUndefined();
    // What nobody knows of the other is no reason to eat it.
    expect(replaced(relish, one('milk'), instead(relish))).toBe('pot');
  });

  test('is for the needs it names, and those that what is done for them helps', () => {
    const forVegans = instead(stew, { insteadOf: { recipe: 'stew', needs: ['vegan'] } });
    expect(replaced(stew, one('vegan'), forVegans)).toBe('pot');
    expect(replaced(stew, one('vegetarian'), forVegans)).toBe('pot');
    const forGluten = instead(stew, { insteadOf: { recipe: 'stew', needs: ['no gluten'] } });
    expect(replaced(stew, one('vegan'), forGluten)).toBeUndefined();
    const unread = instead(stew, { insteadOf: { recipe: 'stew', needs: ['kiwi'] } });
    expect(replaced(stew, one('vegan'), unread)).toBeUndefined();
  });
});

describe('the guests a dish is cooked for', () => {
  const cooked = (
    of: EventDish,
    stated: readonly GuestNeed[],
    course: readonly EventDish[] = [of],
    guests = TABLE,
  ) => {
    const { total, why, notFor } = cookedFor(of, course, guests, stated);
    return { total: total.toFraction(), why: allInWords(why), notFor };
  };
  const onlyEaters = { ...stew, onlyForEaters: true };

  test('are all it counts, without those who get another in its place', () => {
    expect(cooked(stew, needs({ vegan: 6, sesame: 2 }), [stew, instead(stew)])).toEqual({
      total: '94',
      why: [
        '90 adults + 10 children = 100 guests',
        '100 guests − 6 who get pot instead (6 × vegan) = 94 guests',
      ],
      notFor: [],
    });
    expect(cooked(stew, needs({ vegan: 6 }))).toMatchObject({ total: '100', notFor: [] });
  });

  test('are only those who can eat it where the kitchen says so, and needs were stated', () => {
    expect(cooked(onlyEaters, needs({ vegan: 6, vegetarian: 2, sesame: 3 }))).toEqual({
      total: '92',
      why: [
        '90 adults + 10 children = 100 guests',
        '100 guests − 8 who can’t eat it (6 × vegan, 2 × vegetarian) = 92 guests',
      ],
      notFor: ['vegan', 'vegetarian'],
    });
    expect(cooked(onlyEaters, [one('vegan', 6, false)]).total).toBe('100');
    // Each is left out once: by what they get instead.
    expect(cooked(onlyEaters, needs({ vegan: 6 }), [onlyEaters, instead(stew)])).toMatchObject({
      total: '94',
      notFor: [],
    });
    // What nobody knows, and what can be made for them, leaves nobody out.
    expect(cooked({ ...relish, onlyForEaters: true }, needs({ milk: 5 })).total).toBe('100');
    expect(cooked({ ...mash, onlyForEaters: true }, needs({ vegan: 5 })).total).toBe('100');
  });

  test('are left out by the least that anybody at the table counts, and never fewer than none', () => {
    const halves = { ...onlyEaters, counts: { adults: '1', children: '1/2' } };
    expect(cooked(halves, needs({ vegan: 6 })).total).toBe('92');
    expect(cooked(halves, needs({ vegan: 6 }), [halves], { ...TABLE, children: 0 }).total).toBe('84');
    const adults = { ...onlyEaters, counts: { adults: '1' } };
    expect(cooked(adults, needs({ vegan: 6 }))).toMatchObject({ total: '90', notFor: [] });
    expect(cooked(adults, needs({ vegan: 6 }), [adults], { ...TABLE, children: 0 })).toMatchObject({
      total: '84',
      notFor: ['vegan'],
    });
    const few = { adults: 3, children: 0, vendors: 0, staff: 0 };
    expect(cooked(onlyEaters, needs({ vegan: 6 }), [onlyEaters], few).total).toBe('0');
    const double = { ...onlyEaters, counts: { adults: '2' } };
    expect(cooked(double, needs({ vegan: 6 }), [double], { ...TABLE, children: 0 }).total).toBe('174');
  });
});

describe('a dish held back for those who need it', () => {
  const held = { ...pot, others: new Fraction(0n) };
  const taken = (regular: readonly EventDish[], text = 'vegan', of: EventDish = held) =>
    takesHeldBack(of, one(text), regular, [...regular, of]);

  test('is taken where nothing else feeds them, or nothing of its role does', () => {
    expect(taken([stew])).toBe(true);
    expect(taken([stew, as(pot, 'bread')])).toBe(true);
    expect(taken([stew, as(plated('other', [line(food('rice'), '1 lb')]), 'main')])).toBe(false);
    expect(taken([stew], 'sesame')).toBe(false);
    // A sauce feeds nobody, and is missed by nobody.
    expect(taken([as(pot, 'sauce')])).toBe(true);
    expect(taken([as(stew, 'sauce'), as(pot, 'main')])).toBe(false);
    // The side is missed by those who cannot eat it, and no main stands in for it.
    expect(taken([as(stew, 'side'), as(pot, 'main')])).toBe(false);
    expect(taken([as(stew, 'side'), as(pot, 'main')], 'vegan', as(held, 'side'))).toBe(true);
    // A role nobody knows may be any.
    expect(taken([as(stew, undefined), as(pot, 'side')])).toBe(true);
    expect(taken([stew, as(pot, 'side')], 'vegan', as(held, undefined))).toBe(true);
  });

  test('is not taken by who gets another dish in place of the one they cannot eat', () => {
    const replacing = instead(stew, {
      recipe: recipe('barley', '10 servings', [line(food('barley'), '1 lb')]),
    });
    expect(takesHeldBack(held, one('vegan'), [stew], [stew, held, replacing])).toBe(false);
    expect(takesHeldBack(held, one('vegan'), [stew], [stew, held])).toBe(true);
  });
});

describe('a dish as its portions', () => {
  const vegan = one('vegan', 3);
  const milk = one('milk', 2);
  const asIs = { need: one('sesame', 5), guests: 5, variant: null };
  const apart = (need: GuestNeed) => eatersOf(mash, need, [mash])[0]!;
  const split = (total: string, ...eaters: Parameters<typeof splitDish>[3]) =>
    splitDish(mash, new Fraction(total), ['so'], eaters, { insteadOf: 'stew', notFor: ['x'] }).map(
      ({ recipe: { id }, portions }) => [
        id,
        portions?.guests.toFraction(),
        portions?.needs,
        portions?.insteadOf,
        portions?.notFor,
      ],
    );

  test('has one entry for each way it is made, with its guests, and itself for the rest', () => {
    expect(split('100', apart(vegan), asIs, apart(milk))).toEqual([
      ['mash', '95', [{ need: 'sesame', guests: 5 }], 'stew', ['x']],
      [
        'mash--without-butter',
        '5',
        [
          { need: 'vegan', guests: 3 },
          { need: 'milk', guests: 2 },
        ],
        'stew',
        undefined,
      ],
    ]);
    expect(split('100')).toEqual([['mash', '100', [], 'stew', ['x']]]);
  });

  test('is not made as it is where nobody is left for it, and never for fewer than none', () => {
    expect(split('3', apart(vegan)).map(([id]) => id)).toEqual(['mash--without-butter']);
    expect(split('2', apart(vegan)).map(([id, guests]) => [id, guests])).toEqual([
      ['mash--without-butter', '3'],
    ]);
  });
});

describe('the portions of a course', () => {
  const rows = (dishes: readonly EventDish[], of: readonly GuestNeed[]) =>
    partDishes(dishes, TABLE, of).dishes.map(({ name, portions }) => [
      name,
      portions?.guests.toFraction() ?? null,
    ]);

  test('are the dishes themselves where nobody needs anything', () => {
    const dishes = [stew, mash];
    expect(partDishes(dishes, TABLE, [])).toEqual({ dishes, findings: [] });
  });

  test('where each guest chooses go to stated needs first, and what is missing is told', () => {
    const chosen = (of: EventDish, chosenBy: number) => ({ ...of, chosenBy });
    const course = [chosen(stew, 98), chosen(pot, 2)];
    const { dishes, findings } = partDishes(course, TABLE, [one('vegetarian', 2, false), one('vegan', 3)]);
    expect(dishes.map(({ name, portions }) => [name, portions?.needs])).toEqual([
      ['stew', []],
      ['pot', [{ need: 'vegan', guests: 2 }]],
    ]);
    expect(foundInWords(findings)).toEqual([
      {
        about: 'vegan',
        what: '1 × vegan: by the counts chosen, no portion in Table is left for them',
        wayOut: 'ask the client to take more of pot',
      },
    ]);
    const none = partDishes([chosen(stew, 100)], TABLE, [one('vegan', 3)]).findings;
    expect(foundInWords(none)[0]?.wayOut).toBe('offer them a dish that suits, and ask the client');
    expect(partDishes([chosen(stew, 100)], TABLE, [one('vegan', 3, false)]).findings).toEqual([]);
  });

  test('in place of another are for who cannot eat that, and taken off it', () => {
    expect(rows([stew, instead(stew)], needs({ vegan: 6 }))).toEqual([
      ['stew', '94'],
      ['pot', '6'],
    ]);
    expect(rows([stew, instead(stew, { others: new Fraction('1/10') })], needs({ vegan: 10 }))).toEqual([
      ['stew', '90'],
      ['pot', '19'],
    ]);
    const unneeded = partDishes([stew, instead(stew)], TABLE, []);
    expect([unneeded.dishes.map(({ name }) => name), unneeded.findings]).toEqual([['stew'], []]);
    const heldBack = partDishes([stew, { ...pot, others: new Fraction(0n) }], TABLE, []);
    expect(foundInWords(heldBack.findings)[0]?.what).toContain(
      'is held back for guests who need it, but nobody does',
    );
  });
});
