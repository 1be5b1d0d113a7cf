import type { LowerBounds } from './lower-bounds.ts';
import type { Lag, Span } from './problem.ts';
import type { Figures } from './score.ts';

/**
 * What keeps a task from being placed further the way it is placed: from beginning later where all is placed late,
 * from beginning earlier where all is placed early.
 */
export type Reason =
  /** It begins at this minute whatever else. */
  | { readonly kind: 'fixed' }
  /**
   * Lags tie it to another task: as a rule one; several, in order, where they lead over tasks that could not be placed.
   */
  | {
      readonly kind: 'lag';
      readonly task: string;
      readonly lags: readonly Lag[];
      /** Which side of the lag at the task binds. */
      readonly side: 'least' | 'most';
    }
  /**
   * At the minute beside what it has now a resource has too little left. `holders` have some of it then; `task` is the
   * one of them that lets go, null where it is the capacity itself that changes.
   */
  | {
      readonly kind: 'resource';
      readonly resource: string;
      readonly minute: number;
      readonly holders: readonly string[];
      readonly task: string | null;
    }
  /** It would leave the window it is in. */
  | { readonly kind: 'window'; readonly window: Span }
  /** It would leave the horizon. */
  | { readonly kind: 'horizon' };

/** A task with its place and what binds it there. */
export interface PlacedTask {
  readonly id: string;
  readonly begin: number;
  readonly end: number;
  readonly reason: Reason;
}

/** Why a task is not placed. */
export type LeftOutReason =
  /** These lags contradict each other whatever the resources. */
  | { readonly kind: 'circle'; readonly lags: readonly Lag[] }
  /** Lags to and from placed or fixed tasks leave no minute between them. */
  | { readonly kind: 'lags'; readonly lags: readonly Lag[]; readonly tasks: readonly string[] }
  /** None of its windows, within the horizon, is long enough or has a minute that the lags leave it. */
  | { readonly kind: 'window'; readonly lags: readonly Lag[]; readonly tasks: readonly string[] }
  /**
   * A resource has too little wherever the task could be; shown for the first such place: `holders` have some of it at
   * that minute, none where the capacity alone is too small.
   */
  | {
      readonly kind: 'resource';
      readonly resource: string;
      readonly minute: number;
      readonly needed: number;
      readonly free: number;
      readonly holders: readonly string[];
    }
  /** Lags tie it to the minute to a task that cannot be placed. */
  | { readonly kind: 'tied'; readonly task: string };

export interface LeftOutTask {
  readonly id: string;
  readonly reason: LeftOutReason;
}

/** An answer to a problem: what is placed holds every lag, window and capacity. */
export interface Schedule extends Figures {
  /** In order of begin, then id. */
  readonly placed: readonly PlacedTask[];
  /** By id. */
  readonly leftOut: readonly LeftOutTask[];
  /** Circles of lags that contradict each other; see `impossibleLags`. */
  readonly circles: readonly (readonly Lag[])[];
  /** The tasks that bind each other from the farthest one back to what nothing else binds: it sets the makespan. */
  readonly criticalPath: readonly string[];
  /** What no schedule with the same tasks placed can go below. */
  readonly bounds: LowerBounds;
  /** Whether the bounds prove that by its goals there is no better schedule. */
  readonly proven: boolean;
  /** How many schedules were made to find it. */
  readonly schedules: number;
}

/**
 * The tasks from one back to what binds it in the end: each holds the one before it in place, by a lag or by having what
 * it needs. The last one is bound by nothing but a fixed minute, a window, capacity or the
 * horizon, or closes a ring of tasks that hold each other.
 */
export function chainOf(schedule: Pick<Schedule, 'placed'>, id: string): PlacedTask[] {
  const byId = new Map(schedule.placed.map((task) => [task.id, task]));
  const chain: PlacedTask[] = [];
  for (let at = byId.get(id); at && !chain.includes(at); ) {
    chain.push(at);
    const { reason } = at;
    const next = reason.kind === 'lag' || reason.kind === 'resource' ? reason.task : null;
    at = next === null ? undefined : byId.get(next);
  }
  return chain;
}
