import type { Day } from '../../../engine/calendar/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import type { DayView } from './view.ts';

/**
 * What each event's food goes into, by stage: on the day it is served that of all its dishes, before it that of the
 * dishes finished on that day.
 */
export function dayContainers(date: Day, plans: readonly PrepPlanDocument[]): DayView['containers'] {
  return plans.flatMap((plan) => {
    const dishes = [...plan.dishes, ...(plan.crewMeals ?? [])].filter(
      ({ recipe, containers }) =>
        containers.length > 0 && (plan.event.date === date || finishedOn(plan, recipe) === date),
    );
    return dishes.length > 0 ? [{ event: plan.event.occasion, dishes }] : [];
  });
}

/** Ids of the tasks of a plan's day that are done at the place. */
export function atThePlace({ pictures }: PrepPlanDocument['days'][number]): Set<string> {
  return new Set(
    pictures
      .filter(({ where }) => where === 'at the place')
      .flatMap(({ stations }) => stations.flatMap(({ tasks }) => tasks.map(({ id }) => id))),
  );
}

function finishedOn({ days }: PrepPlanDocument, recipe: string): string | undefined {
  return days
    .filter((day) => {
      const away = atThePlace(day);
      return day.tasks.some((task) => task.recipe === recipe && !away.has(task.id));
    })
    .map(({ date }) => date)
    .sort()
    .at(-1);
}
