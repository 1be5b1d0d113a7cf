import { type Chances, certainly, eitherOf, sumOf, timesOver } from './chances.ts';

/** Who will eat of a dish. Whole guests; where a child counts as a part, the kitchen plans by amounts instead. */
export interface Eaters {
  /** Guests who take at least one helping, as there is nothing else for them: by the appetite, and one where it says none. */
  readonly sure: number;
  /** Guests who take it by the appetite. */
  readonly free: number;
}

/** How guests come: some of those expected fail to, each party as a whole. */
export interface Attendance {
  /** Chance that a party fails to come, from 0 up to and without 1. */
  readonly failToCome: number;
  /** Guests of one party, 1 where each comes alone. */
  readonly partyOf: number;
}

/** Everybody comes. */
export const ALL_COME: Attendance = { failToCome: 0, partyOf: 1 };

/**
 * The chances of each number of helpings that all eaters together take. Guests choose each for themselves, and
 * parties come or fail to come each for themselves: where everybody does as the others do, or the weather keeps all
 * away, the chances of few and of many are greater than these. Exact for any number of guests: no normal curve.
 */
export function demandOf(one: Chances, { sure, free }: Eaters, attendance: Attendance = ALL_COME): Chances {
  return sumOf(ofGuests(atLeastOne(one), sure, attendance), ofGuests(one, free, attendance));
}

function atLeastOne(one: Chances): Chances {
  const [none = 0, single = 0, ...more] = one;
  return Float64Array.of(0, none + single, ...more);
}

/** The chances of how many guests come. */
export function attendanceOf(guests: number, attendance: Attendance): Chances {
  return ofGuests(certainly(1), guests, attendance);
}

function ofGuests(one: Chances, guests: number, { failToCome, partyOf }: Attendance): Chances {
  if (failToCome === 0) return timesOver(one, guests);
  const party = (size: number) => eitherOf(failToCome, certainly(0), timesOver(one, size));
  const parties = timesOver(party(partyOf), Math.floor(guests / partyOf));
  const rest = guests % partyOf;
  return rest === 0 ? parties : sumOf(parties, party(rest));
}
