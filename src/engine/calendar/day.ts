import { notParsed, type Parsed, parsed } from '../parsed.ts';

declare const dayBrand: unique symbol;

/** A calendar date as ISO 8601 text, `2027-04-26`: no time, no zone. Text order is date order. */
export type Day = string & { readonly [dayBrand]: 'Day' };

const DAY_FORM = /^(\d{4})-(\d{2})-(\d{2})$/;
const WAY_OUT = 'write the date as year-month-day, for example 2027-04-26';
const DAYS_IN_ERA = 146_097;
const MONTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/**
 * Reads a date written `YYYY-MM-DD`, years 1900 to 2999 of the Gregorian calendar.
 * Dates that do not exist, such as 2027-02-30, are refused with the last day their month has.
 */
export function parseDay(text: string): Parsed<Day> {
  const match = DAY_FORM.exec(text.slice(0, 40).trim());
  if (!match) return notParsed(`"${text.slice(0, 40)}" is not a date`, WAY_OUT);
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  if (year < 1900 || year > 2999)
    return notParsed(`the year ${year} is out of range`, 'use a year from 1900 to 2999');
  if (month < 1 || month > 12) return notParsed(`${match[0]} has no such month`, WAY_OUT);
  const last = daysInMonth(year, month);
  if (day < 1 || day > last) {
    return notParsed(
      `${match[0]} does not exist`,
      `that month runs from ${match[1]}-${match[2]}-01 to ${match[1]}-${match[2]}-${last}`,
    );
  }
  return parsed(match[0] as Day);
}

/** The number of days in a month (1 to 12) of the Gregorian calendar, leap years included. */
export function daysInMonth(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return month === 2 && leap ? 29 : (MONTHS[month - 1] ?? 0);
}

/** The date so many whole days later; negative numbers go back. */
export function addDays(day: Day, days: number): Day {
  return fromNumber(dayNumber(day) + days);
}

/** Whole days from one date to another: positive when `to` is later, 0 for the same date. */
export function daysBetween(from: Day, to: Day): number {
  return dayNumber(to) - dayNumber(from);
}

/** Day of the week: 0 is Sunday, 1 Monday, … 6 Saturday. */
export function weekday(day: Day): number {
  // 1970-01-01, day number 0, was a Thursday.
  return (((dayNumber(day) + 4) % 7) + 7) % 7;
}

/** Order of two dates for sorting: negative when `a` is earlier, 0 when equal. */
export function compareDays(a: Day, b: Day): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The later of two dates. */
export function laterDay(a: Day, b: Day): Day {
  return a < b ? b : a;
}

/*
 * Days since 1970-01-01 and back, in whole numbers alone. A year is taken to start in March, so that the
 * leap day is its last; 400 years (an era) always have 146,097 days.
 */
function dayNumber(day: Day): number {
  const month = Number(day.slice(5, 7));
  const year = Number(day.slice(0, 4)) - (month <= 2 ? 1 : 0);
  const era = Math.floor(year / 400);
  const yearOfEra = year - era * 400;
  const monthFromMarch = (month + 9) % 12;
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5) + Number(day.slice(8, 10)) - 1;
  const leapDays = Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100);
  return era * DAYS_IN_ERA + yearOfEra * 365 + leapDays + dayOfYear - 719_468;
}

function fromNumber(number: number): Day {
  const shifted = number + 719_468;
  const era = Math.floor(shifted / DAYS_IN_ERA);
  const dayOfEra = shifted - era * DAYS_IN_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  return `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}` as Day;
}

function pad(number: number, width: number): string {
  return String(number).padStart(width, '0');
}
