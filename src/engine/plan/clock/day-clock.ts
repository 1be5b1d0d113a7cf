import type { Day } from '../../calendar/day.ts';
import type { ScheduleProblem } from '../../schedule/problem.ts';
import { dayBatches } from '../days/day-batches.ts';
import type { EventPlan } from '../event-plan.ts';
import { chilledUsually, mostChilled, type Unchilled, unchilledOf } from './chilling.ts';
import type { ClockStep, TimedStep } from './clock-step.ts';
import { type CrewSpan, crewHours } from './crew-hours.ts';
import { type ChainLink, chainFrom, criticalIn, longestChain } from './day-chain.ts';
import { type DayChanges, dayChanges } from './day-changes.ts';
import { loadOfEvent, packOf, STRICT, type Strictness, servingProblem } from './day-problem.ts';
import { departuresOf } from './departures.ts';
import { eventClock } from './event-clock.ts';
import { type Held, type HeldFood, heldAt, heldOf } from './holding.ts';
import { withRoom } from './holding-search.ts';
import { type ClockKitchen, kitchenSteps } from './kitchen-steps.ts';
import { type PlaceClock, placeClock } from './place-clock.ts';
import { placedOf, solvedForward } from './prep-clock.ts';
import { dayProblem, type Solved } from './solved.ts';
import type { ServedEvent } from './stands.ts';
import { timedSteps } from './timed-steps.ts';
import { sharedTrips } from './vehicles.ts';

/** A stretch of a date's clock, in minutes from its midnight. */
export interface Stretch {
  readonly begins: number;
  readonly ends: number;
}

/** Packing or loading for an event. */
export interface VanWork extends Stretch {
  /** Whether it is on the day's longest chain. */
  readonly critical: boolean;
}

/** An event on the clock of the date on which it is served. */
export interface ServedOn extends ServedEvent {
  readonly pack: VanWork;
  readonly load: VanWork;
  readonly place: PlaceClock;
}

/** A date's work over all its events: one schedule, which every page and paper shows. */
export interface DayClock extends DayChanges {
  readonly date: Day;
  /** In the kitchen, in the order of the batches. */
  readonly steps: readonly TimedStep[];
  readonly served: readonly ServedOn[];
  readonly crew: readonly CrewSpan[];
  /** What had to be let go of so that all of it has a time. */
  readonly kept: Strictness;
  /**
   * The longest chain up to each truck of that day, in the order they leave, and that of the work for other days: a minute
   * lost on it is lost for all that follow. Left out where there is no such work.
   */
  readonly chains: readonly DayChain[];
  /** What holds a step where it is, and that in turn, in order of time; empty for an id that has no time. */
  readonly chainOf: (id: string) => readonly ChainLink[];
  /** What cools as in a kitchen without equipment that chills, though there is some that holds it. */
  readonly unchilled: readonly Unchilled[];
  /** What waits hot or cold in equipment that keeps it so. */
  readonly held: readonly HeldFood[];
}

export interface DayChain {
  readonly of: 'served' | 'prep';
  /** The event whose truck is at its end; undefined for other days, and where none is. */
  readonly event: string | undefined;
  readonly links: readonly ChainLink[];
}

/** What is let go of, one after the other, until everything has a time. */
const LADDER: readonly Strictness[] = [
  STRICT,
  { ...STRICT, quality: false },
  { ...STRICT, vehicles: false },
  { ...STRICT, vehicles: false, quality: false },
  { ...STRICT, vehicles: false, hours: false },
  { ...STRICT, vehicles: false, hours: false, quality: false },
  { quality: false, vehicles: false, hours: false, resources: false },
];

/**
 * One clock for a date over all its events. What is served that day is worked back from the hour its truck leaves, as
 * late as standing, cooling, hands, benches and ovens allow; work for other days fills the crew's hours from their
 * beginning. `plans` are all plans with work on the date, whenever they are served.
 */
export function dayClock(plans: readonly EventPlan[], date: Day, kitchen: ClockKitchen): DayClock {
  const batches = dayBatches(plans, date);
  const served = plans
    .filter(({ input }) => input.date === date)
    .map((plan): ServedEvent => ({ plan, clock: eventClock(plan.input, kitchen.day) }));
  const own = batches.filter(({ events }) => events.some(({ plan }) => plan.input.date === date));
  const others = batches.filter((batch) => !own.includes(batch));
  const crew = crewHours(
    kitchen.crew,
    served.map(({ plan }) => plan.input),
    others.length > 0,
  );
  const people = crew.length === 0 ? undefined : Math.min(...crew.map((span) => span.people));
  const steps = kitchenSteps(batches, date, kitchen, people);
  const ownSteps = steps.filter(({ batch }) => own.includes(batch));
  const prepSteps = steps.filter(({ batch }) => others.includes(batch));
  const late = solvedBackward(ownSteps, served, date, kitchen, crew);
  // Where it is not stated when the crew begins, work for other days has hours of its own, counted from its beginning.
  const clock = kitchen.crew?.from !== undefined || crew.some((span) => span.from > 0);
  const placed = clock ? placedOf(late.problem, late.solution) : [];
  const prep = { steps: prepSteps, placed, hours: late.kept.hours };
  const early = solvedForward(prep, kitchen, crew);
  const leaves = new Map(served.map((event) => [event.plan.input.id, event.clock.leave]));
  const departures = departuresOf(late.solution.schedule).sort(
    (a, b) => leaveAt(leaves, a.event) - leaveAt(leaves, b.event),
  );
  const critical = criticalIn(late.solution, departures);
  const onPath = new Set(early.solution.schedule.criticalPath);
  const all = [...late.steps, ...early.steps];
  const timed = [
    ...timedSteps(late.steps, late.solution, 'late', all, critical),
    ...timedSteps(early.steps, early.solution, 'early', all, onPath, clock),
  ];
  const ownIds = new Set(ownSteps.map(({ id }) => id));
  return {
    date,
    steps: timed,
    chains: [
      ...departures.map(({ event, first }) => ({
        of: 'served' as const,
        event,
        links: chainFrom(first, late.solution, timed),
      })),
      { of: 'prep' as const, event: undefined, links: longestChain(early.solution, timed) },
    ].filter(({ of, links }) =>
      links.some(({ what }) => what.kind === 'step' && ownIds.has(what.step.id) === (of === 'served')),
    ),
    chainOf: (id) => chainFrom(id, ownIds.has(id) ? late.solution : early.solution, timed),
    served: served.map((event) => {
      const at = (id: string): VanWork => {
        const { begins, ends } = late.solution.at(id) ?? { begins: event.clock.load, ends: event.clock.load };
        return { begins, ends, critical: critical.has(id) };
      };
      const { id } = event.plan.input;
      return {
        ...event,
        pack: at(packOf(id)),
        load: at(loadOfEvent(id)),
        place: placeClock(event, batches, kitchen),
      };
    }),
    crew,
    kept: late.kept,
    unchilled: unchilledOf(steps, all),
    held: heldAt(late.held, late.solution.at),
    ...dayChanges({ date, batches, served, kitchen, crew, people, ownSteps, late, prep }),
  };
}

function leaveAt(leaves: ReadonlyMap<string, number>, event: string | undefined): number {
  return event === undefined ? Number.NEGATIVE_INFINITY : (leaves.get(event) ?? 0);
}

function solvedBackward(
  steps: readonly ClockStep[],
  served: readonly ServedEvent[],
  date: Day,
  kitchen: ClockKitchen,
  crew: readonly CrewSpan[],
): {
  readonly steps: readonly ClockStep[];
  readonly kept: Strictness;
  readonly problem: ScheduleProblem;
  readonly solution: Solved;
  readonly held: readonly Held[];
} {
  // Without trips that share vehicles there are none to let go of.
  const shares = sharedTrips(served, kitchen).length > 0;
  const rungs = LADDER.filter(({ vehicles, hours }) => shares || vehicles || !hours);
  for (const kept of rungs) {
    const solving = (some: readonly ClockStep[]) => {
      const problem = servingProblem(some, served, date, kitchen, crew, kept);
      return { steps: some, kept, problem, day: dayProblem(problem) };
    };
    const found = kept.resources
      ? mostChilled(steps, solving, ({ day }) => day.fits())
      : solving(chilledUsually(steps));
    if (!found) continue;
    const held = heldOf(found.steps, served, date, kitchen);
    const solved = { ...found, solution: found.day.solved('final'), held };
    // Where quality had to be let go of, what waits would only stand longer.
    return kept.quality ? withRoom(solved, found.steps, held) : solved;
  }
  throw new Error('the last rung holds everything');
}
