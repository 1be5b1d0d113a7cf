import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { readNumber, tidy } from './mixed-number.ts';

/** A whole number of minutes, zero or more. Branded, so that it does not pass for guests or a price. */
export type Minutes = number & { readonly minutes: unique symbol };

const MINUTES_IN: ReadonlyMap<string, bigint> = new Map([
  ...['d', 'day', 'days'].map((word): [string, bigint] => [word, 1440n]),
  ...['h', 'hr', 'hrs', 'hour', 'hours'].map((word): [string, bigint] => [word, 60n]),
  ...['min', 'mins', 'minute', 'minutes'].map((word): [string, bigint] => [word, 1n]),
]);

/** The longest duration a text may mean: a year, in minutes. */
const LONGEST = 366 * 1440;
/** Above every unit of time, so that any may come first. */
const ABOVE_A_DAY = 1441n;
const WAY_OUT = 'write it as 20 min, 2 h, 1 h 30 min or 3 days';

/** Makes minutes in code. Throws on anything but a whole number, zero or more. */
export function minutes(n: number): Minutes {
  if (!Number.isSafeInteger(n) || n < 0) throw new RangeError(`minutes are a whole number from 0, not ${n}`);
  return n as Minutes;
}

/**
 * Reads `20 min`, `2 hours`, `1½ h`, `1 h 30 min`, `3 days`: parts from the longer unit to the shorter, in
 * all a whole number of minutes above zero and at most a year.
 */
export function parseDuration(text: string): Parsed<Minutes> {
  let rest = text.length > 40 ? '' : tidy(text);
  const refuse = (what: string): Parsed<Minutes> =>
    notParsed(`"${text.slice(0, 40).trim()}" ${what}`, WAY_OUT);
  if (rest === '') return refuse('is not a duration');
  let total = new Fraction(0n);
  let before = ABOVE_A_DAY;
  while (rest !== '') {
    const number = readNumber(rest);
    if (!number.ok) return number;
    const word = /^\p{L}*/u.exec(number.value.rest)![0];
    const unit = MINUTES_IN.get(word.toLowerCase());
    if (unit === undefined)
      return refuse(word === '' ? 'has no unit of time' : `has no unit of time in "${word}"`);
    if (unit >= before) return refuse('does not go from the longer unit to the shorter');
    total = total.add(number.value.value.mul(unit));
    before = unit;
    rest = number.value.rest.slice(word.length).replace(/^\. ?/, '').trim();
  }
  if (total.d !== 1n) return refuse('is not a whole number of minutes');
  if (total.n === 0n) return refuse('is zero');
  return total.gt(LONGEST) ? refuse('is longer than a year') : parsed(minutes(Number(total.n)));
}

/**
 * Minutes in hours and minutes, by the symbols that every language shares: `20 min`, `1 h 30 min`, `52 h`. However long it is,
 * it is told in hours: nobody works days of 24.
 */
export function durationText(duration: Minutes): string {
  const hours = Math.floor(duration / 60);
  const rest = duration % 60;
  const parts = [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 ? [`${rest} min`] : [])];
  return parts.length === 0 ? '0 min' : parts.join(' ');
}
