import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  addQuantities,
  compare,
  exactText,
  isZero,
  parseExactText,
  quantity,
  timesQuantity,
  writtenText,
} from '../../../src/engine/measure/quantity.ts';
import { refusal, understood } from './understood.ts';

describe('a quantity', () => {
  it('adds three sixths of a cup to exactly half a cup', () => {
    const sixth = quantity('1/6', 'cup');
    expect(exactText(addQuantities(addQuantities(sixth, sixth), sixth))).toBe('1/2 cup');
  });

  it('refuses to add or compare different units and names both', () => {
    const [cup, lb] = [quantity(1n, 'cup'), quantity(2n, 'lb')];
    expect(() => addQuantities(cup, lb)).toThrow('1 cup and 2 lb');
    expect(() => compare(cup, lb)).toThrow('1 cup and 2 lb');
  });

  it('refuses a unit in code that is not written canonically', () => {
    expect(() => quantity(1n, 'cups')).toThrow('"cups" is not the canonical name of a unit');
  });

  it('orders by exact value', () => {
    expect(compare(quantity('1/3', 'lb'), quantity('0.333333', 'lb'))).toBe(1);
    expect(compare(quantity('1/2', 'lb'), quantity('0.5', 'lb'))).toBe(0);
    expect(compare(quantity('7/16', 'lb'), quantity('0.5', 'lb'))).toBe(-1);
    expect([isZero(quantity(0n, 'lb')), isZero(quantity('1/9', 'lb'))]).toEqual([true, false]);
    expect(isZero(timesQuantity(quantity(3n, 'lb'), new Fraction(0n)))).toBe(true);
  });

  it('writes zero and negative amounts for JSON and reads them back', () => {
    for (const text of ['0 lb', '-25/16 gal', '2 lb']) {
      expect(exactText(understood(parseExactText(text)))).toBe(text);
    }
    for (const text of [
      '',
      '2',
      '1/0 lb',
      '1.5 lb',
      '1/2/3 lb',
      ' 2 lb',
      '1e3 lb',
      'about 2 lb',
      '2 lb 4',
      '2 of lb',
      '1/00 lb',
      `${'9'.repeat(1001)} lb`,
    ])
      refusal(parseExactText(text));
  });

  it('of more digits than anybody writes by hand has its exact text, in which a whole number shows that it was computed', () => {
    const of = (amount: string) => quantity(new Fraction(amount), 'lb');
    expect([exactText(of('999999999999')), exactText(of('1000000000000'))]).toEqual([
      '999999999999 lb',
      '1000000000000/1 lb',
    ]);
    expect(writtenText(of('1/999999999999'))).toBe('1/999999999999 lb');
    expect(writtenText(of('1000000000001/1000000000000'))).toBe('1000000000001/1000000000000 lb');
  });

  it('is written as a cook would, without carrying into other units', () => {
    const written = (amount: string, unit: string) => writtenText(quantity(amount, unit));
    expect(written('3/2', 'fl oz')).toBe('1½ fl oz');
    expect(written('35/16', 'lb')).toBe('2 3/16 lb');
    expect(written('10', 'loaf')).toBe('10 loaves');
  });
});
