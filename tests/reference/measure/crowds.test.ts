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
  it('1½ fl oz of caper sauce for 72 guests is 108 fl oz, 27/32 gal, printed 3 qt 1½ cups', () => {
    const sauce = need('1½ fl oz per guest', 72);
    expect(exactText(sauce)).toBe('108 fl oz');
    expect(exactText(convert(sauce, 'gal', [])!)).toBe('27/32 gal');
    for (const rule of ['line', 'at-least'] as const) {
      expect(kitchenAmount(sauce, 'us', rule)).toBe('3 qt 1½ cups');
    }
  });

  it('3 oz of barley for 80 guests is 15 lb', () => {
    expect(kitchenAmount(need('3 oz per guest', 80), 'us', 'line')).toBe('15 lb');
  });

  it('a tin of chickpeas for 18 guests is 5 tins for 90', () => {
    expect(exactText(need('1 tin per 18 guests', 90))).toBe('5 tin');
  });

  it('a shoulder for 8 guests is 11¼ shoulders for 90, and whole ones only where the plan rounds', () => {
    expect(kitchenAmount(need('1 shoulder per 8 guests', 90), 'us', 'line')).toBe('11¼ shoulders');
    expect(need('1 shoulder per 8 guests', 90).amount.ceil().equals(12n)).toBe(true);
  });

  it('three slices of rye each, 18 slices to a loaf, are 8 loaves for 48 guests', () => {
    const loaf = understood(parseConversion('1 loaf = 18 slices'));
    expect(kitchenAmount(convert(need('3 slices per guest', 48), 'loaf', [loaf])!, 'us', 'line')).toBe(
      '8 loaves',
    );
  });

  it('a sixth of a cup three times is half a cup, not a step above it', () => {
    expect(kitchenAmount(need('1/6 cup per guest', 3), 'us', 'at-least')).toBe('½ cup');
  });
});
