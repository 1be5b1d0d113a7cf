import type { SoldRole } from '../event-input.ts';
import type { EventClock } from './event-clock.ts';

/** How long those who work at an event are at work, in minutes from the midnight of its day. */
export interface Presence {
  readonly from: number;
  readonly until: number;
}

/**
 * From loading until the truck is back at the kitchen: the road both ways, set-up, service and clearing included.
 * Undefined where it is not stated how long is served.
 */
export function presenceOf({ load, back }: EventClock): Presence | undefined {
  return back === undefined ? undefined : { from: load, until: back };
}

/** The roles that are sold for less time than they are at work, and by how many minutes of all of them together. */
export function soldShort(
  sold: readonly SoldRole[],
  { from, until }: Presence,
): { readonly roles: readonly SoldRole[]; readonly missing: number } {
  const roles = sold.filter(({ people, each }) => people > 0 && each < until - from);
  return { roles, missing: roles.reduce((sum, { people, each }) => sum + people * (until - from - each), 0) };
}
