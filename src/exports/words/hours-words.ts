import { durationText, minutes } from '../../engine/measure/duration.ts';
import type { RoleHours } from '../../engine/plan/clock/presence.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';

/** Roles that are sold for less time than they are at work, each with its hours, and what all of it comes to. */
export function soldShortText(roles: readonly RoleHours[], say: Say): string {
  const told = roles.map(({ sold: { name, people, each }, from, until }) =>
    say('clock.sold-role', {
      name,
      n: people,
      sold: durationText(each),
      needed: durationText(minutes(until - from)),
      from: clockOf(from),
      until: clockOf(until),
      short: durationText(minutes(until - from - each)),
    }),
  );
  const missing = workText(roles.reduce((sum, role) => sum + role.missing, 0));
  return say('clock.sold-short', { roles: told.join('; '), missing });
}

/** Work of several people is told in hours however long it is: `59 h`, `39 h 10 min`, `−2 h`. */
export function workText(work: number): string {
  const [all, rest] = [Math.abs(work), Math.abs(work) % 60];
  const hours = Math.floor(all / 60);
  const text = [
    ...(hours > 0 || rest === 0 ? [`${hours} h`] : []),
    ...(rest > 0 ? [`${rest} min`] : []),
  ].join(' ');
  return work < 0 ? `−${text}` : text;
}
