import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { convert, parseConversion } from '../../../src/engine/measure/conversions.ts';
import { parseQuantity } from '../../../src/engine/measure/parse-quantity.ts';
import { quantity } from '../../../src/engine/measure/quantity.ts';
import { understood } from '../../unit/measure/understood.ts';

/** What one level scoop holds, from the disher's number: so many scoops make a quart. */
function scoop(number: number, unit: string): Fraction {
  const disher = understood(parseConversion(`${number} scoops = 1 qt`));
  return convert(quantity(1n, 'scoop'), unit, [disher])!.amount;
}

// Source: Institute of Child Nutrition, Basics at a Glance: the number of a disher is the level scoops in a quart.
describe('dishers by number', () => {
  it('No. 8 holds half a cup and No. 16 a quarter, as published', () => {
    expect(scoop(8, 'cup').equals('1/2')).toBe(true);
    expect(scoop(16, 'cup').equals('1/4')).toBe(true);
  });

  it('No. 10 holds 0.4 cup exactly, published as the ⅜ cup of the nearest eighth', () => {
    expect(scoop(10, 'cup').equals('2/5')).toBe(true);
    expect(scoop(10, 'cup').mul(8n).round().div(8n).equals('3/8')).toBe(true);
  });

  it('No. 30 holds 2.133 tbsp exactly, published as 2', () => {
    expect(scoop(30, 'tbsp').equals(new Fraction(32n, 15n))).toBe(true);
    expect(scoop(30, 'tbsp').round(3).equals('2.133')).toBe(true);
    expect(scoop(30, 'tbsp').round().equals(2n)).toBe(true);
  });

  // Source: USDA Food Buying Guide for Child Nutrition Programs, Section 1, black beans, canned, drained unheated:
  // 45.00 servings of ¼ cup in a No. 10 can that holds about 11¼ cups drained.
  it('a No. 16 disher serves a can of 11¼ cups drained beans 45 times', () => {
    const can = understood(parseQuantity('11 1/4 cups'));
    const servings = convert(can, 'scoop', [understood(parseConversion('16 scoops = 1 qt'))])!;
    expect(servings.amount.equals(45n)).toBe(true);
  });
});
