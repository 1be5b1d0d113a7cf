import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { quantity } from '../../../src/engine/measure/quantity.ts';
import { chancesOf, meanHelpings, parseAppetite } from '../../../src/engine/odds/appetite.ts';
import { attendanceBy } from '../../../src/engine/odds/attendance.ts';
import { certainly, chanceAbove, eitherOf, expected, leastWithin } from '../../../src/engine/odds/chances.ts';
import { courseAmounts } from '../../../src/engine/odds/course.ts';
import { demandOf } from '../../../src/engine/odds/demand.ts';
import { amountOfHelpings, helpingsIn } from '../../../src/engine/odds/helpings.ts';
import { looksLikeRisk, parseRisk, riskSaid } from '../../../src/engine/odds/risk.ts';
import {
  balancedHelpings,
  expectedLeft,
  expectedShort,
  oddsSaid,
} from '../../../src/engine/odds/shortage.ts';
import { helpingsSaid } from '../../../src/engine/plan/figure-text.ts';
import { statementsIn } from '../../../src/exports/words/statement-text.ts';
import { inWords } from '../../in-words.ts';
import { must } from '../plan/builders.ts';

describe('a chosen risk', () => {
  test.each([
    ['short at most 1 in 50', 50],
    ['  Short  at most 1 IN 2 ', 2],
    ['short at most 1 in 10000', 10_000],
  ])('%s is one event in %i', (text, oneIn) => {
    expect(must(parseRisk(text))).toBe(oneIn);
    expect([looksLikeRisk(text), must(parseRisk(inWords(riskSaid(oneIn))))]).toEqual([true, oneIn]);
  });

  test.each([
    'short at most 1 in 1',
    'short at most 1 in 10001',
    'short',
    '1 in 50',
    'short at most 1 in 50 or so',
    'at most short at most 1 in 50',
  ])('“%s” is none', (text) => {
    expect(parseRisk(text)).toMatchObject({ ok: false, wayOut: expect.stringContaining('from 2 to 10,000') });
  });

  test('is told from an overage by its first word', () => {
    expect([looksLikeRisk(' SHORT at'), looksLikeRisk('8 %'), looksLikeRisk('at most short')]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('helpings', () => {
  const ladle = quantity('3', 'fl oz');

  test('are an amount, and whole ones are in an amount', () => {
    expect(amountOfHelpings(ladle, 7)).toEqual(quantity('21', 'fl oz'));
    expect(['21', '20', '2', '0'].map((amount) => helpingsIn(quantity(amount, 'fl oz'), ladle))).toEqual([
      7, 6, 0, 0,
    ]);
    const said = (locale: string) => [0, 1, 2, 12_345].map((n) => statementsIn(locale)(helpingsSaid(n)));
    expect(said('en-US')).toEqual(['0 helpings', '1 helping', '2 helpings', '12,345 helpings']);
    expect(said('de-DE').at(-1)).toBe('12\u202f345 helpings');
  });

  test('are taken by a guest in the mean as the shares say, exactly', () => {
    const appetite = must(parseAppetite({ one: '55 %', three: '25 %' }));
    expect(appetite.shares.map((share) => share.toFraction())).toEqual(['1/5', '11/20', '0', '1/4']);
    expect(meanHelpings(appetite).toFraction()).toBe('13/10');
    expect([...chancesOf(appetite)]).toEqual([0.2, 0.55, 0, 0.25]);
    expect(
      must(parseAppetite({ none: '40 %', one: '60 %' })).shares.map((share) => share.toFraction()),
    ).toEqual(['2/5', '3/5']);
    expect(must(parseAppetite({ six: '100 %' })).shares).toHaveLength(7);
    for (const wrong of [
      { none: '30 %', one: '60 %' },
      { none: '50 %', one: '60 %' },
      {},
      { one: '0 %' },
      { seven: '10 %' },
    ])
      expect(parseAppetite(wrong as Record<string, string>).ok).toBe(false);
  });
});

describe('the chances of whole numbers', () => {
  const one = Float64Array.of(0.5, 0.25, 0.25);

  test('are certain, one of two, exceeded, and expected', () => {
    expect([...certainly(2)]).toEqual([0, 0, 1]);
    for (const wrong of [-1, 1.5]) expect(() => certainly(wrong)).toThrow('is not a number of helpings');
    expect([...eitherOf(0.25, certainly(0), one)]).toEqual([0.625, 0.1875, 0.1875]);
    expect([...eitherOf(0.25, one, certainly(0))]).toEqual([0.875, 0.0625, 0.0625]);
    expect([-1, 0, 1, 2, 9].map((number) => chanceAbove(one, number))).toEqual([1, 0.5, 0.25, 0, 0]);
    expect(expected(one)).toBe(0.75);
    expect([0, 0.2, 0.25, 0.4, 0.5, 1].map((risk) => leastWithin(one, risk))).toEqual([2, 2, 1, 1, 0, 0]);
  });

  test('tell what will be missing and what comes back, which differ by what is carried less what is wanted', () => {
    expect([0, 1, 2, 3].map((carried) => expectedShort(one, carried))).toEqual([0.75, 0.25, 0, 0]);
    expect([0, 1, 2, 3].map((carried) => expectedLeft(one, carried))).toEqual([0, 0.5, 1.25, 2.25]);
  });

  test('of guests who have nothing else take one in place of none', () => {
    expect([...demandOf(one, { sure: 1, free: 0 })]).toEqual([0, 0.75, 0.25]);
    expect([...demandOf(one, { sure: 0, free: 1 })]).toEqual([...one]);
    // A party of two, and one who comes alone, where half fail to come.
    expect([...demandOf(certainly(1), { sure: 3, free: 0 }, { failToCome: 0.5, partyOf: 2 })]).toEqual([
      0.25, 0.25, 0.25, 0.25,
    ]);
  });
});

test('everybody comes where nobody has said how guests come', () => {
  expect(attendanceBy(undefined)).toEqual({ failToCome: 0, partyOf: 1 });
  expect(attendanceBy({ failToCome: new Fraction('3/100'), partyOf: 2 })).toEqual({
    failToCome: 0.03,
    partyOf: 2,
  });
});

test('a course is parted by the shares of its dishes, the largest remainders first, the earlier of equal ones', () => {
  const parts = (shares: readonly number[], guests: number) =>
    courseAmounts(
      shares.map((share, at) => ({ id: `${at}`, share })),
      guests,
      0.01,
      { failToCome: 0, partyOf: 1 },
    );
  const helpings = (shares: readonly number[], guests: number) =>
    parts(shares, guests).dishes.map((dish) => dish.helpings);
  expect(helpings([0.5, 0.3, 0.2], 10)).toEqual([5, 3, 2]);
  // 3.5, 2.1, 1.4: the half first; 2.5 and 2.5: the earlier.
  expect([helpings([0.5, 0.3, 0.2], 7), helpings([0.5, 0.5], 5), helpings([0.2, 0.2, 0.6], 4)]).toEqual([
    [4, 2, 1],
    [3, 2],
    [1, 1, 2],
  ]);
  // 2, 1.2 and 0.8; 0.4, 1.2 and 2.4: the last has the largest remainder, then the one named first.
  expect([helpings([0.5, 0.3, 0.2], 4), helpings([0.1, 0.3, 0.6], 4)]).toEqual([
    [2, 1, 1],
    [1, 1, 2],
  ]);
  const whole = parts([0.5, 0.5], 4);
  // Everybody takes one of four; more than two want the first with 5 in 16. By itself each would take four.
  expect([whole.helpings, whole.shortOfAll, whole.dishes[0]?.missed, whole.apart]).toEqual([4, 0, 0.3125, 8]);
});

test('a missing helping is balanced against one left over by the ratio of what they cost', () => {
  const demand = Float64Array.of(0.5, 0.25, 0.25);
  const balanced = (missing: number, left: number) => balancedHelpings(demand, missing, left);
  // Enough in three of four cases, in one, in half, and always.
  expect([balanced(3, 1), balanced(1, 3), balanced(1, 1), balanced(5, 0), balanced(0, 5)]).toEqual([
    1, 0, 0, 2, 0,
  ]);
  expect(balanced(0, 0)).toBeUndefined();
});

test('odds are told by tens above even, and not told more exactly than they are known', () => {
  expect(
    [1e-13, 0.00009, 0.0001, 0.00011, 0.45, 0.46, 0.949, 0.95, 1 - 1e-13].map(oddsSaid).map(inWords),
  ).toEqual([
    'never, by these shares',
    'less than 1 in 10,000 events like this',
    'about 1 in 10,000 events like this',
    'about 1 in 9,100 events like this',
    'about 1 in 2.2 events like this',
    'about 5 in 10 events like this',
    'about 9 in 10 events like this',
    'at nearly every event like this',
    'at every event like this',
  ]);
});
