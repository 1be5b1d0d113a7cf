import type { Day } from '../../calendar/day.ts';
import { travelsAs } from '../../safety/travels-as.ts';
import type { Lag, ScheduleProblem, Task } from '../../schedule/problem.ts';
import type { ClockStep } from './clock-step.ts';
import { coolingTasks, coolOf } from './cooling-tasks.ts';
import type { CrewSpan } from './crew-hours.ts';
import { DAY_END } from './crew-hours.ts';
import { DOOR, dayResources, VEHICLES, vehicleOf } from './day-resources.ts';
import type { ClockKitchen } from './kitchen-steps.ts';

import { leaving } from './leaves.ts';
import { LAST_IN, type ServedEvent, serveOf, standsLags } from './stands.ts';
import { COSTS, handsNeed, lagsOf, taskOf, withWhatThereIs } from './step-tasks.ts';
import { sharedTrips } from './vehicles.ts';

/** The day before counts too: what does not fit is put there, and told. */
const HORIZON = { from: -1440, until: DAY_END };
/** The longest that a loaded truck waits to leave: common practice, no source. */
const LOADED_WAITS = 60;

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

/** Whether a step is the last of the date in the kitchen of all those of its batch. */
function isLast(step: ClockStep, ofBatch: readonly ClockStep[]): boolean {
  return ofBatch.every((other) => other.number <= step.number);
}
