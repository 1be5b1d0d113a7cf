import { notParsed, type Parsed, parsed } from '../parsed.ts';

const FORM = /^(\d{1,2}):(\d{2})$/;

/** Reads a time of day by 24 hours, `18:00` or `9:30`, as HH:MM. */
export function parseClock(text: string): Parsed<string> {
  const [, hours = '99', minutes = '99'] = FORM.exec(text.slice(0, 20).trim()) ?? [];
  return Number(hours) > 23 || Number(minutes) > 59
    ? notParsed(`“${text.slice(0, 20)}” is not a time of day`, 'write it by 24 hours, such as 18:00')
    : parsed(`${hours.padStart(2, '0')}:${minutes}`);
}

/** Minutes from midnight of a time as `parseClock` gives it: `18:00` → 1080. */
export function minutesOfClock(clock: string): number {
  const [hours, mins] = clock.split(':');
  return Number(hours) * 60 + Number(mins);
}
