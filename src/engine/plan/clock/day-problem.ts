import type { Day } from '../../calendar/day.ts';
import { isAtPlace, type Recipe } from '../../food/recipe.ts';
import { usualStands } from '../../food/usual-stands.ts';
import { travelsAs } from '../../safety/travels-as.ts';
import type { Lag, ScheduleProblem, Task } from '../../schedule/problem.ts';
import { inUseFrom } from '../days/loads.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockStep } from './clock-step.ts';
import { coolingTasks, coolOf } from './cooling-tasks.ts';
import type { CrewSpan } from './crew-hours.ts';
import { DAY_END, nobodyHas } from './crew-hours.ts';
import {
  DOOR,
  dayResources,
  gearOf,
  HANDS,
  skillOf,
  stationOf,
  VEHICLES,
  vehicleOf,
} from './day-resources.ts';
import type { EventClock } from './event-clock.ts';
import type { ClockKitchen } from './kitchen-steps.ts';

import { leaving } from './leaves.ts';
import { sharedTrips } from './vehicles.ts';

/** The day before counts too: what does not fit is put there, and told. */
const HORIZON = { from: -1440, until: DAY_END };
/** What is packed cold or at room temperature is there so long before loading: common practice, no source. */
const LAST_IN = 15;
/** The longest that a loaded truck waits to leave: common practice, no source. */
const LOADED_WAITS = 60;
/** What a minute of waiting costs by how food waits: hot food is the worse for it. */
const COSTS = { hot: 3, room: 2, cold: 1, frozen: 1 } as const;

/** An event that is served on the date. */
export interface ServedEvent {
  readonly plan: EventPlan;
  readonly clock: EventClock;
}

/** How far a day is held to what it should keep. What cannot be kept is let go of in this order. */
export interface Strictness {
  /** Food waits no longer than its recipe allows. */
  readonly quality: boolean;
  /** A truck is not loaded before it is back from another event. */
  readonly vehicles: boolean;
  /** Nobody works before the crew comes. */
  readonly hours: boolean;
  /** No more hands, benches, ovens than there are. */
  readonly resources: boolean;
}

/** Held to all of it. */
export const STRICT: Strictness = { quality: true, vehicles: true, hours: true, resources: true };

export const packOf = (event: string) => `pack ${event}`;
export const loadOfEvent = (event: string) => `load ${event}`;
const outOf = (event: string) => `out ${event}`;
const leaveOf = (event: string) => `leave ${event}`;
export const serveOf = (event: string, course: string) => `serve ${event} ${course}`;

/**
 * What a date's events wait for, as late as may be: their steps in the kitchen, packing and loading, back from the hour
 * each truck leaves. Cold food and what stands at room temperature is there a quarter of an hour before packing ends, hot
 * food when loading begins and the carriers are closed: common practice, no source.
 */
export function servingProblem(
  steps: readonly ClockStep[],
  served: readonly ServedEvent[],
  date: Day,
  kitchen: ClockKitchen,
  crew: readonly CrewSpan[],
  strict: Strictness,
): ScheduleProblem {
  const tasks: Task[] = steps.map((step) => taskOf(step, crew, strict.hours));
  const byId = new Map(steps.map((step) => [step.id, step]));
  const lags: Lag[] = steps.flatMap((step) => lagsOf(step, byId, strict.quality));
  const out = strict.vehicles ? sharedTrips(served, kitchen) : [];
  for (const { plan, clock } of served) {
    const { id } = plan.input;
    const { pack, load } = kitchen.day;
    const trip = out.find(({ event }) => event === id);
    const vehicle = trip
      ? [VEHICLES, ...(trip.kind === undefined ? [] : [vehicleOf(trip.kind)])].map((resource) => ({
          resource,
          amount: 1,
        }))
      : [];
    if (trip)
      tasks.push({ id: outOf(id), minutes: trip.until - clock.leave, needs: vehicle, fixed: clock.leave });
    tasks.push(
      { id: packOf(id), minutes: pack, needs: handsNeed(1, pack), weight: COSTS.hot },
      {
        id: loadOfEvent(id),
        minutes: load,
        needs: [...handsNeed(1, load), { resource: DOOR, amount: 1 }, ...vehicle],
      },
      { id: leaveOf(id), minutes: 0, needs: [], fixed: clock.leave },
      ...[...clock.courses].map(
        ([course, { from }]): Task => ({
          id: serveOf(id, course),
          minutes: 0,
          needs: [],
          fixed: from,
        }),
      ),
    );
    lags.push(
      { from: packOf(id), to: loadOfEvent(id), kind: 'end-begin', least: 0, why: 'load' },
      {
        from: loadOfEvent(id),
        to: leaveOf(id),
        kind: 'end-begin',
        least: 0,
        ...(strict.resources && { most: LOADED_WAITS }),
        why: 'leave',
      },
    );
  }
  const goes = leaving(steps, date);
  const ofBatch = Map.groupBy(steps, ({ batch }) => batch);
  for (const step of steps) {
    if (!goes.has(step.batch)) continue;
    const cooling = coolingTasks(step);
    tasks.push(...cooling.tasks);
    lags.push(...cooling.lags);
    const own = ofBatch.get(step.batch) ?? [];
    for (const { plan } of step.batch.events) {
      const event = served.find((each) => each.plan.input.id === plan.input.id);
      if (!event || !isLast(step, own)) continue;
      const hot = travelsAs(step.batch.recipe) === 'hot';
      const { pack } = kitchen.day;
      const to = hot ? loadOfEvent(plan.input.id) : packOf(plan.input.id);
      // The last of it goes in before packing ends, so it may come while packing is on.
      const least = hot ? 0 : Math.min(LAST_IN, pack) - pack;
      const why = hot ? 'load' : 'pack';
      lags.push({ from: step.id, to, kind: 'end-begin', least: least + (step.step.rest ?? 0), why });
      const cooling = own.find((other) => other.cools !== undefined);
      if (cooling) lags.push({ from: coolOf(cooling.id), to, kind: 'end-begin', least, why: 'cold' });
      if (strict.quality) lags.push(...standsLags(step, event));
    }
  }
  return withWhatThereIs({
    direction: 'late',
    horizon: HORIZON,
    tasks,
    lags,
    resources: strict.resources ? dayResources(kitchen, crew, strict.hours) : [],
  });
}

/** Without the needs of what is not counted: hands where no crew is stated. */
export function withWhatThereIs(problem: ScheduleProblem): ScheduleProblem {
  const there = new Set(problem.resources.map(({ id }) => id));
  const tasks = problem.tasks.map((task) => ({
    ...task,
    needs: task.needs.filter(({ resource }) => there.has(resource)),
  }));
  return { ...problem, tasks };
}

/** The task of a step: hands and its station until hands are free, then the equipment. */
export function taskOf(step: ClockStep, crew: readonly CrewSpan[], hours: boolean): Task {
  const { id, hands, handsFor, unattended, load, batch } = step;
  const [gearFrom, until] = [inUseFrom(step), handsFor + unattended];
  const from = crew[0]?.from;
  return {
    id,
    minutes: handsFor + unattended,
    needs: [
      ...handsNeed(hands, handsFor),
      ...skillNeed(step, crew),
      ...(handsFor > 0
        ? [{ resource: stationOf(step.step.station), amount: hands, from: 0, until: handsFor }]
        : []),
      ...(load && until > gearFrom
        ? [
            {
              resource: gearOf(load.equipment.id),
              amount: load.uses,
              from: gearFrom,
              until,
            },
          ]
        : []),
    ],
    ...(hours && from !== undefined && { windows: [{ from, until: 2 * DAY_END }] }),
    weight: COSTS[batch.recipe.hold],
  };
}

function handsNeed(hands: number, minutes: number): Task['needs'] {
  return hands > 0 && minutes > 0 ? [{ resource: HANDS, amount: hands, from: 0, until: minutes }] : [];
}

/** One of the pairs of hands has the skill; where nobody of the day has it, that is told, and anybody does it. */
function skillNeed({ step: { skill }, handsFor }: ClockStep, crew: readonly CrewSpan[]): Task['needs'] {
  if (skill === undefined || handsFor === 0 || nobodyHas(skill, crew)) return [];
  return [{ resource: skillOf(skill), amount: 1, from: 0, until: handsFor }];
}

/** What comes before a step: at least its rest, and at most as long as the step before may wait for it. */
export function lagsOf(step: ClockStep, steps: ReadonlyMap<string, ClockStep>, quality: boolean): Lag[] {
  return step.after.map((id): Lag => {
    const before = steps.get(id);
    const same = before?.batch === step.batch;
    return {
      from: id,
      to: step.id,
      kind: 'end-begin',
      least: (same && before?.step.rest) || 0,
      ...(quality && same && before?.step.useWithin !== undefined && { most: before.step.useWithin }),
      why: 'step',
    };
  });
}

/** From being ready to the first plate, at most as long as it stands; nothing where no clock could keep that. */
function standsLags(step: ClockStep, { plan, clock }: ServedEvent): Lag[] {
  const { recipe } = step.batch;
  const stands = recipe.stands ?? usualStands(recipe.hold);
  if (stands === undefined || recipe.steps.some(isAtPlace)) return [];
  return plan.dishes
    .filter(({ dish }) => dish.recipe === recipe)
    .flatMap(({ dish }): Lag[] => {
      const course = clock.courses.get(dish.course);
      if (!course || course.from - lastReady(recipe, clock) > stands) return [];
      return [
        {
          from: step.id,
          to: serveOf(plan.input.id, dish.course),
          kind: 'end-begin',
          most: stands,
          why: 'stands',
        },
      ];
    });
}

/** Whether some dish of an event that leaves at another hour would stand longer than it may, and did not before. */
export function standsLonger(event: ServedEvent, before: ServedEvent): boolean {
  const isTooLong = ({ plan, clock }: ServedEvent) =>
    plan.dishes.some(({ dish: { recipe, course } }) => {
      const stands = recipe.stands ?? usualStands(recipe.hold);
      const from = clock.courses.get(course)?.from;
      if (stands === undefined || from === undefined || recipe.steps.some(isAtPlace)) return false;
      return from - lastReady(recipe, clock) > stands;
    });
  return isTooLong(event) && !isTooLong(before);
}

/** The last minute at which a finished dish still gets on the truck. */
function lastReady({ hold }: Recipe, { load }: EventClock): number {
  return hold === 'hot' ? load : load - LAST_IN;
}

/** Whether a step is the last of the date in the kitchen of all those of its batch. */
function isLast(step: ClockStep, ofBatch: readonly ClockStep[]): boolean {
  return ofBatch.every((other) => other.number <= step.number);
}
