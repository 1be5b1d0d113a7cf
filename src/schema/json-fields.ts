import { z } from 'zod';
import type { Day } from '../engine/calendar/day.ts';
import { parseDay } from '../engine/calendar/day.ts';

/*
 * Fields shared by the JSON files that Salver writes (offers, acceptances, facts of events). They are written by
 * machine and read back by machine, so each has one form only; figures are text, since JSON numbers are floats.
 */

/** Text of at most so many characters, without control characters but tab and line breaks. */
export function boundedText(most: number) {
  return z
    .string()
    .max(most)
    .refine((text) => !CONTROL.test(text), 'has a control character');
}

/** One line of text: a name, a label. Not empty, no line break, so that it can stand in a mail's header. */
export function oneLine(most: number) {
  return boundedText(most).refine(
    (text) => text.trim() !== '' && !/[\n\r\t\u2028\u2029]/.test(text),
    'must be one line of text',
  );
}

/** The same, or nothing at all. */
export function optionalLine(most: number) {
  return boundedText(most).refine((text) => !/[\n\r\t\u2028\u2029]/.test(text), 'must be one line of text');
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is refused.
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/;

/** The id of a content file or entry: lower-case words joined by hyphens, at most 60 characters. */
export const idText = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be lower-case words joined by hyphens');

/** A date that exists, `2027-04-26`. */
export const dayText = z
  .string()
  .refine(
    (text) => /^\d{4}-\d{2}-\d{2}$/.test(text) && parseDay(text).ok,
    'must be a date such as 2027-04-26',
  )
  .describe('a date, year-month-day') as unknown as z.ZodType<Day>;

/** Time of day, 24 hours, `18:00`. */
export const clockText = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time such as 18:00');

/** A sum of money in the file's currency: digits, and decimals after a point; never negative. */
export const moneyText = z.string().regex(/^\d{1,12}(\.\d{1,8})?$/, 'must be an amount such as 1234.50');

/** The same with a minus sign where money goes the other way. */
export const signedMoneyText = z
  .string()
  .regex(/^-?\d{1,12}(\.\d{1,8})?$/, 'must be an amount such as 1234.50 or -1234.50');

/** A share: `8.25 %`. */
export const rateText = z.string().regex(/^\d{1,4}(\.\d{1,8})? ?%$/, 'must be a rate such as 8.25 %');

/** A decimal that is no money: hours. */
export const decimalText = z.string().regex(/^\d{1,9}(\.\d{1,8})?$/, 'must be a number such as 5.5');

/** A whole number of people, 0 to 100,000. */
export const peopleCount = z.int().min(0).max(100_000);

/** People of an event by group. */
export const guestCounts = z.strictObject({
  adults: peopleCount,
  children: peopleCount,
  vendors: peopleCount,
  staff: peopleCount,
});

/** SHA-256 over the RFC 8785 form of what is digested, 64 hexadecimal digits in lower case. */
export const digestText = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 digest in lower-case hexadecimal');

/** The unguessable part of a proposal's address: base32 in lower case, at least 100 bits. */
export const linkText = z
  .string()
  .regex(/^[a-z2-7]{20,64}$/, 'must be at least 20 characters of a–z and 2–7');
