import { type Day, weekday } from '../../engine/calendar/day.ts';

const DAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'];
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** A date as people say it: `Saturday, May 15, 2027` for en-US, `Saturday, 15 May 2027` elsewhere. */
export function dateText(day: Day, locale: string): string {
  const [year = '', month = '', date = ''] = day.split('-');
  const name = MONTHS[Number(month) - 1];
  const middle = locale === 'en-US' ? `${name} ${Number(date)}, ${year}` : `${Number(date)} ${name} ${year}`;
  return `${DAYS[weekday(day)]}, ${middle}`;
}
