import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { countedPortion } from '../../../src/engine/drinks/drink-portion.ts';
import { drinksOver, parseDrinkRate } from '../../../src/engine/drinks/drink-rate.ts';
import { drinkShares } from '../../../src/engine/drinks/drink-shares.ts';
import { isHotDay, USUAL_HABITS } from '../../../src/engine/drinks/drinks-habits.ts';
import { coolingIce } from '../../../src/engine/drinks/ice.ts';
import { parseTemperature } from '../../../src/engine/measure/temperature.ts';
import { DEFAULT_COUNTS, parseCounts, weightOf } from '../../../src/engine/quote/counts.ts';
import { must } from '../plan/builders.ts';

const over = (rate: string, hours: string) =>
  drinksOver(must(parseDrinkRate(rate)), new Fraction(hours)).toFraction();

describe('the drinks one guest takes', () => {
  test.each([
    ['2 in the first hour, then 1 per hour', '4', '5'],
    ['2 in the first hour, then 1 per hour', '5.5', '13/2'],
    ['2 in the first hour, then 1 per hour', '1', '2'],
    ['2 in the first hour then ½ per hour', '0.5', '1'],
    ['1½ drinks per hour', '3', '9/2'],
    ['0 in the first hour, then 1 per hour', '3', '2'],
  ])('at %s over %s hours are %s', (rate, hours, drinks) => {
    expect(over(rate, hours)).toBe(drinks);
  });

  test.each([
    'two per hour',
    '2',
    '2 per guest',
    '2 in the first hour',
    '0 per hour',
    '25 per hour',
    '-1 per hour',
  ])('are not read from %j', (text) => {
    expect(parseDrinkRate(text).ok).toBe(false);
  });
});

describe('a child’s part of an adult’s amount', () => {
  const half = new Fraction(1n, 2n);
  const weight = (adult: string, child: string) => {
    const portion = {
      unit: 'fl oz',
      adult: new Fraction(adult),
      child: new Fraction(child),
      forWorkers: true,
    };
    return countedPortion(portion, DEFAULT_COUNTS)?.counts ?? null;
  };

  test('is exact where menus can write it, else up to the next ten-thousandth', () => {
    expect(weight('16', '80/9')).toEqual({ adults: '1', children: '5/9' });
    expect(weight('16', '16')).toEqual({ adults: '1', children: '1' });
    expect(weight('16', '20')).toEqual({ adults: '1', children: '1.25' });
    expect(weight('101', '100')).toEqual({ adults: '1', children: '0.9901' });
  });

  test('counts children alone where adults take none, and nobody where nobody does', () => {
    expect(weight('0', '8')).toEqual({ children: '1' });
    expect(weight('0', '0')).toBe(null);
  });

  test('is at most twice as much; of what children take more of, an adult counts as its part of a child', () => {
    expect(weight('4', '8')).toEqual({ adults: '1', children: '2' });
    expect(weight('4', '9')).toEqual({ adults: '4/9', children: '1' });
    expect(weight('1', '101')).toEqual({ adults: '0.01', children: '1' });
  });

  test('leaves workers out of what they are not to drink', () => {
    const counts = must(parseCounts('adults, vendors, staff'));
    const portion = { unit: 'fl oz', adult: half, child: half };
    const of = (forWorkers: boolean) => countedPortion({ ...portion, forWorkers }, counts)?.counts;
    expect(of(true)).toEqual({ adults: '1', vendors: '1', staff: '1' });
    expect(of(false)).toEqual({ adults: '1' });
  });

  test('never plans less than guests take, and at most a ten-thousandth of a share more', () => {
    const drinks = fc.integer({ min: 1, max: 40 }).map((quarters) => new Fraction(quarters, 4));
    const shares = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 });
    const groups = fc.record({
      adults: fc.integer({ min: 1, max: 500 }),
      children: fc.integer({ min: 0, max: 200 }),
    });
    fc.assert(
      fc.property(drinks, drinks, shares, groups, (perAdult, perChild, parts, { adults, children }) => {
        const whole = parts.reduce((sum, part) => sum + part, 0);
        const kinds = parts.map((part, index) => ({
          share: new Fraction(part, whole),
          forAdults: true,
          forChildren: index === 0 || index % 2 === 1,
        }));
        const { shares: each } = drinkShares(kinds);
        let planned = new Fraction(0n);
        for (const { adult, child } of each) {
          const portion = {
            unit: 'each',
            adult: perAdult.mul(adult),
            child: perChild.mul(child),
            forWorkers: false,
          };
          const counted = countedPortion(portion, DEFAULT_COUNTS);
          if (!counted) continue;
          const { perGuest, counts } = counted;
          const weight = (group: 'adults' | 'children') => {
            const { over, under } = weightOf(counts, group);
            return new Fraction(over, under);
          };
          const guests = weight('adults').mul(adults).add(weight('children').mul(children));
          planned = planned.add(perGuest.amount.amount.mul(guests));
        }
        const taken = perAdult.mul(adults).add(perChild.mul(children));
        const most = taken.add(perAdult.mul(children).add(perChild.mul(adults)).div(10_000));
        expect(planned.gte(taken)).toBe(true);
        expect(planned.lte(most)).toBe(true);
      }),
    );
  });
});

describe('the share of a kind', () => {
  const share = (text: string, forAdults: boolean, forChildren: boolean) => ({
    share: new Fraction(text),
    forAdults,
    forChildren,
  });

  test('is nothing to whom it is not for, and children share what is for them', () => {
    // Of what is for children, 30 % and 20 %, they take 3/5 and 2/5.
    const { shares, adults, children } = drinkShares([
      share('0.7', true, false),
      share('0.3', true, true),
      share('0.2', false, true),
    ]);
    expect(shares.map(({ adult, child }) => [adult.toFraction(), child.toFraction()])).toEqual([
      ['7/10', '0'],
      ['3/10', '3/5'],
      ['0', '2/5'],
    ]);
    expect([adults.toFraction(), children.toFraction()]).toEqual(['1', '1/2']);
  });
});

describe('a hot day', () => {
  test.each([
    ['84 °F', false],
    ['85 °F', true],
    // 29 °C are 84.2 °F, 30 °C are 86 °F.
    ['29 °C', false],
    ['30 °C', true],
  ])('%s is one: %s', (high, hot) => {
    expect(isHotDay(must(parseTemperature(high)), USUAL_HABITS)).toBe(hot);
  });

  test('is none of which nothing is stated', () => {
    expect(isHotDay(undefined, USUAL_HABITS)).toBe(false);
  });
});

describe('ice', () => {
  const ice = (liters: string, from: string) =>
    coolingIce(new Fraction(liters), must(parseTemperature(from))).valueOf();

  // 79.7 cal melt a gram of ice, and a calorie warms a gram of water by 1 °C (CRC Handbook; from memory), an oracle in other units.
  test('cools by the heat it takes to melt', () => {
    expect(ice('10', '30 °C')).toBeCloseTo((10 * (30 - 40 / 9)) / 79.7, 2);
    expect(ice('10', '72 °F')).toBeCloseTo((10 * ((72 - 40) / 1.8)) / 79.7, 2);
  });

  test('is none for what is cold already', () => {
    expect([ice('10', '40 °F'), ice('10', '35 °F')]).toEqual([0, 0]);
  });
});
