import type { EventPlan } from '../event-plan.ts';
import type { TimedStep } from './clock-step.ts';
import type { ServedOn } from './day-clock.ts';
import type { ThrowAway } from './throw-away.ts';

export const TIMELINE_PARTS = [
  'cook',
  'pack',
  'load',
  'leave',
  'arrive',
  'set up',
  'finish',
  'serve',
  'course',
  'clear',
  'done',
  'back',
  'unload',
  'discard',
] as const;

export type TimelinePart = (typeof TIMELINE_PARTS)[number];

/** A part of the event's day. */
export interface TimelineEntry {
  readonly part: TimelinePart;
  /** Minutes from the midnight with which the event's day begins; below 0 on the day before. */
  readonly begins: number;
  /** As `begins`; the same for a moment such as leaving. */
  readonly ends: number;
  readonly why: TimelineWhy;
}

/** Why a part has its hours. */
export type TimelineWhy =
  | { readonly kind: 'takes' | 'before serving' | 'on the road'; readonly minutes: number }
  | { readonly kind: 'usual set-up'; readonly minutes: number }
  | { readonly kind: 'cook'; readonly dish: string }
  | { readonly kind: 'finish'; readonly handsOn: number; readonly people: number }
  | { readonly kind: 'course'; readonly course: string }
  | { readonly kind: 'discard'; readonly dish: string; readonly at: number; readonly within: number }
  | { readonly kind: 'travel not stated' | 'service not stated' | 'packed up' | 'way back' };

/**
 * An event's day from the first task until the truck is unloaded, by the schedule's own minutes: cooked and packed as its
 * tasks are placed, loaded and driven back from serving, then served course by course, cleared, home and unloaded;
 * food that stands neither hot nor cold is thrown away at its time.
 */
export function eventTimeline(
  plan: EventPlan,
  served: ServedOn,
  steps: readonly TimedStep[],
  foods: readonly ThrowAway[],
): TimelineEntry[] {
  const entries = partsOf(plan, served, steps);
  for (const { dish, left, by } of foods) {
    if (dish === undefined) continue;
    const why = { kind: 'discard' as const, dish, at: left, within: by - left };
    const after = entries.findIndex(({ begins }) => begins > by);
    entries.splice(after < 0 ? entries.length : after, 0, { part: 'discard', begins: by, ends: by, why });
  }
  return entries;
}

function partsOf(
  { input }: EventPlan,
  { clock, pack, load, place }: ServedOn,
  steps: readonly TimedStep[],
): TimelineEntry[] {
  const entries: TimelineEntry[] = [];
  const add = (part: TimelinePart, begins: number, ends: number, why: TimelineWhy) =>
    entries.push({ part, begins, ends, why });
  const { away } = input;
  const kitchen = steps.filter(({ where }) => where === 'kitchen');
  const first = [...kitchen].sort((a, b) => a.begins - b.begins)[0];
  if (first)
    add('cook', first.begins, Math.max(...kitchen.map(({ ends }) => ends)), {
      kind: 'cook',
      dish: first.batch.recipe.name,
    });
  add('pack', pack.begins, pack.ends, { kind: 'takes', minutes: pack.ends - pack.begins });
  add('load', load.begins, load.ends, { kind: 'takes', minutes: load.ends - load.begins });
  const travel = away?.travel;
  add(
    'leave',
    clock.leave,
    clock.leave,
    travel === undefined ? { kind: 'travel not stated' } : { kind: 'on the road', minutes: travel },
  );
  const setUp = clock.serve - clock.arrive;
  add('arrive', clock.arrive, clock.arrive, { kind: 'before serving', minutes: setUp });
  add('set up', clock.arrive, clock.serve, {
    kind: away?.setUp === undefined ? 'usual set-up' : 'takes',
    minutes: setUp,
  });
  if (place.steps.length > 0) {
    const begins = Math.min(...place.steps.map((step) => step.begins));
    const ends = Math.max(...place.steps.map((step) => step.ends));
    const handsOn = place.steps.reduce((sum, step) => sum + step.handsOn, 0);
    const people = Math.max(1, mostAtOnce(place.steps));
    add('finish', begins, ends, { kind: 'finish', handsOn, people });
  }
  if (clock.end === undefined) {
    add('serve', clock.serve, clock.serve, { kind: 'service not stated' });
    return entries;
  }
  add('serve', clock.serve, clock.end, { kind: 'takes', minutes: clock.end - clock.serve });
  if (input.style === 'plated')
    for (const [course, { from, until }] of clock.courses)
      if (from >= clock.serve) add('course', from, Math.min(until, clock.end), { kind: 'course', course });
  if (clock.cleared === undefined || clock.back === undefined) return entries;
  add('clear', clock.end, clock.cleared, { kind: 'takes', minutes: clock.cleared - clock.end });
  add('done', clock.cleared, clock.cleared, { kind: 'packed up' });
  if (travel !== undefined && travel > 0) add('back', clock.back, clock.back, { kind: 'way back' });
  if (clock.unloaded !== undefined && clock.unloaded > clock.back)
    add('unload', clock.back, clock.unloaded, { kind: 'takes', minutes: clock.unloaded - clock.back });
  return entries;
}

/** How many pairs of hands are at work at once, at the busiest minute. */
function mostAtOnce(steps: readonly TimedStep[]): number {
  return Math.max(
    0,
    ...steps.map(({ begins }) =>
      steps
        .filter((step) => step.begins <= begins && step.handsOff > begins)
        .reduce((sum, step) => sum + step.hands, 0),
    ),
  );
}
