import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parseAppetite } from '../../../src/engine/odds/appetite.ts';
import type { TakeRate } from '../../../src/engine/odds/take-rate.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { allInWords, foundInWords } from '../../in-words.ts';
import { dish, event, food, kitchen, line, must, pack, prices, recipe } from './builders.ts';

const flour = food('flour');
const rolls = recipe('rolls', '40 pieces', [line(flour, '4 lb')]);
const roast = recipe('roast', '40 pieces', [line(food('beef', { from: ['beef'] }), '4 lb')]);
const market = prices(pack('flour', '10 lb', '10.00'), pack('beef', '10 lb', '90.00'));

function takeRate(facts: Partial<TakeRate>): TakeRate {
  return {
    appetite: undefined,
    firstChoice: undefined,
    helping: undefined,
    shortOneIn: undefined,
    costs: undefined,
    ...facts,
  };
}

const half = must(parseAppetite({ none: '50 %', one: '50 %' }));
const adults = (count: number) => ({ guests: { adults: count, children: 0, vendors: 0, staff: 0 } });

describe('the odds of a plan', () => {
  // Of four guests who each take one or none with equal chance, 11 in 16 leave two enough, 15 in 16 three: by hand.
  test('are those worked by hand for four guests, and the least amount keeps the chosen risk', () => {
    const few = {
      ...dish(rolls, '1 piece per guest'),
      takeRate: takeRate({ appetite: half, shortOneIn: 16 }),
    };
    const plan = planEvent(event([few], adults(4)), kitchen(), market);
    const [planned] = plan.dishes;
    expect(planned?.need.amount.toFraction()).toBe('3');
    expect(planned?.odds?.planned.short).toBeCloseTo(1 / 16, 12);
    expect(planned?.odds?.expected).toBeCloseTo(2, 12);
    expect(allInWords(planned?.why).join('\n')).toContain('short at most 1 in 16: 3 helpings');
    // One more roll is 4 lb ÷ 40 of flour at a dollar a pound.
    expect(planned?.odds?.more[0]).toMatchObject({ helpings: 4, short: 0 });
    expect(planned?.odds?.more[0]?.cost?.amount.toFixed(2)).toBe('0.10');
  });

  test('give those with nothing else a helping for certain, and those who cannot eat it none', () => {
    const needs = new Map([['vegan', 2]]);
    const each = { appetite: half };
    const table = [rolls, roast].map((of) => ({
      ...dish(of, '1 piece per guest'),
      takeRate: takeRate(each),
    }));
    const plan = planEvent(event(table, { ...adults(6), needs }), kitchen(), market);
    const eaters = plan.dishes.map(({ odds }) => odds?.demand.eaters);
    expect(eaters).toEqual([
      { sure: 2, free: 4, cannot: 0 },
      { sure: 0, free: 4, cannot: 2 },
    ]);
    expect(plan.dishes[0]?.odds?.expected).toBeCloseTo(4, 12);
  });

  test('name the amount that balances the costs by the critical ratio, and leave what is planned alone', () => {
    const costs = { missing: '3.00', leftOver: '1.00' };
    const few = { ...dish(rolls, '1 piece per guest'), takeRate: takeRate({ appetite: half, costs }) };
    const [planned] = planEvent(event([few], adults(4)), kitchen(), market).dishes;
    // 3 ÷ (3 + 1) = 3/4: two are enough with 11/16 only, three with 15/16.
    expect(planned?.odds?.advice?.helpings).toBe(3);
    expect(planned?.need.amount.toFraction()).toBe('4');
  });

  test('carry a course as a whole, and less than its dishes apart', () => {
    const choice = takeRate({ firstChoice: new Fraction(1n, 2n), shortOneIn: 50 });
    const mains = [rolls, roast].map((of) => ({ ...dish(of, '1 piece per guest'), takeRate: choice }));
    const plan = planEvent(event(mains, adults(100)), kitchen(), market);
    expect(plan.dishes.map(({ need }) => need.amount.toFraction())).toEqual(['50', '50']);
    // 60 of 100 tosses are exceeded at 0.0176, 59 at 0.0284: two dishes apart take 60 each.
    expect(plan.courseOdds).toMatchObject([{ helpings: 100, shortOfAll: 0, apart: 120, byGuest: 200 }]);
  });

  test('are not guessed where nobody says an appetite or a child counts as a part', () => {
    const plain = dish(rolls, '1 piece per guest');
    const parts = { ...dish(roast, '1 piece per guest', { counts: 'adults, children at 1/2' }) };
    const guests = { adults: 4, children: 2, vendors: 0, staff: 0 };
    const plan = planEvent(
      event([plain, { ...parts, takeRate: takeRate({ appetite: half, shortOneIn: 16 }) }], { guests }),
      kitchen(),
      market,
    );
    expect(plan.dishes.map(({ odds }) => odds)).toEqual([undefined, undefined]);
    expect(plan.dishes[1]?.need.amount.toFraction()).toBe('5');
    expect(foundInWords(plan.findings).some(({ what }) => what.includes('as part of one'))).toBe(true);
  });

  test('never need less for more guests or a smaller risk', () => {
    const need = (guests: number, shortOneIn: number) =>
      planEvent(
        event(
          [{ ...dish(rolls, '1 piece per guest'), takeRate: takeRate({ appetite: half, shortOneIn }) }],
          adults(guests),
        ),
        kitchen(),
        market,
      ).dishes[0]!.need.amount;
    for (let guests = 1; guests < 60; guests += 1) {
      expect(need(guests + 1, 20).gte(need(guests, 20))).toBe(true);
      expect(need(guests, 200).gte(need(guests, 20))).toBe(true);
    }
  });
});
