import { describe, expect, test } from 'vitest';
import { checkChoice } from '../../../src/engine/quote/choice.ts';
import { dishNamed } from '../../../src/engine/quote/dish-named.ts';
import { plainChoice } from '../../../src/engine/quote/plain-choice.ts';
import { decimalRatio, ratio, ratioText } from '../../../src/engine/quote/ratio.ts';
import { choiceAtCount, mainsFor } from '../../../src/engine/quote/scaled-choice.ts';
import { problemWords } from '../../../src/offers/problem-words.ts';
import { scriptWordsIn } from '../../../src/words/script-words.ts';
import {
  sampleAddOn,
  sampleChoice,
  sampleCourse,
  sampleDish,
  sampleGuests,
  samplePackage,
  sampleTerms,
} from './sample-terms.ts';

const course = sampleCourse({
  eachGuest: true,
  choose: null,
  dishes: [
    sampleDish({ recipe: 'hake-parcels', name: 'Hake in paper' }),
    sampleDish({ recipe: 'duck-legs', name: 'Duck legs with cherries' }),
    sampleDish({ recipe: 'barley', name: 'Slow barley' }),
    sampleDish({ recipe: 'barley-bake', name: 'Barley baked in broth' }),
  ],
});

describe('the dish that a guest’s words name', () => {
  test.each([
    ['hake-parcels', 'hake-parcels'],
    ['HAKE IN PAPER', 'hake-parcels'],
    [' hake ', 'hake-parcels'],
    ['legs', 'duck-legs'],
    ['cherries', 'duck-legs'],
    ['baked in', 'barley-bake'],
    // An id or a whole name goes before a beginning, a beginning before a word further on.
    ['barley', 'barley'],
    ['barley b', 'barley-bake'],
    ['', ''],
    ['  ', ''],
    // Nobody's beginning; only inside a word; two dishes fit.
    ['tart', undefined],
    ['ake', undefined],
    ['b', 'barley-bake'],
  ])('“%s” names %s', (words, recipe) => {
    expect(dishNamed(words, course)).toBe(recipe);
  });

  test('is none where two fit the same way', () => {
    const twins = [
      sampleDish({ recipe: 'a', name: 'Plum cake' }),
      sampleDish({ recipe: 'b', name: 'Plum tart' }),
    ];
    expect(dishNamed('plum', { dishes: twins })).toBeUndefined();
    expect(dishNamed('plum t', { dishes: twins })).toBe('b');
  });
});

describe('the plainest choice of a menu', () => {
  const dishes = [
    sampleDish({ recipe: 'hake', supplement: '4.00' }),
    sampleDish({ recipe: 'squash' }),
    sampleDish({ recipe: 'duck', supplement: '6.00' }),
    sampleDish({ recipe: 'lentils' }),
  ];

  test('takes dishes without a supplement first, in the menu’s order, and the fewest with one', () => {
    const menu = (choose: number | null, eachGuest = false) =>
      plainChoice(
        samplePackage({ courses: [sampleCourse({ choose, eachGuest, dishes })] }),
        sampleGuests(30),
      );
    expect(menu(2).courses).toEqual({ Mains: ['squash', 'lentils'] });
    expect(menu(3).courses).toEqual({ Mains: ['squash', 'lentils', 'hake'] });
    expect(menu(null)).toMatchObject({ courses: {}, mains: {}, addOns: {}, needs: {} });
    expect(menu(null, true)).toMatchObject({ courses: {}, mains: { Mains: { squash: 30 } } });
  });

  test('is one that can be accepted', () => {
    const chosen = samplePackage({ courses: [sampleCourse({ choose: 2, dishes })] });
    expect(checkChoice(sampleTerms({ packages: [chosen] }), plainChoice(chosen, sampleGuests(30)))).toEqual(
      [],
    );
  });
});

describe('a choice at another count', () => {
  const chosen = samplePackage({ id: 'other', courses: [course, sampleCourse({ name: 'Sides' })] });

  test('keeps children, vendors and staff, and never has fewer than one adult', () => {
    const guests = sampleGuests(40, { children: 12, vendors: 3, staff: 5 });
    const choice = sampleChoice(guests, { needs: { vegan: 2 }, addOns: { espresso: 1 } });
    const at = choiceAtCount(chosen, choice, 60);
    expect(at).toMatchObject({ package: 'other', needs: { vegan: 2 }, addOns: { espresso: 1 } });
    expect(at.guests).toEqual({ adults: 48, children: 12, vendors: 3, staff: 5 });
    expect(choiceAtCount(chosen, choice, 5).guests.adults).toBe(1);
  });

  test('shares the mains of each guest’s course in the proportions given, evenly where none are, and no other course', () => {
    const mains = mainsFor(chosen, { Mains: { 'hake-parcels': 30, 'duck-legs': 10 } }, sampleGuests(60));
    expect(mains).toEqual({ Mains: { 'hake-parcels': 45, 'duck-legs': 15, barley: 0, 'barley-bake': 0 } });
    expect(mainsFor(chosen, {}, sampleGuests(10)).Mains).toEqual({
      'hake-parcels': 3,
      'duck-legs': 3,
      barley: 2,
      'barley-bake': 2,
    });
  });

  test('gives what is left over to the largest remainders, not to the first', () => {
    // 10 guests at 1 : 1 : 2 are 2½, 2½ and 5; at 1 : 3 : 3 they are 1.43, 4.29 and 4.29: the first has the most left.
    expect(
      Object.values(
        mainsFor(chosen, { Mains: { 'hake-parcels': 3, 'duck-legs': 3, barley: 1 } }, sampleGuests(10))
          .Mains!,
      ),
    ).toEqual([4, 4, 2, 0]);
  });
});

describe('a choice is held to its bounds', () => {
  const tiers = [{ from: 1, to: 80, perHead: '46.00' }];
  const terms = sampleTerms({
    packages: [samplePackage({ tiers, courses: [course] })],
    addOns: [sampleAddOn({ id: 'captain', per: 'hour', name: 'Captain' }), sampleAddOn()],
  });
  const told = (adults: number, change: Parameters<typeof sampleChoice>[1] = {}) =>
    checkChoice(
      terms,
      sampleChoice(sampleGuests(adults), { mains: { Mains: { 'hake-parcels': adults } }, ...change }),
    ).map(({ path }) => path);

  test('of the last price, which takes in its last guest', () => {
    expect([told(80), told(81)]).toEqual([[], ['guests.adults']]);
  });

  test('of at least one guest, and of whole guests up to a hundred thousand', () => {
    const open = sampleTerms();
    const on = (guests: ReturnType<typeof sampleGuests>) =>
      checkChoice(open, sampleChoice(guests)).map(({ path }) => path);
    expect(on(sampleGuests(0, { vendors: 2 }))).toEqual(['guests.adults']);
    expect(on(sampleGuests(0, { children: 1 }))).toEqual([]);
    expect(on(sampleGuests(100_000))).toEqual([]);
    for (const wrong of [100_001, -1, 1.5, Number.NaN, '5' as never])
      expect(on(sampleGuests(wrong)), String(wrong)).toEqual(['guests.adults']);
  });

  test('of mains, one for each guest, and says which way they miss it', () => {
    const gap = (count: number) =>
      checkChoice(terms, sampleChoice(sampleGuests(10), { mains: { Mains: { barley: count } } })).map(
        (each) => problemWords(scriptWordsIn('en-US'), each),
      )[0];
    expect(gap(8)).toBe('The counts for Mains must add up to 10, one for each guest: 2 too few.');
    expect(gap(13)).toBe('The counts for Mains must add up to 10, one for each guest: 3 too many.');
    expect(gap(10)).toBeUndefined();
  });

  test('of add-ons: quarters of an hour from none to a day’s most, and otherwise taken or not', () => {
    const taken = (id: string, quantity: number) => told(10, { addOns: { [id]: quantity } });
    for (const fine of [0, 0.25, 3.5, 24]) expect(taken('captain', fine), String(fine)).toEqual([]);
    for (const wrong of [-0.25, 0.1, 1000])
      expect(taken('captain', wrong), String(wrong)).toEqual(['addOns.captain']);
    expect([taken('espresso', 0), taken('espresso', 1), taken('espresso', 2)]).toEqual([
      [],
      [],
      ['addOns.espresso'],
    ]);
  });

  test('of needs, no more guests than come', () => {
    expect([told(10, { needs: { vegan: 10 } }), told(10, { needs: { vegan: 11 } })]).toEqual([
      [],
      ['needs.vegan'],
    ]);
  });
});

describe('an exact fraction', () => {
  test('is read from a plain number and from nothing else', () => {
    expect(['5', '5.5', '0.125', '123456.0625'].map((text) => ratioText(decimalRatio(text)))).toEqual([
      '5',
      '5 1/2',
      '1/8',
      '123456 1/16',
    ]);
    for (const wrong of ['', '.5', '5.', 'x5', '5x', '1e3', '-5', '1234567'])
      expect(() => decimalRatio(wrong), wrong).toThrow('is not a plain number');
    expect(() => ratio(1n, 0n)).toThrow('the fraction 1/0 has no value');
  });
});
