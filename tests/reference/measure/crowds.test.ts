import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { convert, parseConversion } from '../../../src/engine/measure/conversions.ts';
import { kitchenAmount } from '../../../src/engine/measure/kitchen-amount.ts';
import { forGuests, parsePerGuest } from '../../../src/engine/measure/per-guest.ts';
import { exactText } from '../../../src/engine/measure/quantity.ts';
import { understood } from '../../unit/measure/understood.ts';

const need = (perGuest: string, guests: number) =>
  forGuests(understood(parsePerGuest(perGuest)), new Fraction(BigInt(guests)));

/*
 * Sources: quantities for crowds by a Kansas county extension office and University of Illinois Extension, as
 * printed in newspapers and an almanac. Published tables round to whole measures and differ from one another by a
 * third to a half, so the exact need is checked exactly against hand-worked arithmetic, and against the published
 * figure to within an eighth of it.
 */
describe('quantities for crowds', () => {
  it.each([
    ['coleslaw', '1/3 cup per guest', 100, '25/3', 'qt', 9],
    ['potato salad', '1/2 cup per guest', 100, '25/2', 'qt', 14],
    ['punch', '6 fl oz per guest', 100, '75/16', 'gal', 5],
    ['cold cuts', '3 oz per guest', 50, '75/8', 'lb', 9],
    ['dip', '3 tbsp per guest', 50, '75/8', 'cup', 9],
    ['drinks, three each', '18 fl oz per guest', 50, '225/32', 'gal', 7],
  ])('%s at %s for %i is exactly %s %s, published as %i', (_, perGuest, guests, exact, unit, published) => {
    const { amount } = convert(need(perGuest, guests), unit, [])!;
    expect(amount.equals(exact)).toBe(true);
    expect(amount.div(published).sub(1n).abs().lte(new Fraction(1n, 8n))).toBe(true);
  });

  it('punch in whole gallons is the published five', () => {
    expect(convert(need('6 fl oz per guest', 100), 'gal', [])!.amount.ceil().equals(5n)).toBe(true);
  });
});

// Common practice, no source: per-guest amounts as caterers use them, with arithmetic worked by hand.
describe('per-guest amounts by common practice', () => {
  it('2 fl oz of sauce for 100 guests is 200 fl oz, 25/16 gal, printed 1 gal 2 qt 1 cup', () => {
    const sauce = need('2 fl oz per guest', 100);
    expect(exactText(sauce)).toBe('200 fl oz');
    expect(exactText(convert(sauce, 'gal', [])!)).toBe('25/16 gal');
    for (const rule of ['line', 'at-least'] as const) {
      expect(kitchenAmount(sauce, 'us', rule)).toBe('1 gal 2 qt 1 cup');
    }
  });

  it('a quarter pound of vegetables for 100 guests is 25 lb', () => {
    expect(kitchenAmount(need('1/4 lb per guest', 100), 'us', 'line')).toBe('25 lb');
  });

  it('a can for 25 guests is 4 cans for 100', () => {
    expect(exactText(need('1 can per 25 guests', 100))).toBe('4 can');
  });

  it('a roast for 6 guests is 16⅔ roasts for 100, and whole ones only where the plan rounds', () => {
    expect(kitchenAmount(need('1 roast per 6 guests', 100), 'us', 'line')).toBe('16⅔ roasts');
    expect(need('1 roast per 6 guests', 100).amount.ceil().equals(17n)).toBe(true);
  });

  it('two pieces of bread each, 20 pieces to a loaf, are 10 loaves for 100 guests', () => {
    const loaf = understood(parseConversion('1 loaf = 20 pieces'));
    expect(kitchenAmount(convert(need('2 pieces per guest', 100), 'loaf', [loaf])!, 'us', 'line')).toBe(
      '10 loaves',
    );
  });

  it('a sixth of a cup three times is half a cup, not a step above it', () => {
    expect(kitchenAmount(need('1/6 cup per guest', 3), 'us', 'at-least')).toBe('½ cup');
  });
});
