import type { Day } from '../engine/calendar/day.ts';
import { durationText, minutes } from '../engine/measure/duration.ts';
import { CREW_CAUTIONS } from '../engine/safety/cautions.ts';
import { dateText } from '../exports/date-text.ts';
import type { PlanTask, PrepPlanDocument } from '../exports/prep-plan-document.ts';
import type { BrandView } from './brand-view.ts';
import type { BannerView, DayView } from './kitchen-view.ts';

interface DayTask {
  readonly plan: PrepPlanDocument;
  readonly task: PlanTask;
}

/** What of a day is reckoned over all its events. */
export type DaySums = Pick<DayView, 'recipes' | 'shopping' | 'crew'>;

/** Everything to do on one day: tasks of all events by station, a step of a recipe that is cooked together once. */
export function dayView(
  date: Day,
  plans: readonly PrepPlanDocument[],
  stations: ReadonlyMap<string, string>,
  locale: string,
  brand: BrandView,
  banner: BannerView | null,
  sums: DaySums,
): DayView {
  const working = plans.filter((plan) => plan.days.some((day) => day.date === date));
  const tasks = working.flatMap((plan) =>
    plan.days.filter((day) => day.date === date).flatMap((day) => day.tasks.map((task) => ({ plan, task }))),
  );
  const names = [...new Set([...stations.values(), ...tasks.map(({ task }) => task.station)])];
  return {
    kind: 'day',
    brand,
    banner,
    date,
    dateText: dateText(date, locale),
    events: working.map(({ event }) => ({
      id: event.id,
      occasion: `${event.occasion}, ${event.client}`,
      what: event.date === date ? `served today at ${event.serveAt}` : `served ${event.dateText}`,
    })),
    alerts: working.map(({ event, alerts }) => ({ event: event.occasion, alerts })),
    stations: names
      .map((name) =>
        stationOf(
          name,
          tasks.filter(({ task }) => task.station === name),
          sums.recipes,
        ),
      )
      .filter((station) => station.tasks.length > 0),
    ...sums,
    cautions: CREW_CAUTIONS,
  };
}

/** Every date on which any plan has work, in order. */
export function workDates(plans: readonly PrepPlanDocument[]): Day[] {
  return [...new Set(plans.flatMap((plan) => plan.days.map((day) => day.date as Day)))].sort();
}

function stationOf(
  name: string,
  tasks: readonly DayTask[],
  recipes: DayView['recipes'],
): DayView['stations'][number] {
  const steps = new Map<string, DayTask[]>();
  for (const each of tasks) {
    const { recipe, number } = each.task;
    // By its card: what an event swaps something in, or makes apart for a need, goes by the same id and is not mixed.
    const key = JSON.stringify([recipe, number, cardOf(each, recipes)?.card.id ?? each.plan.event.id]);
    steps.set(key, [...(steps.get(key) ?? []), each]);
  }
  return {
    name,
    handsOn: summed(tasks),
    tasks: [...steps.values()].map((same, index, all) => {
      const { task } = same[0] as DayTask;
      const step = (of: PlanTask) => `${of.recipe}.${of.number}`;
      const card = same.length > 1 ? cardOf(same[0] as DayTask, recipes)?.card : undefined;
      const before = all.slice(0, index).filter(([first]) => first && step(first.task) === step(task)).length;
      return {
        id: before === 0 ? step(task) : `${step(task)}.${before + 1}`,
        recipeName: task.recipeName,
        text: task.text,
        amounts: card
          ? [{ event: same.map(({ plan }) => plan.event.occasion).join(' and '), makes: card.makes.printed }]
          : same.map(({ plan, task: own }) => ({ event: plan.event.occasion, makes: own.makes })),
        handsOn: summed(same),
        unattended: task.unattended,
        cookTo: task.cookTo,
      };
    }),
  };
}

/** The card that a task's recipe is cooked by for its event. */
function cardOf(
  { plan, task }: DayTask,
  recipes: DayView['recipes'],
): DayView['recipes'][number] | undefined {
  return recipes.find(
    ({ events, card }) =>
      card.name === task.recipeName &&
      (card.id === task.recipe || card.id.startsWith(`${task.recipe}.`)) &&
      events.some(({ id }) => id === plan.event.id),
  );
}

function summed(tasks: readonly DayTask[]): string {
  const total = tasks.reduce((sum, { task }) => sum + task.handsOnMinutes, 0);
  return durationText(minutes(total));
}
