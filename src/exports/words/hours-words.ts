import { durationText, minutes } from '../../engine/measure/duration.ts';
import type { RoleHours } from '../../engine/plan/clock/presence.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';

/**
 * Roles that are sold for less time than they are at work, each with its hours, and what all of it comes to; in pay too
 * where `cost` says it.
 */
export function soldShortText(roles: readonly RoleHours[], say: Say, cost: string | null = null): string {
  const alike = Map.groupBy(roles, ({ sold, from, until }) => `${sold.each} ${from} ${until}`);
  const told = [...alike.values()].map(([first, ...others]) => {
    if (!first) return '';
    const { from, until, sold } = first;
    return say('clock.sold-role', {
      roles: [first, ...others]
        .map((each) => say('clock.sold-people', { name: each.sold.name, n: String(each.sold.people) }))
        .join(', '),
      sold: durationText(sold.each),
      needed: durationText(minutes(until - from)),
      from: clockOf(from),
      until: clockOf(until),
      short: durationText(minutes(until - from - sold.each)),
    });
  });
  const missing = workText(roles.reduce((sum, role) => sum + role.missing, 0));
  const spoken = { roles: told.join('; '), missing };
  return cost === null ? say('clock.sold-short', spoken) : say('clock.sold-short-cost', { ...spoken, cost });
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
