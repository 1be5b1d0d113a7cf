import type Fraction from 'fraction.js';
import type { Attendance } from './demand.ts';

/** How guests come, as it is written. Below 1 fail to come; at least one guest is a party. */
export interface StatedAttendance {
  readonly failToCome: Fraction;
  readonly partyOf: number;
}

/** The chances that guests come by; undefined where not stated: then everybody comes. */
export function attendanceBy(stated: StatedAttendance | undefined): Attendance {
  return stated
    ? { failToCome: stated.failToCome.valueOf(), partyOf: stated.partyOf }
    : { failToCome: 0, partyOf: 1 };
}
