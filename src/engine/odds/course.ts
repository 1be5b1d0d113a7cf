import type { Attendance } from './demand.ts';
import { attendanceOf, demandOf } from './demand.ts';
import { chanceOfShortage, leastHelpings } from './shortage.ts';

/** One dish of a course in which every guest takes one of several. */
export interface CourseDish {
  readonly id: string;
  /** Share of the guests who take it first, from 0 to 1; those of a course sum to 1. */
  readonly share: number;
}

/** What to carry of a course as a whole. */
export interface CourseAmounts {
  /** Helpings of the whole course. */
  readonly helpings: number;
  /** Chance that a guest finds none of its dishes. */
  readonly shortOfAll: number;
  /** Helpings of each dish, and the chance that somebody misses it and takes another. */
  readonly dishes: readonly { readonly id: string; readonly helpings: number; readonly missed: number }[];
  /** What each dish would have carried by itself at the same risk, together. */
  readonly apart: number;
}

/**
 * Amounts for a course from which every guest takes one dish, and takes another where the first has run out: the
 * course as a whole runs short with at most the chance given, and is split by the shares, whole helpings, largest
 * remainders first. Carried separately, each dish would have to meet its own demand.
 */
export function courseAmounts(
  dishes: readonly CourseDish[],
  guests: number,
  risk: number,
  attendance: Attendance,
): CourseAmounts {
  const whole = attendanceOf(guests, attendance);
  const helpings = leastHelpings(whole, risk);
  const parts = split(
    helpings,
    dishes.map(({ share }) => share),
  );
  const demands = dishes.map(({ share }) =>
    demandOf(Float64Array.of(1 - share, share), { sure: 0, free: guests }, attendance),
  );
  return {
    helpings,
    shortOfAll: chanceOfShortage(whole, helpings),
    dishes: dishes.map(({ id }, at) => ({
      id,
      helpings: parts[at] as number,
      missed: chanceOfShortage(demands[at]!, parts[at] as number),
    })),
    apart: demands.reduce((sum, demand) => sum + leastHelpings(demand, risk), 0),
  };
}

/** A whole number split by shares, the largest remainders first, the earlier of two equal ones. */
function split(whole: number, shares: readonly number[]): number[] {
  const exact = shares.map((share) => share * whole);
  const parts = exact.map(Math.floor);
  const order = exact
    .map((value, at) => ({ at, rest: value - Math.floor(value) }))
    .sort((one, other) => other.rest - one.rest || one.at - other.at);
  let left = whole - parts.reduce((sum, part) => sum + part, 0);
  for (const { at } of order) {
    if (left <= 0) break;
    parts[at]! += 1;
    left -= 1;
  }
  return parts;
}
