import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { guestNeeds } from '../../../src/engine/menu/guest-needs.ts';
import type { TakeRate } from '../../../src/engine/odds/take-rate.ts';
import { courseDemand } from '../../../src/engine/plan/demand/course-demand.ts';
import type { DishPortions, EventDish } from '../../../src/engine/plan/event-input.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { allInWords, inWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, prices, recipe } from './builders.ts';

const roast = recipe('roast', '40 pieces', [line(food('beef', { from: ['beef'] }), '4 lb')]);
const bake = recipe('bake', '40 pieces', [line(food('squash'), '4 lb')]);
const slice = recipe('slice', '40 pieces', [line(food('leek'), '4 lb')]);

/** A dish of which each guest takes a piece or none; its share of first choices, at a risk of 1 in 16. */
function main(of: typeof roast, share: string, facts: Partial<EventDish & TakeRate> = {}): EventDish {
  const { helping, ...rest } = facts;
  const takeRate: TakeRate = {
    appetite: undefined,
    firstChoice: new Fraction(share),
    helping,
    shortOneIn: 16,
    costs: undefined,
  };
  return { ...dish(of, '1 piece per guest'), takeRate, ...rest };
}

const portions = (guests: number, facts: Partial<DishPortions> = {}): DishPortions => ({
  guests: new Fraction(guests),
  needs: [],
  apart: undefined,
  why: [],
  ...facts,
});
const adults = (count: number) => ({ adults: count, children: 0, vendors: 0, staff: 0 });
const needs = (count: number, ...said: readonly [string, number][]) =>
  guestNeeds(new Map(said), adults(count), undefined);

function demanded(course: readonly EventDish[], count: number, ...said: readonly [string, number][]) {
  const found = courseDemand(course, adults(count), needs(count, ...said), undefined);
  if (!found || 'what' in found) throw new Error(inWords(found?.what ?? 'no first choices'));
  return {
    ...found.odds,
    why: allInWords(found.odds.why),
    helpingsOf: [...found.demands.values()].map(({ helpings }) => helpings),
  };
}

describe('a course of which each guest takes one dish', () => {
  // Four free guests, each taking one of two dishes with equal chance: 5 in 16 leave two short, 1 in 16 three.
  test('carries for guests with only one dish on top of what the others share, worked by hand for six guests', () => {
    const mains = [main(roast, '1/2'), main(bake, '1/2')];
    const plan = planEvent(
      event(mains, { guests: adults(6), needs: new Map([['vegan', 2]]) }),
      kitchen(),
      prices(),
    );
    expect(plan.courseOdds.map((odds) => ({ ...odds, why: allInWords(odds.why) }))).toEqual([
      {
        course: 'Table',
        guests: 6,
        oneIn: 16,
        helpings: 6,
        shortOfAll: 0,
        dishes: [
          { name: 'roast', recipe: 'roast', helpings: 2, missed: 5 / 16 },
          { name: 'bake', recipe: 'bake', helpings: 4, missed: 5 / 16 },
        ],
        // By itself the roast takes 3, the bake 3 and the 2 who eat nothing else.
        apart: 8,
        byGuest: 12,
        why: [
          'short at most 1 in 16 of the course as a whole: 4 helpings for 4 guests who take one dish of it',
          '4 + 2 for guests who can eat only one dish = 6 helpings',
          'planned dish by dish at the same risk: 8 helpings',
          'by the per-guest amounts: 12 helpings',
        ],
      },
    ]);
    expect(
      plan.dishes.map(({ need, why }) => [need.amount.toFraction(), allInWords(why).slice(1, -2)]),
    ).toEqual([
      ['2', ['first choice of 50 %: 2 helpings']],
      ['4', ['first choice of 50 %: 2 helpings', '2 + 2 for guests who can eat nothing else = 4 helpings']],
    ]);
  });

  test('adds up guests of two needs who have the same dish alone', () => {
    const said: [string, number][] = [
      ['vegan', 2],
      ['vegetarian', 3],
    ];
    const bakes = main(bake, '1/2', {
      portions: portions(9, {
        needs: [
          { need: 'vegan', guests: 2 },
          { need: 'vegetarian', guests: 3 },
        ],
      }),
    });
    // 9 − 5 are free: 2 of each dish, and 5 bakes more.
    expect(demanded([main(roast, '1/2'), bakes], 9, ...said)).toMatchObject({
      helpingsOf: [2, 7],
      guests: 9,
    });
  });

  test('sets first choices in proportion to what is there, and says so', () => {
    const found = demanded([main(roast, '2/5'), main(bake, '1/5')], 6);
    expect(found.helpingsOf).toEqual([4, 2]);
    const [first] = courseDemandOf([main(roast, '2/5'), main(bake, '1/5')]);
    expect(first).toContain('first choice of 66⅔ % of those there (40 % of all offered): 4 helpings');
  });

  test('speaks of one guest as of one', () => {
    const [first] = courseDemandOf([main(roast, '1')], 1);
    expect(first?.[0]).toMatch(/: 1 helping for 1 guest who takes one dish of it$/);
  });

  test('leaves out those who eat what is made separately, held back for them, or in place of another dish', () => {
    const milk = [{ need: 'no milk', guests: 2 }];
    const separate = main(slice, '1/2', {
      portions: portions(2, { needs: milk, apart: { recipe: 'bake', changes: [] } }),
    });
    // 6 at the table: 4 counted for the bake as it is and 2 for the one without butter.
    const bakes = main(bake, '1/2', { portions: portions(4) });
    const roasts = main(roast, '1/2', { portions: portions(4) });
    expect(demanded([roasts, bakes, separate], 6, ['no milk', 2])).toMatchObject({
      helpingsOf: [2, 2],
      guests: 4,
    });
    const heldBack = main(slice, '1/2', {
      portions: portions(2, { needs: milk }),
      others: new Fraction(0n),
    });
    expect(demanded([main(roast, '1/2'), main(bake, '1/2'), heldBack], 6, ['no milk', 2])).toMatchObject({
      helpingsOf: [2, 2],
      guests: 4,
    });
    const instead = main(slice, '1/3', {
      portions: portions(2, { needs: milk, insteadOf: 'bake' }),
      others: new Fraction(0n),
    });
    expect(demanded([roasts, bakes, instead], 6, ['no milk', 2])).toMatchObject({
      helpingsOf: [2, 2],
      guests: 4,
    });
  });

  test('keeps those among its guests who may have several of its dishes, or none at all', () => {
    const both = { needs: [{ need: 'vegan', guests: 2 }] };
    const two = [
      main(bake, '1/2', { portions: portions(6, both) }),
      main(slice, '1/2', { portions: portions(6, both) }),
    ];
    expect(demanded(two, 6, ['vegan', 2])).toMatchObject({ helpingsOf: [3, 3], guests: 6 });
    expect(demanded([main(roast, '1')], 6, ['vegan', 2])).toMatchObject({ helpingsOf: [6], guests: 6 });
  });

  test('counts what the per-guest amounts come to in helpings', () => {
    const large = main(roast, '1', {
      helping: undefined,
      perGuest: { ...dish(roast, '2 pieces per guest').perGuest },
    });
    expect(demanded([large], 6)).toMatchObject({ byGuest: 6, helpingsOf: [6] });
    const ofTwo = main(roast, '1', { helping: { amount: new Fraction(2n), unit: 'piece' } });
    expect(demanded([ofTwo], 6)).toMatchObject({ byGuest: 3, helpingsOf: [6] });
  });
});

function courseDemandOf(course: readonly EventDish[], count = 6): readonly (readonly string[])[] {
  const found = courseDemand(course, adults(count), [], undefined);
  return found && !('what' in found) ? [...found.demands.values()].map(({ why }) => allInWords(why)) : [];
}

describe('a course whose amounts do not follow from first choices', () => {
  test('has none where no dish of it has a first choice with a risk', () => {
    const plain = dish(roast, '1 piece per guest');
    const noRisk = main(roast, '1');
    const rate = { ...(noRisk.takeRate as TakeRate), shortOneIn: undefined };
    expect(courseDemand([plain], adults(6), [], undefined)).toBeUndefined();
    expect(courseDemand([{ ...noRisk, takeRate: rate }], adults(6), [], undefined)).toBeUndefined();
  });

  test('keeps its per-guest amounts, and says so, where one dish of it has no first choice', () => {
    const found = courseDemand(
      [main(roast, '1/2'), dish(bake, '1 piece per guest')],
      adults(6),
      [],
      undefined,
    );
    expect(found).toMatchObject({
      about: 'roast',
      what: { key: 'found.choices-unknown' },
    });
  });

  test('keeps them too where a guest counts as a part, or a helping is in another measure', () => {
    const guests = { adults: 4, children: 2, vendors: 0, staff: 0 };
    const parts = main(bake, '1/2', { counts: { adults: '1', children: '1/2' } });
    const inParts = courseDemand([main(roast, '1/2'), parts], guests, [], undefined);
    expect(inParts).toMatchObject({ about: 'bake', what: { key: 'found.guests-in-parts' } });
    const liters = main(bake, '1/2', { helping: { amount: new Fraction(1n), unit: 'l' } });
    const unknown = courseDemand([main(roast, '1/2'), liters], adults(6), [], undefined);
    expect(unknown).toMatchObject({
      about: 'bake',
      what: { key: 'found.helping-unknown', values: { dish: 'bake' } },
    });
    // What is made separately in parts of a guest leaves its dish in parts as well.
    const separate = {
      ...parts,
      ...{ portions: portions(0, { guests: new Fraction('3/2'), apart: { recipe: 'roast', changes: [] } }) },
    };
    expect(
      courseDemand([main(roast, '1/2', { portions: portions(4) }), separate], guests, [], undefined),
    ).toMatchObject({ about: 'roast', what: { key: 'found.guests-in-parts' } });
  });
});
