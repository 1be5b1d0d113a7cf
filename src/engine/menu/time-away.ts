import Fraction from 'fraction.js';
import { type Minutes, minutes, parseDuration } from '../measure/duration.ts';
import { parseHours } from '../measure/parse-hours.ts';
import type { TimeAway } from '../safety/time-without-control.ts';
import type { Proposal } from './proposal.ts';

/**
 * How long a menu's food is away from the kitchen: the proposal's travel and set-up, and the hours that the menu is
 * served, as written, though never longer than the proposal's crew works; those of the proposal where the menu says
 * none. What cannot be read counts as not stated.
 */
export function timeAway(
  proposal: Pick<Proposal, 'travel' | 'setUp' | 'hours'>,
  servedHours: string | null,
): TimeAway {
  const travel = proposal.travel === undefined ? undefined : parseDuration(proposal.travel);
  return {
    travel: travel?.ok ? travel.value : undefined,
    setUp: proposal.setUp,
    service: minutesOf(hoursServed(servedHours, proposal.hours) ?? proposal.hours),
  };
}

/**
 * The hours a menu is served, as its package writes them, or the `crew` hours of the proposal where they are fewer:
 * nobody serves after the crew has gone. Null where the package says none.
 */
export function hoursServed(menu: string | null, crew: string | null): string | null {
  const [served, worked] = [minutesOf(menu), minutesOf(crew)];
  if (served === undefined || worked === undefined || worked >= served) return menu;
  return `${crew} ${worked === 60 ? 'hour' : 'hours'}`;
}

function minutesOf(hours: string | null): Minutes | undefined {
  const read = hours === null ? undefined : parseHours(hours);
  return read?.ok ? minutes(Number(new Fraction(read.value).mul(60n).ceil().n)) : undefined;
}
