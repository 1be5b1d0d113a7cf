import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import type { EventDish } from '../../../src/engine/plan/event-input.ts';
import { guestsSaid } from '../../../src/engine/plan/figure-text.ts';
import { countedWhy, servedAmount, servingsOf } from '../../../src/engine/plan/servings/servings.ts';
import { allInWords, inWords } from '../../in-words.ts';
import { dish, food, line, q, recipe } from './builders.ts';

const tart = recipe('tart', '8 pieces', [line(food('leek'), '1 lb')]);
const guests = { adults: 84, children: 7, vendors: 4, staff: 9 };
const of = (perGuest: string, facts: Parameters<typeof dish>[2] = {}, more: Partial<EventDish> = {}) => ({
  ...dish(tart, perGuest, facts),
  ...more,
});
const amounts = (each: EventDish, people = guests) => {
  const { counted, base, need } = servingsOf(each, people, 'us');
  expect(exactText(servedAmount(each, people))).toBe(exactText(need));
  return [counted.toFraction(), exactText(base), exactText(need)];
};

describe('how much of a dish is needed', () => {
  test.each([
    // counted guests × amount ÷ guests sharing it, × overage, up to whole pieces
    ['1 piece per guest', {}, ['91', '91 piece', '91 piece']],
    ['1 piece per guest', { overage: '8/100' }, ['91', '91 piece', '99 piece']],
    ['1 piece per 8 guests', {}, ['91', '91/8 piece', '12 piece']],
    ['1 piece per guest', { counts: 'adults, children at 1/2' }, ['175/2', '175/2 piece', '88 piece']],
    ['2 fl oz per guest', { overage: '1/10' }, ['91', '182 fl oz', '1001/5 fl oz']],
    ['3 oz per guest', { counts: 'adults, vendors, staff' }, ['97', '291 oz', '291 oz']],
    ['1 piece per guest', { chosenBy: 30 }, ['30', '30 piece', '30 piece']],
    ['1 piece per guest', { chosenBy: 0 }, ['0', '0 piece', '0 piece']],
  ] as const)('%s %j', (perGuest, facts, expected) => {
    expect(amounts(of(perGuest, facts))).toEqual(expected);
  });

  test('goes by the guests of its portions before those who chose it', () => {
    const portions = { guests: new Fraction('7/2'), needs: [], apart: undefined, why: ['so it is'] };
    expect(amounts(of('1 piece per guest', { chosenBy: 30 }, { portions }))).toEqual([
      '7/2',
      '7/2 piece',
      '4 piece',
    ]);
    expect(whyCounted(of('1 piece per guest', { chosenBy: 30 }, { portions }), guests)).toEqual(['so it is']);
  });

  test('is what a chosen risk asks for, in place of guests and overage', () => {
    const demand = { why: ['the risk'], helping: q('3/2 piece'), helpings: 61 } as unknown as NonNullable<
      EventDish['demand']
    >;
    const each = of('1 piece per guest', { overage: '1/2' }, { demand });
    expect(amounts(each)).toEqual(['91', '91 piece', '92 piece']);
    expect(allInWords(servingsOf(each, guests, 'us').why)).toEqual([
      '84 adults + 7 children = 91 guests',
      'the risk',
      '61 helpings × 1½ pieces = 91½ pieces',
      '91½ pieces, rounded up: 92 pieces',
    ]);
  });
});

const whyCounted = (...of: Parameters<typeof countedWhy>) => allInWords(countedWhy(...of));

describe('why a dish needs so much', () => {
  const why = (each: EventDish, people = guests) => allInWords(servingsOf(each, people, 'us').why);

  test('tells guests, amount, overage and whole pieces, and no step that does nothing', () => {
    expect(why(of('1 piece per 8 guests', { overage: '8/100' }))).toEqual([
      '84 adults + 7 children = 91 guests',
      '91 guests ÷ 8 × 1 piece = 11⅜ pieces',
      '11⅜ pieces + 8 % overage = 12.285 pieces',
      '12.285 pieces, rounded up: 13 pieces',
    ]);
    expect(why(of('1 piece per guest', { counts: 'adults' }))).toEqual(['84 guests × 1 piece = 84 pieces']);
    expect(why(of('1 piece per guest', { chosenBy: 1 }))).toEqual([
      '1 guest chose it',
      '1 guest × 1 piece = 1 piece',
    ]);
  });

  test('names each group that comes, one in the singular, with its weight', () => {
    const one = { adults: 1, children: 1, vendors: 0, staff: 1 };
    expect(whyCounted(of('1 piece per guest', { counts: 'adults, children at 1/2, vendors' }), one)).toEqual([
      '1 adult + 1 child at ½ = 1.5 guests',
    ]);
    expect(whyCounted(of('1 piece per guest', { counts: 'adults, staff at 2' }), one)).toEqual([
      '1 adult + 1 staff at 2 = 3 guests',
    ]);
    expect(whyCounted(of('1 piece per guest', { counts: 'children at 1/2' }), guests)).toEqual([
      '7 children at ½ = 3.5 guests',
    ]);
    expect(whyCounted(of('1 piece per guest', { counts: 'children' }), guests)).toEqual([]);
    expect([0, 1, 2].map((count) => inWords(guestsSaid(new Fraction(count))))).toEqual([
      '0 guests',
      '1 guest',
      '2 guests',
    ]);
  });
});
