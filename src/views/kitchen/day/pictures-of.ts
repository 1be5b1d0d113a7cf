import type { DayClock } from '../../../engine/plan/clock/day-clock.ts';
import type { Rota } from '../../../engine/plan/clock/rota.ts';
import { waitingOf } from '../../../engine/plan/clock/waiting.ts';
import type { PlanDayPicture } from '../../../exports/form/day.ts';
import { type DrawnVan, planPicture, vanOf } from '../../../exports/plan/picture.ts';
import type { Say } from '../../../words/words-in.ts';
import { isApart } from './tasks-of.ts';
import { type DayWorkView, dayTimeKey } from './work-of.ts';

/**
 * A day's work in the kitchen over all events, under the numbers of the lists below it: stations, equipment, people, and
 * what is finished and waits for its guests. Work whose hour is not known has a picture of its own.
 */
export function dayPictures(
  { clock: { steps, served }, rota, holding }: Pick<DayWorkView, 'clock' | 'rota' | 'holding'>,
  stations: ReadonlyMap<string, string>,
  numbers: ReadonlyMap<string, number>,
  say: Say,
): PlanDayPicture[] {
  return [true, false].flatMap((clock): PlanDayPicture[] => {
    const own = steps.filter((step) => step.clock === clock);
    if (own.length === 0) return [];
    const drawn = own.map((step) => {
      const { batch, number } = step;
      const key = dayTimeKey(batch.events[0]?.plan.input.id ?? '', batch.recipe.id, number);
      return {
        time: step,
        number: numbers.get(key) ?? 0,
        id: `${batch.recipe.id}.${number}`,
        row: isApart(batch.recipe.id)
          ? say('day.separately')
          : (stations.get(step.step.station) ?? step.step.station),
      };
    });
    const waiting = clock ? served.flatMap(({ plan, clock: event }) => waitingOf(plan, own, event)) : [];
    return [
      planPicture(drawn, {
        where: 'in the kitchen',
        order: [say('day.separately'), ...stations.values()],
        rota,
        van: clock ? vans(served, rota, say) : [],
        waiting,
        holding: clock ? holding : [],
        say,
      }),
    ];
  });
}

function vans(served: DayClock['served'], rota: Rota, say: Say): DrawnVan[] {
  return served.flatMap(({ plan: { input }, ...van }) =>
    vanOf(input.id, van, rota, say).map((each) => ({ ...each, event: input.occasion })),
  );
}
