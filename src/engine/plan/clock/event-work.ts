import type { Day } from '../../calendar/day.ts';
import { isAtPlace } from '../../food/recipe.ts';
import type { EventPlan, PlannedDay, PlannedTask } from '../event-plan.ts';
import type { ClockFinding } from './clock-finding.ts';
import type { TimedStep } from './clock-step.ts';
import type { DayClock, ServedOn } from './day-clock.ts';
import { eventTimeline, type TimelineEntry } from './event-timeline.ts';
import type { HeldFood } from './holding.ts';
import { hoursOf, type RoleHours } from './presence.ts';
import { placeRota, type Rota } from './rota.ts';
import { type ThrowAway, throwAways } from './throw-away.ts';
import { type Waiting, waitingOf } from './waiting.ts';

/** The clock of any date with work, one schedule for all events. */
export interface Schedule {
  on(date: Day): {
    readonly clock: DayClock;
    /** Who does what in the kitchen. */
    readonly rota: Rota;
    readonly findings: readonly ClockFinding[];
  };
}

/** A task of an event with its hours; a step that is done together with another event's has the hours of both. */
export interface TimedTask {
  readonly task: PlannedTask;
  readonly time: TimedStep;
}

/** A planned day on its date's clock. */
export interface WorkedDay {
  readonly day: PlannedDay;
  readonly kitchen: readonly TimedTask[];
  readonly place: readonly TimedTask[];
  /** Who does what in the kitchen, over all events; at the place, for this one. */
  readonly rota: { readonly kitchen: Rota; readonly place: Rota };
  /** The event's own packing and loading; undefined on days before. */
  readonly van: Pick<ServedOn, 'pack' | 'load'> | undefined;
  /** What of the event waits hot or cold in the kitchen's equipment. */
  readonly held: readonly HeldFood[];
}

/** An event's part of the one schedule. */
export interface EventWork {
  readonly days: readonly WorkedDay[];
  readonly timeline: readonly TimelineEntry[];
  readonly findings: readonly ClockFinding[];
  /** How its dishes wait for their guests. */
  readonly waiting: readonly Waiting[];
  /** What of its food stands neither hot nor cold, and until when. */
  readonly throwAways: readonly ThrowAway[];
}

/** What the schedule has of one event: its tasks day by day, its own day from the first task until the truck is unloaded. */
export function eventWork(plan: EventPlan, schedule: Schedule): EventWork {
  const { id, date } = plan.input;
  const days = plan.days.map((day): WorkedDay => {
    const { clock, rota } = schedule.on(day.date);
    const own = clock.served.find((each) => each.plan.input.id === id);
    const place = own?.place.steps ?? [];
    const timed = (tasks: readonly PlannedTask[], steps: readonly TimedStep[]) =>
      tasks.flatMap((task) =>
        steps.filter((step) => isStepOf(step, task, id)).map((time): TimedTask => ({ task, time })),
      );
    const isThere = ({ step }: PlannedTask) => isAtPlace(step);
    return {
      day,
      kitchen: timed(
        day.tasks.filter((task) => !isThere(task)),
        clock.steps,
      ),
      place: timed(day.tasks.filter(isThere), place),
      rota: { kitchen: rota, place: placeRota(own?.place ?? { steps: [], cooks: undefined }) },
      van: own,
      held: clock.held.filter(({ event }) => event === id),
    };
  });
  const own = schedule.on(date);
  const served = own.clock.served.find((each) => each.plan.input.id === id);
  const steps = days
    .filter(({ day }) => day.date === date)
    .flatMap(({ kitchen, place }) => [...kitchen, ...place]);
  const foods = served ? throwAways(plan, own.clock.steps, served) : [];
  const concerns = (finding: ClockFinding) => ('event' in finding ? finding.event === id : true);
  const dates = [...new Set([...plan.days.map((day) => day.date), date])];
  return {
    days,
    timeline: served
      ? eventTimeline(
          plan,
          served,
          steps.map(({ time }) => time),
          foods,
        )
      : [],
    findings: dates.flatMap((each) => schedule.on(each).findings.filter(concerns)),
    waiting: served
      ? waitingOf(
          plan,
          steps.map(({ time }) => time),
          served.clock,
        )
      : [],
    throwAways: foods,
  };
}

/** When each role works at an event, by the one schedule; undefined where it is not stated how long is served. */
export function eventHours({ input }: EventPlan, schedule: Schedule): RoleHours[] | undefined {
  const served = servedOf(input, schedule);
  return served && hoursOf(served);
}

/** An event on the clock of its own date; undefined where the schedule does not have it. */
export function servedOf({ id, date }: EventPlan['input'], schedule: Schedule): ServedOn | undefined {
  return schedule.on(date).clock.served.find(({ plan }) => plan.input.id === id);
}

function isStepOf({ batch, number }: TimedStep, task: PlannedTask, event: string): boolean {
  return (
    number === task.number &&
    batch.recipe === task.recipe &&
    batch.events.some(({ plan }) => plan.input.id === event)
  );
}
