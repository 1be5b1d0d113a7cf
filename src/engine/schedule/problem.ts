/**
 * A span of time in whole minutes from any zero the caller likes: `from` counts, `until` does not. Minutes may be
 * negative, and stay below 2²⁸ in size: minutes since 1970 fit.
 */
export interface Span {
  readonly from: number;
  readonly until: number;
}

/** What a task needs of a resource, all the time or for an interval of the task. */
export interface Need {
  readonly resource: string;
  /** Whole pieces, hands, pounds: the same unit as the resource’s capacity. */
  readonly amount: number;
  /** Minutes from the task’s begin; both are left out where the whole task needs it. */
  readonly from?: number;
  readonly until?: number;
}

/** What is done in one go, without a break. */
export interface Task {
  readonly id: string;
  /** Whole minutes, from 0. */
  readonly minutes: number;
  readonly needs: readonly Need[];
  /** The whole task lies in one of them; left out, it may lie anywhere in the horizon. */
  readonly windows?: readonly Span[];
  /**
   * What a minute of waiting costs, a whole number from 0 (the default). A task waits for as long as it is placed away
   * from where lags, windows and fixed tasks alone would let it be: earlier than needed where all is placed late.
   */
  readonly weight?: number;
  /** The minute at which it begins; it is placed before all others, which work around it. */
  readonly fixed?: number;
}

/**
 * How long after `from` the task `to` may begin: from its begin or from its end, at least and at most, in minutes. What
 * is left out does not bind; both may be negative.
 */
export interface Lag {
  readonly from: string;
  readonly to: string;
  readonly kind: 'begin-begin' | 'end-begin';
  readonly least?: number;
  readonly most?: number;
  /** What the lag is there for, handed back with it. */
  readonly why?: string;
}

/** What tasks share: capacity by the minute, none outside of what is given; where spans overlap their amounts add. */
export interface Resource {
  readonly id: string;
  readonly capacity: readonly (Span & { readonly amount: number })[];
}

/**
 * Tasks to be placed on shared resources, with least and most lags between them. `early` places each task as early as
 * it may be, from the horizon’s beginning on; `late` as late as it may be, back from fixed tasks or the horizon’s end.
 */
export interface ScheduleProblem {
  readonly direction: 'early' | 'late';
  /** Everything lies in it. */
  readonly horizon: Span;
  readonly tasks: readonly Task[];
  readonly lags: readonly Lag[];
  readonly resources: readonly Resource[];
}

/** When tasks begin, by id. */
export type Begins = ReadonlyMap<string, number>;

/**
 * The same problem with time running backward: what ended at a minute now begins at its negative. Tasks, lags and
 * resources keep their places in the lists. Mirrored twice, it is the problem again.
 */
export function mirrored(problem: ScheduleProblem): ScheduleProblem {
  return {
    direction: problem.direction === 'late' ? 'early' : 'late',
    horizon: mirroredSpan(problem.horizon),
    tasks: problem.tasks.map((task) => ({
      ...task,
      needs: task.needs.map((need) => ({
        ...need,
        from: task.minutes - (need.until ?? task.minutes),
        until: task.minutes - (need.from ?? 0),
      })),
      windows: task.windows?.map(mirroredSpan),
      fixed: task.fixed === undefined ? undefined : -task.fixed - task.minutes,
    })),
    lags: mirroredLags(problem),
    resources: problem.resources.map(({ id, capacity }) => ({
      id,
      capacity: capacity.map((span) => ({ ...mirroredSpan(span), amount: span.amount })),
    })),
  };
}

/** A lag from an end stays one, turned around; one from a begin was to an end in mirrored time. */
function mirroredLags({ tasks, lags }: ScheduleProblem): Lag[] {
  const minutes = new Map(tasks.map((task) => [task.id, task.minutes]));
  return lags.map((lag) => {
    const longer = lag.kind === 'end-begin' ? 0 : (minutes.get(lag.to) ?? 0) - (minutes.get(lag.from) ?? 0);
    return {
      ...lag,
      from: lag.to,
      to: lag.from,
      least: lag.least === undefined ? undefined : lag.least + longer,
      most: lag.most === undefined ? undefined : lag.most + longer,
    };
  });
}

/** A span with time running backward. */
export function mirroredSpan({ from, until }: Span): Span {
  return { from: -until, until: -from };
}
