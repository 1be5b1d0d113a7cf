import type { Kitchen } from '../../kitchen/kitchen.ts';
import type { SoldRole } from '../event-input.ts';
import type { ServedOn } from './day-clock.ts';
import type { EventClock } from './event-clock.ts';

/** What of an event's clock those who work at it come and go by. */
export type WorkingHours = Pick<EventClock, 'load' | 'arrive' | 'serve' | 'end' | 'cleared' | 'unloaded'>;

/** A role's hours at an event: what it is sold for, and from when to when its people are at work. */
export interface RoleHours {
  readonly sold: SoldRole;
  /** Minutes from the midnight of the event's day. */
  readonly from: number;
  readonly until: number;
  /** Minutes for which guests are served. */
  readonly served: number;
  /** Minutes of all its people together that are not sold; below 0 where more is sold than needed. */
  readonly missing: number;
}

/**
 * From when to when each role is at work. Who reports to the kitchen is there from loading until the truck is unloaded,
 * the road both ways, set-up, service and clearing included; who reports to the place, from the truck's arrival until all
 * is cleared. A role without people is left out. Undefined where it is not stated how long is served.
 */
export function roleHours(
  sold: readonly SoldRole[],
  { load, arrive, serve, end, cleared, unloaded }: WorkingHours,
): RoleHours[] | undefined {
  if (end === undefined || cleared === undefined || unloaded === undefined) return undefined;
  return sold
    .filter(({ people }) => people > 0)
    .map((role): RoleHours => {
      const [from, until] = role.reportsTo === 'place' ? [arrive, cleared] : [load, unloaded];
      const missing = role.people * (until - from - role.each);
      return { sold: role, from, until, served: end - serve, missing };
    });
}

/** The hours of those who work at an event of the schedule, from when its truck is loaded there. */
export function hoursOf({ plan: { input }, clock, load }: ServedOn): RoleHours[] | undefined {
  return roleHours(input.soldCrew ?? [], { ...clock, load: load.begins });
}

/** The roles that are sold for less time than they are at work; where only service is quoted, for less than it lasts. */
export function soldShort(
  hours: readonly RoleHours[],
  { hoursQuoted }: Pick<Kitchen, 'hoursQuoted'> = {},
): RoleHours[] {
  return hours.filter(({ missing, served, sold }) =>
    hoursQuoted === 'service' ? sold.each < served : missing > 0,
  );
}
