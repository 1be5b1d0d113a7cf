import type { Day } from '../../engine/calendar/day.ts';

/** The way out for a day that cannot be right: the days that can be, or that there is none yet. */
export function giveDay(since: Day, today: Day): string {
  if (since > today) return `the first day possible is ${since}; record it then`;
  return since === today ? `give ${today}, the only day possible` : `give a day from ${since} to ${today}`;
}
