import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { definedFactor } from '../../../src/engine/measure/units.ts';

describe('units by definition', () => {
  // Source: NIST Handbook 44, Appendix C, General Tables of Units of Measurement: 1 in = 2.54 cm, the gallon is
  // 231 cubic inches, the avoirdupois pound 453.59237 g. The same values in UCUM 2.2 as [gal_us], [qt_us],
  // [pt_us], [cup_us], [foz_us], [tbs_us], [tsp_us], [lb_av], [oz_av].
  it.each([
    ['gal', 'ml', '3785.411784'],
    ['qt', 'ml', '946.352946'],
    ['pt', 'ml', '473.176473'],
    ['cup', 'ml', '236.5882365'],
    ['fl oz', 'ml', '29.5735295625'],
    ['tbsp', 'ml', '14.78676478125'],
    ['tsp', 'ml', '4.92892159375'],
    ['lb', 'g', '453.59237'],
    ['oz', 'g', '28.349523125'],
  ])('one %s is exactly as many %s as NIST Handbook 44 and UCUM say', (from, to, value) => {
    expect(definedFactor(from, to)!.equals(value)).toBe(true);
  });

  // Source: NIST Handbook 44, Appendix C, units of liquid volume and of mass, avoirdupois.
  it.each([
    ['gal', 'qt', 4],
    ['gal', 'cup', 16],
    ['gal', 'fl oz', 128],
    ['qt', 'pt', 2],
    ['cup', 'fl oz', 8],
    ['cup', 'tbsp', 16],
    ['fl oz', 'tbsp', 2],
    ['tbsp', 'tsp', 3],
    ['lb', 'oz', 16],
    // SI prefixes: BIPM, The International System of Units, 9th edition, table 7.
    ['kg', 'g', 1000],
    ['g', 'mg', 1000],
    ['l', 'dl', 10],
    ['l', 'cl', 100],
    ['l', 'ml', 1000],
  ])('one %s is exactly as many %s as the tables say', (from, to, value) => {
    expect(definedFactor(from, to)!.equals(value)).toBe(true);
  });

  // Oracle: js-quantities 1.8.0. Its own factors are decimals of eight or nine digits in binary floats, so
  // agreement is asked for to one part in a hundred million.
  it.each([
    ['gal', 'gal', 'l', 'liter'],
    ['qt', 'qt', 'l', 'liter'],
    ['pt', 'pt', 'ml', 'ml'],
    ['cup', 'cup', 'ml', 'ml'],
    ['fl oz', 'floz', 'cl', 'cl'],
    ['tbsp', 'tbsp', 'ml', 'ml'],
    ['tsp', 'tsp', 'dl', 'dl'],
    ['lb', 'lb', 'kg', 'kg'],
    ['oz', 'oz', 'g', 'g'],
    ['lb', 'lb', 'oz', 'oz'],
    ['gal', 'gal', 'tsp', 'tsp'],
    ['oz', 'oz', 'mg', 'mg'],
    ['dozen', 'dozen', 'each', 'each'],
  ])('one %s (%s) in %s (%s) agrees with an independent library', (from, theirFrom, to, theirTo) => {
    const theirs = Qty(1, theirFrom).to(theirTo).scalar;
    expect(Math.abs(definedFactor(from, to)!.valueOf() / theirs - 1)).toBeLessThan(1e-8);
  });

  it('never link weight and volume', () => {
    expect(definedFactor('oz', 'fl oz')).toBeUndefined();
  });
});
