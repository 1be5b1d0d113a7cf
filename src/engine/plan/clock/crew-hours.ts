import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import type { Crew } from '../../menu/crew.ts';
import type { EventInput } from '../event-input.ts';

/** A stretch of a date in which so many people cook, in minutes from midnight. */
export interface CrewSpan {
  readonly from: number;
  readonly until: number;
  readonly people: number;
}

/** Far enough after midnight that no day's work reaches it. */
export const DAY_END = 2880;

/**
 * Who cooks on a date, minute by minute. An event served on it may state cooks of its own, who come and go when it says;
 * else the kitchen's crew comes at its hour and stays until the last truck is loaded, since how long that is shows only in
 * the plan. Where several are there at once the larger crew counts, never their sum: they may be the same people. Empty
 * where no crew is stated.
 */
export function crewHours(
  crew: Crew | undefined,
  served: readonly Pick<EventInput, 'cooks'>[],
  prep: boolean,
): CrewSpan[] {
  const stated = served.flatMap(({ cooks }) => (cooks ? [spanOf(cooks, true)] : []));
  const usual = crew && (prep || served.some(({ cooks }) => !cooks)) ? [spanOf(crew, false)] : [];
  return largest([...stated, ...usual]);
}

function spanOf({ people, from, each }: Crew, ends: boolean): CrewSpan {
  const begins = from === undefined ? 0 : minutesOfClock(from);
  return { people, from: begins, until: ends ? begins + each : DAY_END };
}

/** The most of them at each minute, in stretches one after the other. */
function largest(spans: readonly CrewSpan[]): CrewSpan[] {
  const times = [...new Set(spans.flatMap(({ from, until }) => [from, until]))].sort((a, b) => a - b);
  return times.flatMap((from, index) => {
    const until = times[index + 1];
    const people = Math.max(
      0,
      ...spans.filter((span) => span.from <= from && span.until > from).map((span) => span.people),
    );
    return until === undefined || people === 0 ? [] : [{ from, until, people }];
  });
}
