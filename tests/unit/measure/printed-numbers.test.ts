import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { fineDecimal } from '../../../src/engine/measure/fine-decimal.ts';
import { mixedNumberText, printedNumberText } from '../../../src/engine/measure/mixed-number.ts';
import { isEverydayFraction } from '../../../src/engine/measure/vulgar-fractions.ts';

describe('a decimal for an amount that no measure is near', () => {
  const shown = (amount: string, rule: 'line' | 'at-least') =>
    fineDecimal(new Fraction(amount), rule).toFraction();
  it.each([
    // Two digits that count, or as many as bring it within 2 %.
    ['37/38', '97/100', '49/50'],
    ['197/200', '99/100', '99/100'],
    ['1/300', '33/10000', '17/5000'],
    ['101/10000', '1/100', '101/10000'],
    ['10', '10', '10'],
  ])('%s is %s on a line, and %s to hold at least as much', (amount, line, atLeast) => {
    expect([shown(amount, 'line'), shown(amount, 'at-least')]).toEqual([line, atLeast]);
  });
});

describe('a number for print', () => {
  it.each([
    ['3', '3'],
    // Fractions that cooks use, up to sixteenths.
    ['1/5', '⅕'],
    ['7/8', '⅞'],
    ['5/4', '1¼'],
    ['3/16', '3/16'],
    ['33/16', '2 1/16'],
    // Decimals where they end within nine places.
    ['1/10', '0.1'],
    ['97/100', '0.97'],
    ['7/32', '0.21875'],
    ['1001/1000', '1.001'],
    ['1/1000000000', '0.000000001'],
    // Else the plain fraction.
    ['1/9', '⅑'],
    ['1/12', '1/12'],
    ['38/37', '1 1/37'],
    ['1/10000000000', '1/10000000000'],
  ])('%s is %s', (value, text) => {
    expect(printedNumberText(new Fraction(value))).toBe(text);
  });

  it('without decimals is a mixed number', () => {
    expect(
      ['1/10', '11/10', '1/3', '7/3', '7/100'].map((each) => mixedNumberText(new Fraction(each))),
    ).toEqual(['⅒', '1⅒', '⅓', '2⅓', '7/100']);
  });
});

it('the fractions that kitchens measure by are a half, thirds, quarters and eighths below one in lowest terms', () => {
  const everyday: string[] = [];
  for (let d = 0n; d <= 20n; d += 1n)
    for (let n = 0n; n <= 20n; n += 1n) if (isEverydayFraction(n, d)) everyday.push(`${n}/${d}`);
  expect(everyday).toEqual(['1/2', '1/3', '2/3', '1/4', '3/4', '1/8', '3/8', '5/8', '7/8']);
});
