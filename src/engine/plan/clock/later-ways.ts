import type { ClockChange } from './clock-change.ts';
import type { StartReason, TimedStep } from './clock-step.ts';
import type { ChainLink } from './day-chain.ts';
import type { DayClock } from './day-clock.ts';

/** One more of what a step, or something it waits for, could not have at its minute. */
export type More =
  | { readonly kind: 'people' }
  | { readonly kind: 'skill'; readonly skill: string }
  | { readonly kind: 'station'; readonly station: string }
  | { readonly kind: 'equipment'; readonly equipment: string };

/** What was tried to let a step begin later, each by working the whole date out again. */
export interface LaterWay {
  readonly more: More;
  /** When it begins then, in minutes from midnight; undefined where that is no later. */
  readonly begins: number | undefined;
}

/**
 * What would let a step of the date's own events begin later: one more of each thing in use along its chain. Nothing for
 * work for other days, which is placed as early as the crew can and may begin later as it is.
 */
export function laterWays(clock: DayClock, step: TimedStep, chain: readonly ChainLink[]): LaterWay[] {
  const mores = new Map(
    chain.flatMap(({ what }) => {
      const more = what.kind === 'step' ? moreOf(what.why) : undefined;
      return more ? [[JSON.stringify(more), more] as const] : [];
    }),
  );
  return [...mores.values()].map((more) => {
    const begins = clock.beginsWith(changeOf(more)).get(step.id);
    return { more, begins: begins !== undefined && begins > step.begins ? begins : undefined };
  });
}

/** `until` is told for what is placed early alone. */
function moreOf(why: StartReason): More | undefined {
  if (why.kind !== 'in use' || why.from === undefined) return undefined;
  if (why.what === 'hands') return { kind: 'people' };
  if (why.what === 'skill') return { kind: 'skill', skill: why.name };
  return why.what === 'station'
    ? { kind: 'station', station: why.name }
    : { kind: 'equipment', equipment: why.name };
}

function changeOf(more: More): ClockChange {
  if (more.kind === 'people') return { people: 1 };
  if (more.kind === 'skill') return { people: 1, skill: more.skill };
  return more.kind === 'station' ? { station: more.station } : { equipment: more.equipment };
}
