import { describe, expect, it } from 'vitest';
import {
  addDays,
  compareDays,
  type Day,
  daysBetween,
  daysInMonth,
  laterDay,
  parseDay,
  weekday,
} from '../../../src/engine/calendar/day.ts';

const day = (text: string) => text as Day;

describe('a date', () => {
  it('is refused when it does not exist, with the days its month has', () => {
    expect(parseDay('2027-02-30')).toEqual({
      ok: false,
      what: '2027-02-30 does not exist',
      wayOut: 'that month runs from 2027-02-01 to 2027-02-28',
    });
    for (const text of ['2027-00-10', '2027-13-01', '2027-04-31', '2100-02-29', '1899-12-31', '3000-01-01']) {
      expect([text, parseDay(text).ok]).toEqual([text, false]);
    }
  });

  it('is refused in any other form', () => {
    for (const text of [
      '',
      '26.4.2027',
      '2027-4-26',
      '04/26/2027',
      '2027-04-26T10:00',
      'tomorrow',
      '2027-04-26x',
    ]) {
      expect([text, parseDay(text).ok]).toEqual([text, false]);
    }
  });

  it('knows leap years by the Gregorian rule', () => {
    expect(['2028-02-29', '2000-02-29', '2400-02-29'].map((text) => parseDay(text).ok)).toEqual([
      true,
      true,
      true,
    ]);
    expect(['2027-02-29', '1900-02-29', '2200-02-29'].map((text) => parseDay(text).ok)).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('agrees with the platform on every day from 1900 to 2400', () => {
    let current = day('1900-01-01');
    let milliseconds = Date.UTC(1900, 0, 1);
    const last = Date.UTC(2400, 11, 31);
    while (milliseconds < last) {
      const oracle = new Date(milliseconds);
      if (oracle.toISOString().slice(0, 10) !== current || oracle.getUTCDay() !== weekday(current)) {
        expect.fail(`${current} is ${oracle.toISOString()} on the platform`);
      }
      current = addDays(current, 1);
      milliseconds += 86_400_000;
    }
    expect(current).toBe('2400-12-31');
  });

  it('is read from the first day of 1900 to the last of 2999', () => {
    for (const text of ['1900-01-01', '2999-12-31', ' 2027-01-31 ', '2027-12-01'])
      expect(parseDay(text)).toEqual({ ok: true, value: text.trim() });
    for (const text of ['2027-04-00', '2027-04-32', 'on 2027-04-26', '12027-04-26'])
      expect([text, parseDay(text).ok]).toEqual([text, false]);
  });

  it('has as many days in its month as the Gregorian calendar gives it', () => {
    const year = (of: number) => Array.from({ length: 12 }, (_, month) => daysInMonth(of, month + 1));
    expect(year(2027)).toEqual([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
    expect([2028, 2100, 2400].map((of) => daysInMonth(of, 2))).toEqual([29, 28, 29]);
    // In a leap year no month but February is longer.
    expect(year(2028).filter((days, at) => days !== year(2027)[at])).toEqual([29]);
  });

  it('is the later of two', () => {
    const [first, second] = [day('2027-05-15'), day('2027-05-16')];
    expect([laterDay(first, second), laterDay(second, first), laterDay(first, first)]).toEqual([
      second,
      second,
      first,
    ]);
    expect([compareDays(second, first), compareDays(first, first)]).toEqual([1, 0]);
  });

  it('counts days between dates and orders them', () => {
    expect(daysBetween(day('2027-12-30'), day('2028-03-01'))).toBe(62);
    expect(daysBetween(day('2028-03-01'), day('2027-12-30'))).toBe(-62);
    expect(addDays(day('2027-05-15'), -30)).toBe('2027-04-15');
    expect(compareDays(day('2027-05-15'), day('2027-05-16'))).toBeLessThan(0);
  });
});
