import type { Kitchen } from '../../kitchen/kitchen.ts';
import { minutesOfClock } from '../../kitchen/parse-clock.ts';
import type { EventPlan, PlanFinding, PlannedDay } from '../event-plan.ts';
import { type TimelineEntry, timelineOf } from './timeline.ts';
import { spanOf } from './work-day.ts';
import { overfullFinding } from './work-day-fit.ts';
import { movesFrom } from './work-day-moves.ts';
import { type CookedFood, type TimedTask, timeTasks, type WorkSetting } from './work-day-of.ts';

/** What of the kitchen a day's work depends on. */
export type WorkKitchen = Pick<Kitchen, 'equipment' | 'containers' | 'crew' | 'day'>;

/** A planned day in order of time. */
export interface WorkedDay {
  readonly day: PlannedDay;
  /** Tasks in the kitchen, and those at serving, each list from its own beginning. */
  readonly kitchen: readonly TimedTask[];
  readonly place: readonly TimedTask[];
  /** Minutes from midnight at which work in the kitchen begins; undefined where it is not stated. */
  readonly from: number | undefined;
  /** The same of what is done at the place. */
  readonly placeFrom: number | undefined;
}

/** The days of a plan worked through, the event's own day by the clock, and what does not fit. */
export interface PlanWork {
  readonly days: readonly WorkedDay[];
  readonly timeline: readonly TimelineEntry[];
  readonly findings: readonly PlanFinding[];
}

/** Ovens there are the place's, and whoever serves plates: each task has hands of its own. */
const AT_THE_PLACE: WorkSetting = {
  equipment: new Map(),
  containers: new Map(),
  people: undefined,
  atStation: 'any',
};

/** Puts the tasks of a plan in order of time, works the event's day back from serving, and holds each day to the crew. */
export function planWork(plan: EventPlan, kitchen: WorkKitchen): PlanWork {
  const people = kitchen.crew?.people;
  const food = cookedFood([plan]);
  const worked = plan.days.map((day) => {
    const at = (serving: boolean) => day.tasks.filter(({ step }) => step.when.atServing === serving);
    return {
      day,
      kitchen: timeTasks(at(false), food, { ...kitchen, people, atStation: 'one' }),
      place: timeTasks(at(true), food, AT_THE_PLACE),
    };
  });
  const own = worked.find(({ day }) => day.daysBefore === 0);
  const timeline = timelineOf({
    serveAt: plan.input.serveAt,
    away: plan.input.away,
    times: kitchen.day,
    kitchenSpan: spanOf(own?.kitchen.map(({ time }) => time) ?? []),
    placeSpan: spanOf(own?.place.map(({ time }) => time) ?? []),
    placeHandsOn: handsOnOf(own?.place ?? []),
  });
  const cook = timeline.find(({ part }) => part === 'cook');
  const { crew } = kitchen;
  const days = worked.map((each): WorkedDay => {
    const from = each.day.daysBefore === 0 ? cook?.begins : startOf(crew);
    return { ...each, from, placeFrom: timeline.find(({ part }) => part === 'finish')?.begins };
  });
  return { days, timeline, findings: crew ? fitFindings(plan, worked, crew) : [] };
}

/** What plans cook and pack, as the loads are reckoned from. */
export function cookedFood(plans: readonly Pick<EventPlan, 'recipes' | 'dishes'>[]): CookedFood {
  const dishes = plans.flatMap((plan) => plan.dishes);
  return {
    recipes: plans.flatMap(({ recipes }) => recipes),
    packed: new Map(
      [...Map.groupBy(dishes, ({ dish }) => dish.recipe.id)].map(([id, same]) => [
        id,
        same.flatMap(({ containers }) => containers),
      ]),
    ),
  };
}

/** Hands-on minutes of timed tasks. */
export function handsOnOf(tasks: readonly TimedTask[]): number {
  return tasks.reduce((sum, { task }) => sum + task.handsOnMinutes, 0);
}

function fitFindings(
  plan: EventPlan,
  worked: readonly Pick<WorkedDay, 'day' | 'kitchen'>[],
  crew: NonNullable<Kitchen['crew']>,
): PlanFinding[] {
  const has = crew.people * crew.each;
  const served = plan.dishes.map(({ dish }) => dish.recipe);
  return worked.flatMap(({ day, kitchen }) => {
    const before = worked.find((each) => each.day.daysBefore === day.daysBefore + 1);
    const room = has - handsOnOf(before?.kitchen ?? []);
    const load = {
      daysBefore: day.daysBefore,
      handsOn: handsOnOf(kitchen),
      span: spanOf(kitchen.map(({ time }) => time)),
    };
    const mostDays = plan.foodSafety.limits['date mark'].days;
    const moves = movesFrom(day, served, plan.input.date, mostDays);
    const found = overfullFinding(load, crew, moves, room);
    return found ? [found] : [];
  });
}

function startOf(crew: Kitchen['crew']): number | undefined {
  return crew?.from === undefined ? undefined : minutesOfClock(crew.from);
}
