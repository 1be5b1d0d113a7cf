import type { CodeTemperature } from '../../safety/limit.ts';
import { chainOf, type PlacedTask } from '../../schedule/result.ts';
import type { StartReason, TimedStep } from './clock-step.ts';
import { coolOf, firstCoolOf } from './cooling-tasks.ts';
import type { Departure } from './departures.ts';
import type { Solved } from './solved.ts';

/** Something of a day that holds another in its place, or is held. */
export interface ChainLink {
  readonly what: ChainWhat;
  /** Minutes from midnight; from the beginning of the work where its hour is not known. */
  readonly begins: number;
  readonly ends: number;
}

export type ChainWhat =
  /** A step, with why it begins when it does. */
  | { readonly kind: 'step'; readonly step: TimedStep; readonly why: StartReason }
  /** Food that gets cold, or first to this temperature. */
  | { readonly kind: 'cooling'; readonly step: TimedStep; readonly to: CodeTemperature | undefined }
  | { readonly kind: 'pack' | 'load' | 'leave'; readonly event: string }
  | { readonly kind: 'serve'; readonly event: string; readonly course: string };

/** The chain from a task to what holds it in the end, in order of time. Ids are the schedule's, `steps` all that have a time. */
export function chainFrom(id: string, solution: Solved, steps: readonly TimedStep[]): ChainLink[] {
  const byId = new Map(steps.map((step) => [step.id, step]));
  return chainOf(solution.schedule, id)
    .flatMap((placed) => linkOf(placed, byId) ?? [])
    .sort((a, b) => a.begins - b.begins || a.ends - b.ends);
}

/** The chain that sets how long work for other days takes; empty where no step is on it. */
export function longestChain(solution: Solved, steps: readonly TimedStep[]): ChainLink[] {
  const [first] = solution.schedule.criticalPath;
  return first === undefined ? [] : chainFrom(first, solution, steps);
}

/** What is on a chain up to any departure, by the schedule’s ids. */
export function criticalIn({ schedule }: Solved, departures: readonly Departure[]): ReadonlySet<string> {
  return new Set(departures.flatMap(({ first }) => chainOf(schedule, first).map(({ id }) => id)));
}

function linkOf(
  { id: placed, begin: begins, end: ends }: PlacedTask,
  steps: ReadonlyMap<string, TimedStep>,
): ChainLink | undefined {
  const id = placed.replace(/^placed /, '');
  const step = steps.get(id);
  if (step) return { what: { kind: 'step', step, why: step.why }, begins, ends };
  const cooled = [...steps.values()].find((each) => [coolOf(each.id), firstCoolOf(each.id)].includes(id));
  if (cooled) {
    const to = id === coolOf(cooled.id) ? undefined : cooled.cools?.first?.temperature;
    return { what: { kind: 'cooling', step: cooled, to }, begins, ends };
  }
  const [kind = '', event = '', ...course] = id.split(' ');
  if (kind === 'pack' || kind === 'load' || kind === 'leave') return { what: { kind, event }, begins, ends };
  return kind === 'serve' ? { what: { kind, event, course: course.join(' ') }, begins, ends } : undefined;
}
