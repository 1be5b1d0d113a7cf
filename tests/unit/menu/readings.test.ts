import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { beyondStomach } from '../../../src/engine/menu/beyond-stomach.ts';
import { guestNeedSaid, guestNeeds } from '../../../src/engine/menu/guest-needs.ts';
import { parseGuestRange } from '../../../src/engine/menu/parse-guest-range.ts';
import { hoursServed, timeAway } from '../../../src/engine/menu/time-away.ts';
import { inWords } from '../../in-words.ts';
import { refusal, understood } from '../measure/understood.ts';
import { food, line, must, recipe } from '../plan/builders.ts';

describe('for how many guests a price holds', () => {
  test.each<[string, number, number | null]>([
    ['20-49', 20, 49],
    ['20–49', 20, 49],
    ['20 - 49 guests', 20, 49],
    ['20 to 49', 20, 49],
    ['100+', 100, null],
    ['100 +', 100, null],
    ['100 or more', 100, null],
    ['100 and more guests', 100, null],
    [' 50 ', 50, 50],
    ['999999', 999_999, 999_999],
  ])('%s is from %i to %s', (text, from, to) => {
    expect(understood(parseGuestRange(text))).toEqual({ from, to });
  });

  test.each(['', 'many', '20-', '-49', '20+49', '20 or so', 'from 20', '20-49-80', '1000000'])(
    '“%s” is none',
    (text) => {
      expect(refusal(parseGuestRange(text))).toContain('write it as 20-49 or 100+');
    },
  );
});

describe('needs to cook for', () => {
  const guests = { adults: 80, children: 7, vendors: 5, staff: 3 };
  const share = (percent: string) => new Fraction(percent).div(100n);
  const planned = (said: Record<string, number>, noMeat?: Fraction) =>
    guestNeeds(new Map(Object.entries(said)), guests, noMeat)
      .map(guestNeedSaid)
      .map(inWords);

  test('are those that were named, and where nobody was named who eats no meat, the kitchen’s share of the table, rounded up', () => {
    // 5 % of 87 are 4.35.
    expect(planned({ 'no gluten': 2, 'tree nuts': 1 }, share('5'))).toEqual([
      '2 × no gluten',
      '1 × allergy: tree nuts',
      '5 × vegetarian (not stated; assumed)',
    ]);
    expect(planned({}, share('100'))).toEqual(['87 × vegetarian (not stated; assumed)']);
    expect([planned({}), planned({}, share('0'))]).toEqual([[], []]);
    // A diet beside an allergy is told as it is written.
    expect(planned({ 'vegan + tree nuts': 1 })).toEqual(['1 × vegan + tree nuts']);
  });

  test.each(['vegetarian', 'vegan', 'pescatarian', 'vegan + no gluten'])(
    'assume nobody where “%s” was named, if of nobody',
    (text) => {
      expect(planned({ [text]: 3 }, share('5'))).toHaveLength(1);
      expect(planned({ [text]: 0 }, share('5'))).toEqual([]);
    },
  );

  test('are kept where nobody knows the words, and do not pass for one that eats no meat', () => {
    expect(planned({ 'low fodmap': 1, halal: 2 }, share('5'))).toHaveLength(3);
    expect(guestNeeds(new Map([['low fodmap', 1]]), guests, undefined)).toEqual([
      { text: 'low fodmap', guests: 1, need: null, said: true },
    ]);
  });

  test('assume nobody at a table of nobody', () => {
    expect(guestNeeds(new Map(), { adults: 0, children: 0, vendors: 9, staff: 9 }, share('5'))).toEqual([]);
  });
});

describe('an amount that nobody eats', () => {
  const soup = recipe('soup', ['1 gal', '8 lb', '16 servings'], [line(food('beans'), '1 lb')]);
  const rolls = recipe('rolls', '40 pieces', [line(food('flour'), '4 lb')]);
  const beyond = (of: typeof soup, perGuest: string) => {
    const found = beyondStomach({ recipe: of, perGuest: must(parsePerGuest(perGuest)) });
    return found && [exactText(found.each), exactText(found.most)];
  };

  test('is more than 3 lb, or 2 gallons, or 50 pieces for one guest', () => {
    // A gallon is 8 lb: 3 lb are 3/8 gal, and 6 servings.
    expect(beyond(soup, '3/8 gal per guest')).toBeUndefined();
    expect(beyond(soup, '7/16 gal per guest')).toEqual(['7/2 lb', '3 lb']);
    expect(beyond(soup, '6 servings per guest')).toBeUndefined();
    expect(beyond(soup, '13 servings per 2 guests')).toEqual(['13/4 lb', '3 lb']);
    const punch = recipe('punch', '1 gal', [line(food('juice'), '1 gal')]);
    expect(beyond(punch, '2 gal per guest')).toBeUndefined();
    expect(beyond(punch, '5 gal per 2 guests')).toEqual(['5/2 gal', '2 gal']);
    expect([beyond(rolls, '50 pieces per guest'), beyond(rolls, '101 pieces per 2 guests')]).toEqual([
      undefined,
      ['101/2 piece', '50 piece'],
    ]);
  });

  test('is judged by weight where the recipe says what a piece weighs, and not by the count', () => {
    const olives = recipe('olives', ['100 pieces', '1 lb'], [line(food('olive'), '1 lb')]);
    expect(beyond(olives, '60 pieces per guest')).toBeUndefined();
    expect(beyond(olives, '400 pieces per guest')).toEqual(['4 lb', '3 lb']);
  });
});

describe('how long food is away', () => {
  const away = (travel: string | undefined, hours: string | null, served: string | null) =>
    timeAway({ travel, setUp: undefined, hours }, served);

  test('counts what cannot be read as not stated', () => {
    expect(away('a while', 'long', 'long')).toEqual({
      travel: undefined,
      setUp: undefined,
      service: undefined,
    });
    expect(away('1 h 20 min', null, '2½ hours')).toEqual({ travel: 80, setUp: undefined, service: 150 });
  });

  test('is no longer than the crew works', () => {
    expect([hoursServed('2 hours', '1'), hoursServed('2 hours', '2'), hoursServed('2 hours', '1.5')]).toEqual(
      ['1 hour', '2 hours', '1.5 hours'],
    );
    expect([hoursServed(null, '3'), hoursServed('2 hours', null)]).toEqual([null, '2 hours']);
    expect(hoursServed('2 hours', '2.25')).toBe('2 hours');
  });
});
