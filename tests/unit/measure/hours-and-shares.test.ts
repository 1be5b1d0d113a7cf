import { describe, expect, it } from 'vitest';
import { parseHours } from '../../../src/engine/measure/parse-hours.ts';
import { parseShare } from '../../../src/engine/measure/parse-share.ts';
import { refusal, understood } from './understood.ts';

describe('hours of work', () => {
  it.each([
    ['6 hours', '6'],
    ['1 Hour', '1'],
    ['5½ h', '5.5'],
    ['5 1/4 hrs', '5.25'],
    [' 5.5 ', '5.5'],
    ['0.25 hr', '0.25'],
    ['72', '72'],
  ])('written %s are %s', (text, hours) => {
    expect(understood(parseHours(text))).toBe(hours);
  });

  it.each([
    ['', 'does not start with a number'],
    ['-2 h', 'is negative'],
    ['0 h', 'is not a working time'],
    ['72¼ h', 'at most 72'],
    ['⅓ h', 'in quarters of an hour'],
    ['6 apples', 'is not a number of hours'],
    ['1 hour and a half', 'is not a number of hours'],
    ['6 minutes', 'is not a number of hours'],
  ])('are not “%s”', (text, words) => {
    expect(refusal(parseHours(text))).toContain(words);
  });
});

describe('a share of food', () => {
  it.each([
    ['8 %', '2/25'],
    ['12.5 %', '1/8'],
    ['0 %', '0'],
    ['100%', '1'],
    ['33.33 %', '3333/10000'],
  ])('of %s is exactly %s', (text, share) => {
    expect(understood(parseShare(text)).toFraction()).toBe(share);
  });

  it.each(['8', '-8 %', 'a tenth', '1001 %'])('is not “%s”', (text) => {
    refusal(parseShare(text));
  });
});
