import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** Whole days before the event's day: 0 on the day, negative after it. */
export type DaysBefore = number;

const COUNTED = /^(\d{1,3}|a|an|one) (day|days|week|weeks) (before|after)$/;
const THE_DAY = /^the day (before|after)$/;

/**
 * Reads when something is due or done, counted back from the event's day, as whole days before it:
 * `2 days before` → 2, `the day before` → 1, `on the day` and `at serving` → 0, `3 days after` → -3,
 * `2 weeks before` → 14. At most 999 days or weeks.
 */
export function parseDaysBefore(text: string): Parsed<DaysBefore> {
  const words = text.slice(0, 60).trim().toLowerCase().replace(/\s+/g, ' ');
  if (words === 'on the day' || words === 'at serving') return parsed<DaysBefore>(0);
  const theDay = THE_DAY.exec(words);
  if (theDay) return parsed(theDay[1] === 'before' ? 1 : -1);
  const counted = COUNTED.exec(words);
  if (!counted) {
    return notParsed(
      `"${text.slice(0, 60)}" is not a day`,
      'write for example "2 days before", "the day before", "on the day", "at serving" or "3 days after"',
    );
  }
  const number = /^\d/.test(counted[1] ?? '') ? Number(counted[1]) : 1;
  const days = number * (counted[2]?.startsWith('week') ? 7 : 1);
  // 0 days after is the day itself; without the test it would be -0, which no comparison of plans expects.
  return parsed(counted[3] === 'after' && days !== 0 ? -days : days);
}

/** The canonical words for whole days before the event's day; `parseDaysBefore` reads them back. */
export function daysBeforeText(daysBefore: DaysBefore): string {
  if (daysBefore === 0) return 'on the day';
  const days = Math.abs(daysBefore);
  return `${days} ${days === 1 ? 'day' : 'days'} ${daysBefore > 0 ? 'before' : 'after'}`;
}
