import { describe, expect, it } from 'vitest';
import { durationText, minutes, parseDuration } from '../../../src/engine/measure/duration.ts';
import { refusal, understood } from './understood.ts';

describe('a duration', () => {
  it.each([
    ['20 min', 20, '20 min'],
    ['2 hours', 120, '2 h'],
    ['1 h 30 min', 90, '1 h 30 min'],
    ['1½ h', 90, '1 h 30 min'],
    ['1 hr. 5 mins.', 65, '1 h 5 min'],
    ['90 minutes', 90, '1 h 30 min'],
    ['1 day 12 h', 2160, '36 h'],
    ['3 days', 4320, '72 h'],
    ['47 h 59 min', 2879, '47 h 59 min'],
    ['2 d', 2880, '48 h'],
    ['1 Day 1 Hr', 1500, '25 h'],
    ['366 days', 527_040, '8784 h'],
    ['2 days 4 h 1 min', 3121, '52 h 1 min'],
  ])('reads %s as %i minutes and writes %s', (text, count, written) => {
    const read = understood(parseDuration(text));
    expect(read).toBe(count);
    expect(durationText(read)).toBe(written);
    expect(understood(parseDuration(written))).toBe(read);
  });

  it.each([
    ['', 'is not a duration'],
    ['20', 'has no unit of time'],
    ['20 apples', 'has no unit of time in "apples"'],
    ['20-25 min', 'has no unit of time'],
    ['30 min 1 h', 'does not go from the longer unit to the shorter'],
    ['10 min 10 min', 'does not go from the longer unit to the shorter'],
    ['1/7 h', 'is not a whole number of minutes'],
    ['1 h 1.5 min', 'is not a whole number of minutes'],
    ['0 min', 'is zero'],
    ['-5 min', 'is negative'],
    ['366 days 1 min', 'is longer than a year'],
    ['1 min 2', 'has no unit of time'],
    [`1 min${' '.repeat(36)}`, 'is not a duration'],
  ])('refuses "%s"', (text, words) => {
    expect(refusal(parseDuration(text))).toContain(words);
  });

  it('is a whole number of minutes in code too', () => {
    expect(durationText(minutes(0))).toBe('0 min');
    for (const wrong of [1.5, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => minutes(wrong)).toThrow();
  });
});
