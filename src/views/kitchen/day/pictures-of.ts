import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { TimedStep } from '../../../engine/plan/clock/clock-step.ts';
import type { DayClock } from '../../../engine/plan/clock/day-clock.ts';
import { waitingOf } from '../../../engine/plan/clock/waiting.ts';
import type { PlanDayPicture } from '../../../exports/form/day.ts';
import type { Say } from '../../../words/words-in.ts';
import { isApart } from './tasks-of.ts';
import { dayTimeKey } from './work-of.ts';

/**
 * A day's work in the kitchen over all events, station by station, under the numbers of the lists below it; what is
 * finished and waits for its guests beneath. Work whose hour is not known has a picture of its own.
 */
export function dayPictures(
  { steps, served }: DayClock,
  stations: ReadonlyMap<string, string>,
  numbers: ReadonlyMap<string, number>,
  say: Say,
): PlanDayPicture[] {
  return [true, false].flatMap((clock): PlanDayPicture[] => {
    const own = steps.filter((step) => step.clock === clock);
    if (own.length === 0) return [];
    const from = Math.min(...own.map(({ begins }) => begins));
    const span = Math.max(...own.map(({ ends }) => ends)) - from;
    const rows = Map.groupBy(own, ({ batch, step }) =>
      isApart(batch.recipe.id) ? say('day.separately') : (stations.get(step.station) ?? step.station),
    );
    const order = [say('day.separately'), ...stations.values()];
    const waiting = clock ? waitingShown(own, served, from) : [];
    return [
      {
        where: 'in the kitchen',
        from: clock ? from : null,
        minutes: span,
        takes: durationText(minutes(span)),
        stations: [...rows]
          .sort(([a], [b]) => order.indexOf(a) - order.indexOf(b))
          .map(([name, tasks]) => ({
            name,
            tasks: tasks.map((step) => shown(step, from, numbers)).sort((a, b) => a.begins - b.begins),
          })),
        ...(waiting.length > 0 && { waiting }),
      },
    ];
  });
}

function shown(step: TimedStep, from: number, numbers: ReadonlyMap<string, number>) {
  const [event] = step.batch.events;
  const key = dayTimeKey(event?.plan.input.id ?? '', step.batch.recipe.id, step.number);
  return {
    number: numbers.get(key) ?? 0,
    id: `${step.batch.recipe.id}.${step.number}`,
    begins: step.begins - from,
    handsOff: step.handsOff - from,
    ends: step.ends - from,
    ...(step.critical && { critical: true as const }),
  };
}

function waitingShown(steps: readonly TimedStep[], served: DayClock['served'], from: number) {
  return served.flatMap(({ plan, clock }) =>
    waitingOf(plan, steps, clock)
      .filter(({ until, from: ready }) => until > ready)
      .map(({ dish, as, from: ready, until }) => ({
        name: dish.dish.name,
        as,
        begins: ready - from,
        ends: until - from,
      })),
  );
}
