import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { definedFactor, UNITS } from '../../../src/engine/measure/units.ts';

const HANDBOOK_44 = 'NIST Handbook 44, Appendix C';
const SI = 'BIPM, The International System of Units, 9th edition, tables 7 and 8';
const NUMBER = 'a number, by the meaning of the word';

/**
 * How much each unit is in the base of its kind, as its source publishes it. Handbook 44 defines the inch as 2.54 cm,
 * the gallon as 231 cubic inches, the avoirdupois pound as 453.59237 g; UCUM 2.2 has the same values as [gal_us],
 * [qt_us], [pt_us], [cup_us], [foz_us], [tbs_us], [tsp_us], [lb_av], [oz_av].
 */
const PUBLISHED: readonly (readonly [unit: string, size: string, base: string, source: string])[] = [
  ['gal', '3785.411784', 'ml', HANDBOOK_44],
  ['qt', '946.352946', 'ml', HANDBOOK_44],
  ['pt', '473.176473', 'ml', HANDBOOK_44],
  ['cup', '236.5882365', 'ml', HANDBOOK_44],
  ['fl oz', '29.5735295625', 'ml', HANDBOOK_44],
  ['tbsp', '14.78676478125', 'ml', HANDBOOK_44],
  ['tsp', '4.92892159375', 'ml', HANDBOOK_44],
  ['lb', '453.59237', 'g', HANDBOOK_44],
  ['oz', '28.349523125', 'g', HANDBOOK_44],
  ['kg', '1000', 'g', SI],
  ['g', '1', 'g', SI],
  ['mg', '0.001', 'g', SI],
  ['l', '1000', 'ml', SI],
  ['dl', '100', 'ml', SI],
  ['cl', '10', 'ml', SI],
  ['ml', '1', 'ml', SI],
  ['each', '1', 'each', NUMBER],
  ['dozen', '12', 'each', NUMBER],
];

describe('units by definition', () => {
  it.each(PUBLISHED)('one %s is exactly %s %s: %s', (unit, size, base) => {
    expect(definedFactor(unit, base)!.equals(size)).toBe(true);
    expect(UNITS.get(unit)!.size.equals(size)).toBe(true);
  });

  it('are all held to a published size: a unit added without one fails here', () => {
    expect([...UNITS.keys()].sort()).toEqual(PUBLISHED.map(([unit]) => unit).sort());
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
