import { Temporal } from 'temporal-polyfill';
import type { Day } from '../../engine/calendar/day.ts';
import type { Call } from './command.ts';

/** Today's date in an IANA time zone such as `America/Chicago`. Commands are the only place with a clock. */
export function todayIn(zone: string): Day {
  return Temporal.Now.plainDateISO(zone).toString() as Day;
}

/** The day a command works from: what `--today` says, else the date in the kitchen's time zone. */
export function todayFor(call: Pick<Call, 'today'>, zone: string): Day {
  return call.today ?? todayIn(zone);
}
