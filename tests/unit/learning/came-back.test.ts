import { expect, test } from 'vitest';
import { type CarriedFood, parseCameBack } from '../../../src/engine/learning/came-back.ts';
import { parseConversion } from '../../../src/engine/measure/conversions.ts';
import { exactText, quantity } from '../../../src/engine/measure/quantity.ts';

const conversion = parseConversion('50 servings = 12 qt');
if (!conversion.ok) throw new Error(conversion.what);

/** 100 servings in pans of 18 to carry and of 12 on the line, and in a tub; 50 servings are 12 quarts. */
const POT: CarriedFood = {
  carried: quantity('100', 'serving'),
  containers: [
    { id: 'full-pan-4', name: 'Full steam-table pan, 4 in', each: quantity('18', 'serving') },
    { id: 'tub-12', name: 'Lidded tub, 12 qt', each: quantity('30', 'serving') },
  ],
  conversions: [conversion.value],
};

const left = (text: string, food = POT) => {
  const read = parseCameBack(text, food);
  if (!read.ok) return `${read.what} — ${read.wayOut}`;
  const { back, ranOut, at } = read.value;
  return ranOut ? `ran out${at ? ` ${at}` : ''}` : exactText(back);
};

test.each([
  ['2 pans and a third', '42 serving'],
  ['1½ full-pan-4', '27 serving'],
  ['1 1/2 full-pan-4', '27 serving'],
  ['half a pan', '9 serving'],
  ['two thirds of a tub', '20 serving'],
  ['a tub and 4 servings', '34 serving'],
  ['one and a half pans', '27 serving'],
  ['1 full-pan-4, 1 tub-12', '48 serving'],
  ['6 qt', '25 serving'],
  ['1 gal 2 qt', '25 serving'],
  ['1 gal ½ qt', '75/4 serving'],
  ['7', '7 serving'],
  ['0.5 full-pan-4', '9 serving'],
  ['None', '0 serving'],
  ['all', '100 serving'],
  ['1 tub-12, a half, 1 full-pan-4', '63 serving'],
  ['a third and 2 tubs', '70 serving'],
  ['an eighth of the tub', '15/4 serving'],
  ['2 lidded', '60 serving'],
  ['half a Steam', '9 serving'],
  ['nothing', '0 serving'],
  ['everything', '100 serving'],
  ['ran out', 'ran out'],
  ['ran out at 20:15', 'ran out 20:15'],
  ['ran out at 8:15 pm', 'ran out 20:15'],
])('%s is what came back', (text, amount) => {
  expect(left(text)).toBe(amount);
});

test('what the dish cannot be counted by is refused with its own ways', () => {
  expect(left('3 lb')).toMatch(
    /^“lb” is neither a container of this dish nor an amount of it — write for example 1½ full-pan-4 \(18 servings in each\)/,
  );
  expect(left('some')).toMatch(/^“some” is not an amount/);
  expect(left('all but 2 pans')).toMatch(/^“all but 2 pans” is not an amount/);
  expect(left('not everything')).toMatch(/^“not everything” is not an amount/);
  expect(left('nothing much')).toMatch(/^“nothing much” is not an amount/);
  expect(left(`1 ${'pan and 1 '.repeat(12)}pan`)).toMatch(/^that is too long/);
  expect(left('ran out at 25:00')).toMatch(/not a time of day/);
  expect(left('ran out at 13:00 pm')).toMatch(/not a time of day/);
});

test('more than went out is refused', () => {
  expect(left('6 pans')).toBe(
    '“6 pans” is 108 servings, but only 100 servings went out — give what came back of it, or `everything`',
  );
});

test('a word that two containers of different fill answer to is asked back', () => {
  const two = {
    ...POT,
    containers: [...POT.containers, { id: 'full-pan-2', name: 'Full pan', each: quantity('12', 'serving') }],
  };
  expect(left('2 pans', two)).toBe(
    '“pans” could be full-pan-4 or full-pan-2 — write the id of the right one',
  );
  expect(left('2 full-pan-2', two)).toBe('24 serving');
});

test('a bare number of what is weighed says nothing', () => {
  const slaw = { carried: quantity('20', 'lb'), containers: [], conversions: [] };
  expect(left('2', slaw)).toMatch(/^“2” has no unit/);
  expect(left('2 lb 8 oz', slaw)).toBe('5/2 lb');
});
