import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import type { Crew } from '../../menu/crew.ts';
import type { EventInput } from '../event-input.ts';

/** A stretch of a date in which so many people cook, in minutes from midnight. */
export interface CrewSpan {
  readonly from: number;
  readonly until: number;
  readonly people: number;
  /** How many of them have a skill, by its name; none where it is not named. */
  readonly skills?: ReadonlyMap<string, number>;
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

function spanOf({ people, from, each, skills }: Crew, ends: boolean): CrewSpan {
  const begins = from === undefined ? 0 : minutesOfClock(from);
  return { people, from: begins, until: ends ? begins + each : DAY_END, ...(skills && { skills }) };
}

/** The most of them at each minute, in stretches one after the other. */
function largest(spans: readonly CrewSpan[]): CrewSpan[] {
  const times = [...new Set(spans.flatMap(({ from, until }) => [from, until]))].sort((a, b) => a - b);
  return times.flatMap((from, index) => {
    const until = times[index + 1];
    const there = spans.filter((span) => span.from <= from && span.until > from);
    const people = Math.max(0, ...there.map((span) => span.people));
    if (until === undefined || people === 0) return [];
    const names = new Set(there.flatMap(({ skills }) => [...(skills?.keys() ?? [])]));
    const skills = new Map(
      [...names].map((skill) => [skill, Math.max(...there.map((span) => withSkill(span, skill)))]),
    );
    return [{ from, until, people, ...(skills.size > 0 && { skills }) }];
  });
}

/** Who is there at a minute; before the first hour and after the last, those of that hour. */
export function spanAt(crew: readonly CrewSpan[], minute: number): CrewSpan | undefined {
  const [first, last] = [crew[0], crew.at(-1)];
  if (first && minute < first.from) return first;
  if (last && minute >= last.until) return last;
  return crew.find(({ from, until }) => from <= minute && minute < until);
}

/** Whether none of those who cook on a date has a skill. */
export function nobodyHas(skill: string, crew: readonly CrewSpan[]): boolean {
  return crew.every((span) => withSkill(span, skill) === 0);
}

/** How many of those who are there have a skill. */
export function withSkill({ skills }: Pick<CrewSpan, 'skills'>, skill: string): number {
  return skills?.get(skill) ?? 0;
}
