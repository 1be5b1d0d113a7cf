import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { mayHoldAlcohol } from '../../../src/engine/drinks/drink.ts';
import { countedPortion } from '../../../src/engine/drinks/drink-portion.ts';
import { drinksOver, parseDrinkRate } from '../../../src/engine/drinks/drink-rate.ts';
import { drinkShares } from '../../../src/engine/drinks/drink-shares.ts';
import { isHotDay, USUAL_HABITS } from '../../../src/engine/drinks/drinks-habits.ts';
import { coolingIce } from '../../../src/engine/drinks/ice.ts';
import type { Origin } from '../../../src/engine/food/origin.ts';
import { parseTemperature } from '../../../src/engine/measure/temperature.ts';
import { DEFAULT_COUNTS, parseCounts, weightOf } from '../../../src/engine/quote/counts.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

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
    '2 glasses per hour',
    'some drinks in the first hour, then 1 per hour',
    '1 in the first hour, then some per hour',
    '21 in the first hour, then 1 per hour',
    '1 in the first hour, then 21 per hour',
  ])('are not read from %j', (text) => {
    expect(parseDrinkRate(text).ok).toBe(false);
  });

  test('are read with spaces and one drink written out, and up to 20 an hour', () => {
    expect(over('  1 drink   per hour ', '2')).toBe('2');
    expect(over('20 per hour', '1')).toBe('20');
  });

  test('are told of with what was written', () => {
    expect(parseDrinkRate('a lot')).toMatchObject({
      what: '“a lot” does not say how many drinks per hour',
      wayOut: 'write it as “2 in the first hour, then 1 per hour” or “1 per hour”',
    });
    expect(parseDrinkRate('many per hour')).toMatchObject({ what: '“many” is not a number of drinks' });
    expect(parseDrinkRate('0 per hour')).toMatchObject({ what: 'at “0 per hour” nobody drinks anything' });
    expect(parseDrinkRate('25 per hour')).toMatchObject({ what: 'nobody takes 25 drinks in an hour' });
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
    expect(weight('99', '50')).toEqual({ adults: '1', children: '50/99' });
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

  test('is the adult’s amount where no children are counted, whatever they would take', () => {
    const portion = { unit: 'fl oz', adult: half, child: new Fraction(4n), forWorkers: false };
    const counted = countedPortion(portion, { adults: '1' });
    expect([counted?.perGuest.amount.amount.toFraction(), counted?.counts]).toEqual(['1/2', { adults: '1' }]);
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

  test('is the children’s own where some kind states it, and then nothing is spread', () => {
    const stated = drinkShares([
      share('0.7', true, false),
      { ...share('0.1', true, true), children: new Fraction('0.4') },
      share('0.2', true, true),
    ]);
    expect(stated.shares.map(({ child }) => child.toFraction())).toEqual(['0', '2/5', '1/5']);
    expect([stated.childrenStated, stated.children.toFraction()]).toEqual([true, '3/5']);
  });

  test('is nothing for children where nothing is for them', () => {
    const { shares, children, childrenStated } = drinkShares([share('1', true, false)]);
    expect([shares[0]?.child.toFraction(), children.toFraction(), childrenStated]).toEqual(['0', '0', false]);
  });
});

describe('what may hold alcohol', () => {
  const of = (...from: (readonly Origin[] | undefined)[]) =>
    mayHoldAlcohol(
      recipe(
        'punch',
        '1 gal',
        from.map((each, at) => line({ ...food(`part ${at}`), from: each }, '1 qt')),
      ),
    );

  test('is all but what states of every part that it does not', () => {
    expect(of(['plant'], ['water'])).toBe(false);
    expect(of(['plant'], ['alcohol', 'plant'])).toBe(true);
    expect(of(['plant'], undefined)).toBe(true);
    expect(of()).toBe(true);
    // Of no other diet does it follow.
    expect(of(['pork'])).toBe(false);
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
