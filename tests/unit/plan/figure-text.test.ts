import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  comesTo,
  comesToMeasured,
  percent,
  plainAmount,
  plainNumber,
  signedNumber,
  wholePercent,
} from '../../../src/engine/plan/figure-text.ts';
import { q } from './builders.ts';

const of = (text: string) => new Fraction(text);

describe('a number for a cook', () => {
  test('has thirds and eighths as fractions, short decimals as they are, and two decimals of any other', () => {
    expect(['50/3', '5/8', '1.05', '0.125', '0.105', '22/7'].map((text) => plainNumber(of(text)))).toEqual([
      '16⅔',
      '⅝',
      '1.05',
      '⅛',
      '0.105',
      '3.14',
    ]);
  });

  test('keeps two figures that count where it is small, so that no pinch of anything reads 0', () => {
    expect(['1/7', '1/70', '1/7000', '1/70000000'].map((text) => plainNumber(of(text)))).toEqual([
      '0.14',
      '0.014',
      '0.00014',
      '0.000000014',
    ]);
    // From a tenth on; a tenth itself has two decimals enough.
    expect(plainNumber(of('0.1000001'))).toBe('0.1');
  });

  test('says whether it is the one meant', () => {
    expect(['50/3', '1.05', '22/7'].map((text) => signedNumber(of(text)))).toEqual([
      '= 16⅔',
      '= 1.05',
      '≈ 3.14',
    ]);
  });
});

describe('an amount for a cook', () => {
  test('stays in its unit; metric ones have no thirds, as no scale shows any', () => {
    expect(
      [q('1/3 cup'), q('200 fl oz'), { amount: of('1/3'), unit: 'kg' }, q('2.5 kg')].map(plainAmount),
    ).toEqual(['⅓ cup', '200 fl oz', '0.33 kg', '2.5 kg']);
    expect([{ amount: of('1/3'), unit: 'kg' }, q('1/3 cup')].map(comesTo)).toEqual(['≈ 0.33 kg', '= ⅓ cup']);
  });

  test('is also told as a kitchen measures it, where that says it otherwise', () => {
    expect(comesToMeasured(q('200 fl oz'), 'us')).toBe('= 200 fl oz = 1 gal 2 qt 1 cup');
    // An ounce has no sevenths: it is measured up, and the sign says so.
    expect(comesToMeasured({ amount: of('22/7'), unit: 'oz' }, 'us')).toBe('≈ 3.14 oz ≈ 3 3/16 oz');
    expect(comesToMeasured(q('3 oz'), 'us')).toBe('= 3 oz');
    expect(comesToMeasured(q('20 servings'), 'us')).toBe('= 20 servings');
    expect(comesToMeasured({ amount: of('0'), unit: 'gal' }, 'us')).toBe('= 0 gal');
  });
});

describe('a share', () => {
  test('is told in percent', () => {
    expect(['8/100', '1/8', '1/3'].map((text) => percent(of(text)))).toEqual(['8 %', '12½ %', '33⅓ %']);
  });

  test('of a pan is told in whole percent, and never as empty', () => {
    expect(['0.745', '0.744', '1', '0.004', '0.005'].map((text) => wholePercent(of(text)))).toEqual([
      '75 %',
      '74 %',
      '100 %',
      '1 %',
      '1 %',
    ]);
  });
});
