import { Temporal } from 'temporal-polyfill';
import type { Call } from './command.ts';

/** Today's date, YYYY-MM-DD, in an IANA time zone such as `America/Chicago`. */
export function todayIn(zone: string): string {
  return Temporal.Now.plainDateISO(zone).toString();
}

/** The day a command works from: what `--today` says, else the date in the kitchen's time zone. */
export function todayFor(call: Pick<Call, 'today'>, zone: string): string {
  return call.today ?? todayIn(zone);
}

/** Whether the text is a date that exists, written YYYY-MM-DD. */
export function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' });
    return true;
  } catch {
    return false;
  }
}
