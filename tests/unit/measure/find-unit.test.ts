import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { findUnit, unitAfter, unitWord } from '../../../src/engine/measure/find-unit.ts';
import { unitKind } from '../../../src/engine/measure/units.ts';
import { refusal, understood } from './understood.ts';

describe('the unit that words name', () => {
  it.each([
    ['Pounds', 'lb'],
    ['lbs.', 'lb'],
    ['Tbsp', 'tbsp'],
    ['tablespoons', 'tbsp'],
    ['fl. oz.', 'fl oz'],
    ['fluid ounces', 'fl oz'],
    ['oz', 'oz'],
    ['litre', 'l'],
    ['liters', 'l'],
    ['KG', 'kg'],
    ['ea.', 'each'],
    ['loaves', 'loaf'],
    ['bunches', 'bunch'],
    ['pieces', 'piece'],
    ['leaves', 'leaf'],
    ['radishes', 'radish'],
    ['boxes', 'box'],
    ['berries', 'berry'],
    ['cookies', 'cookie'],
    ['potatoes', 'potato'],
    ['slices', 'slice'],
    ['glasses', 'glass'],
    ['molasses', 'molasses'],
    ['half pans', 'half pan'],
    // Codes of price lists (common practice, no source).
    ['CS', 'case'],
    ['bg', 'bag'],
    ['BX.', 'box'],
    ['CN', 'can'],
    ['PK', 'pack'],
    ['DZ', 'dozen'],
    ['CT', 'each'],
  ])('finds %s as %s', (words, unit) => {
    expect(understood(findUnit(words))).toBe(unit);
  });

  it('takes oz for a weight and fl oz for a volume', () => {
    expect([unitKind('oz'), unitKind('fl oz'), unitKind('can')]).toEqual(['mass', 'volume', 'count']);
  });

  it.each(['T', 't', 'c'])('refuses %s, which may mean several units', (letter) => {
    expect(refusal(findUnit(letter))).toContain('write the unit in full');
  });

  it.each([
    'cups chopped',
    'dozen eggs',
    'heads of lettuce',
    '%',
    '#',
    'big red ripe soft pears',
    'x'.repeat(41),
    '',
  ])('refuses "%s", which is more or less than a unit', (words) => {
    refusal(findUnit(words));
  });

  it.each([
    ['loaf', '1', 'loaf'],
    ['loaf', '10', 'loaves'],
    ['head', '1/2', 'head'],
    ['bunch', '5/2', 'bunches'],
    ['cup', '3/4', 'cup'],
    ['cup', '5/4', 'cups'],
    ['patty', '2', 'patties'],
    ['tomato', '2', 'tomatoes'],
    ['avocado', '2', 'avocados'],
    ['half pan', '3', 'half pans'],
    ['molasses', '2', 'molasses'],
    ['lb', '2', 'lb'],
    ['each', '2', 'each'],
  ])('prints %s for %s as %s', (unit, amount, word) => {
    expect(unitWord(unit, new Fraction(amount))).toBe(word);
  });

  it.each([
    ['½', '1/2', 'cup'],
    ['1', '1', 'cup'],
    ['1', '1.004', 'cup'],
    ['0.48', '0.48', 'cups'],
    ['1.5', '1.5', 'cups'],
    ['0', '0', 'cups'],
    ['2', '2', 'cups'],
  ])('after %s for %s it is %s', (written, amount, word) => {
    expect(unitAfter(written, 'cup', new Fraction(amount))).toBe(word);
  });
});
