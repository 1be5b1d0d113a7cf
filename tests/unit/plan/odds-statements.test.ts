import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { type Appetite, parseAppetite } from '../../../src/engine/odds/appetite.ts';
import type { TakeRate } from '../../../src/engine/odds/take-rate.ts';
import { oddsWhy } from '../../../src/engine/plan/demand/odds-why.ts';
import type { EventDish, EventInput } from '../../../src/engine/plan/event-input.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, must, pack, prices, recipe } from './builders.ts';

const roast = recipe('roast', '40 pieces', [line(food('beef', { from: ['beef'] }), '4 lb')], {
  pack: { carry: 'tray', serve: 'board' },
});
const bake = recipe('bake', '40 pieces', [line(food('squash'), '4 lb')], { batches: 'half' });
const market = prices(pack('beef', '10 lb', '90.00'), pack('squash', '10 lb', '10.00'));
const half = must(parseAppetite({ none: '50 %', one: '50 %' }));
const shelves = kitchen([
  ['tray', '2 pieces', '1'],
  ['board', '7 pieces', '1'],
]);

function taken(of: typeof roast, appetite: Appetite, facts: Partial<TakeRate> = {}): EventDish {
  const none = { firstChoice: undefined, helping: undefined, shortOneIn: undefined, costs: undefined };
  return { ...dish(of, '1 piece per guest'), takeRate: { ...none, appetite, ...facts } };
}

const adults = (count: number) => ({ adults: count, children: 0, vendors: 0, staff: 0 });

function statements(
  dishes: readonly EventDish[],
  count: number,
  facts: Partial<EventInput> = {},
  list = market,
) {
  const plan = planEvent(event(dishes, { guests: adults(count), ...facts }), shelves, list);
  return plan.dishes.map(
    ({ odds }) => odds && allInWords(oddsWhy(odds, { currency: 'USD', locale: 'en-US' })),
  );
}

// Of four guests who each take one or none with equal chance, 5 in 16 want more than two, 1 in 16 all four.
describe('what is said of the odds of a dish', () => {
  test('goes from who eats it to what balances its costs, each figure worked by hand', () => {
    const rate = { shortOneIn: 16, costs: { missing: '3.00', leftOver: '1.00' } };
    const table = [taken(roast, half, rate), taken(bake, half, rate)];
    const [ofRoast, ofBake] = statements(table, 6, { needs: new Map([['vegan', 2]]) });
    expect(ofRoast).toEqual([
      '6 guests: 4 take as much as they like, 2 can’t eat it',
      'appetite: 50 % take none, 50 % take one; on average ½ for a guest who takes as much as they like',
      'short at most 1 in 16: 3 helpings, the fewest that keep to it; 2 would run short at about 1 in 3.2 events like this',
      'expect 2 helpings of 1 piece',
      'planned: 3 pieces, 3 helpings, runs short at about 1 in 16 events like this',
      // Missing is 1/16 of a helping; left over 3 × 1/16 + 2 × 4/16 + 6/16 = 17/16.
      'with that, expect 0.1 helpings short and 1.1 left over',
      // A helping is a tenth of a pound at 9.00, a tray two pieces, a batch forty.
      'with 1 helping more: 4 pieces, 4 helpings, runs short never, by these shares, costs $0.90',
      'with 1 tray more: 5 pieces, 5 helpings, runs short never, by these shares, costs $1.80',
      'with 1 batch more: 43 pieces, 43 helpings, runs short never, by these shares, costs $36.00',
      'short at most 1 in 20: 4 pieces, 4 helpings',
      'short at most 1 in 50: 4 pieces, 4 helpings',
      'short at most 1 in 100: 4 pieces, 4 helpings',
      // Three suffice at 15/16, two at 11/16; 3.00 ÷ (3.00 + 1.00) is 12/16.
      'advice: 3 pieces, 3 helpings, runs short at about 1 in 16 events like this, balances $3.00 for a missing helping against $1.00 for one left over',
    ]);
    expect(ofBake?.[0]).toBe(
      '6 guests: 4 take as much as they like, 2 have nothing else in this course and take at least one helping',
    );
    // Half batches of 40: the 5 pieces that are planned come out as 20, and half a batch more is 20 more.
    expect(ofBake).toContain(
      'as the batches come out: 20 pieces, 20 helpings, runs short never, by these shares',
    );
    expect(ofBake).toContain(
      'with ½ batch more: 40 pieces, 40 helpings, runs short never, by these shares, costs $2.00',
    );
  });

  test('speaks of one guest as of one, and of nobody apart where everybody is free to take it', () => {
    const each = [taken(roast, half), taken(bake, half)];
    const [roasts, bakes] = statements(each, 2, { needs: new Map([['vegan', 1]]) });
    expect([roasts?.[0], bakes?.[0]]).toEqual([
      '2 guests: 1 takes as much as they like, 1 can’t eat it',
      '2 guests: 1 takes as much as they like, 1 has nothing else in this course and takes at least one helping',
    ]);
    expect(statements(each, 2)[0]?.[0]).toMatch(/^appetite: /);
  });

  test('tells how guests fail to come, where they do: alone or in parties', () => {
    const failing = (percent: bigint, partyOf: number) =>
      statements([taken(bake, half)], 6, {
        attendance: { failToCome: new Fraction(percent, 100n), partyOf },
      })[0]?.find((each) => each.includes('do not come'));
    expect(failing(2n, 3)).toBe('2 % of the guests do not come, in parties of 3');
    expect(failing(2n, 1)).toBe('2 % of the guests do not come, each deciding alone');
    expect(failing(0n, 3)).toBeUndefined();
  });

  test('leaves out shares that nobody takes, the cost that no price gives, and advice that no costs give', () => {
    const [bare] = statements([taken(bake, must(parseAppetite({ one: '100 %' })))], 4, {}, prices());
    expect(bare?.[0]).toBe(
      'appetite: 100 % take one; on average 1 for a guest who takes as much as they like',
    );
    expect(bare?.join('\n')).not.toMatch(/costs|advice/);
  });

  test('says nothing of one helping fewer where none is enough', () => {
    const rarely: Appetite = { shares: [new Fraction('999/1000'), new Fraction('1/1000')] };
    const why = statements([taken(bake, rarely, { shortOneIn: 2 })], 4)[0]?.find((each) =>
      each.includes('the fewest that keep to it'),
    );
    expect(why).toBe('short at most 1 in 2: 0 helpings, the fewest that keep to it');
  });

  test('turns a helping into what the amount counts, where the recipe says how', () => {
    const soup = recipe('soup', ['10 servings', '5 l'], [line(food('leek'), '4 lb')]);
    const ladle = { helping: { amount: new Fraction('1/4'), unit: 'l' } };
    const served = (of: typeof soup, facts: Partial<TakeRate>) => ({
      ...dish(of, '1 serving per guest'),
      takeRate: { ...(taken(of, half).takeRate as TakeRate), ...facts },
    });
    const plan = planEvent(event([served(soup, ladle)], { guests: adults(4) }), shelves, market);
    // A quarter of a liter is half a serving, so that four servings hold eight helpings.
    expect(plan.dishes[0]?.odds?.planned).toMatchObject({ helpings: 8, short: 0 });
    const unknown = { helping: { amount: new Fraction(1n), unit: 'lb' } };
    const without = planEvent(event([served(soup, unknown)], { guests: adults(4) }), shelves, market);
    expect([without.dishes[0]?.odds, foundInWords(without.findings).map(({ what }) => what)]).toEqual([
      undefined,
      expect.arrayContaining([expect.stringContaining('a helping of soup cannot be turned into serving')]),
    ]);
  });
});

describe('who eats of a dish', () => {
  const eaters = (dishes: readonly EventDish[], facts: Partial<EventInput>) =>
    planEvent(event(dishes, facts), shelves, market).dishes[0]?.odds?.demand.eaters;
  const table = [taken(roast, half), taken(bake, half)];

  test('is everybody for a need that is only assumed, or that nobody can read', () => {
    const guests = adults(20);
    expect(eaters(table, { guests, noMeat: new Fraction('1/10') })).toEqual({ sure: 0, free: 20, cannot: 0 });
    expect(eaters(table, { guests, needs: new Map([['fond of quiet', 3]]) })).toEqual({
      sure: 0,
      free: 20,
      cannot: 0,
    });
  });

  test('is everybody of a dish that counts only some of the table', () => {
    const facts = {
      guests: { adults: 10, children: 4, vendors: 0, staff: 0 },
      needs: new Map([['vegan', 2]]),
    };
    const forAdults = { ...taken(roast, half), counts: { adults: '1' } } as const;
    expect(eaters([forAdults], facts)).toEqual({ sure: 0, free: 10, cannot: 0 });
    const forChildren = { ...taken(roast, half), counts: { children: '1' } } as const;
    expect(eaters([forChildren], facts)).toEqual({ sure: 0, free: 4, cannot: 0 });
    expect(eaters([taken(roast, half)], facts)).toEqual({ sure: 0, free: 12, cannot: 2 });
  });

  test('does not ask after another course: who finds something else there has nothing else here', () => {
    const later = { ...taken(bake, half), course: 'Later' };
    const both = [taken(bake, half), later];
    expect(eaters(both, { guests: adults(6), needs: new Map([['vegan', 2]]) })).toEqual({
      sure: 2,
      free: 4,
      cannot: 0,
    });
  });
});
