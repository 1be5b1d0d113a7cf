import type { Day } from '../../../engine/calendar/day.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { PlanLoad, PlanTask } from '../../../exports/form/day.ts';
import type { PrepPlanDocument } from '../../../exports/form/prep-plan.ts';
import { clockOf } from '../../../exports/words/clock-text.ts';
import { allOf } from '../../../exports/words/statement-text.ts';
import { type Say, wordsIn } from '../../../words/words-in.ts';
import { atThePlace } from './containers-of.ts';
import type { DayRecipe, DayTaskList, DayView } from './view.ts';
import { type DayTime, dayTimeKey } from './work-of.ts';

const NO_TIME: Omit<DayTime, 'at'> = {
  begins: 0,
  handsOff: 0,
  ends: 0,
  clock: false,
  who: '',
  why: '',
  cooledBy: '',
  waitsIn: '',
  coldBy: '',
};

interface DayTask {
  readonly plan: PrepPlanDocument;
  readonly task: PlanTask;
  readonly place: boolean;
  readonly time: DayTime;
}

/** The lists of a day's tasks, numbered through, and under which number each step stands. */
export interface DayLists extends Pick<DayView, 'apart' | 'stations' | 'places'> {
  /** By `dayTimeKey`. */
  readonly numbers: ReadonlyMap<string, number>;
}

/**
 * Everything to do on a day: first what is made separately for a guest's need, then the kitchen's tasks by station, a step
 * that is cooked together for several events once, then what is done at each event's place. Each list is in order of
 * time.
 */
export function dayTasks(
  date: Day,
  plans: readonly PrepPlanDocument[],
  stations: ReadonlyMap<string, string>,
  recipes: readonly DayRecipe[],
  times: ReadonlyMap<string, DayTime>,
  loads: readonly PlanLoad[],
  locale: string,
): DayLists {
  const say = wordsIn(locale);
  const tasks = plans.flatMap((plan) =>
    plan.days
      .filter((day) => day.date === date)
      .flatMap((day) => {
        const away = atThePlace(day);
        return day.tasks.map((task): DayTask => {
          const time = times.get(dayTimeKey(plan.event.id, task.recipe, task.number));
          return {
            plan,
            task,
            place: away.has(task.id),
            time: time ?? { ...NO_TIME, at: task.at },
          };
        });
      }),
  );
  const kitchen = tasks.filter(({ place }) => !place);
  const apart = kitchen.filter(({ task }) => isApart(task.recipe));
  const others = kitchen.filter(({ task }) => !isApart(task.recipe));
  const names = [...new Set([...stations.values(), ...others.map(({ task }) => task.station)])];
  const numbers = new Map<string, number>();
  let before = 0;
  const list = (name: string, own: readonly DayTask[]): DayTaskList[] => {
    if (own.length === 0) return [];
    const steps = merged(own, recipes, loads, locale);
    for (const [index, { same }] of steps.entries())
      for (const { plan, task } of same)
        numbers.set(dayTimeKey(plan.event.id, task.recipe, task.number), before + index + 1);
    const tasks = steps.map(({ shown }, index) => ({ ...shown, number: before + index + 1 }));
    before += steps.length;
    return [{ name, handsOn: summed(own), tasks }];
  };
  return {
    apart: list(say('day.made-separately'), apart).at(0) ?? null,
    stations: names.flatMap((name) =>
      list(
        name,
        others.filter(({ task }) => task.station === name),
      ),
    ),
    places: plans.flatMap((plan) =>
      list(
        say('day.on-site', { event: plan.event.occasion }),
        tasks.filter((each) => each.place && each.plan === plan),
      ),
    ),
    numbers,
  };
}

/** A step as its list shows it, once for all the tasks that it is. */
interface ListedStep {
  readonly same: readonly DayTask[];
  readonly begins: number;
  readonly shown: Omit<DayTaskList['tasks'][number], 'number'>;
}

/** A recipe changed for a need carries what is changed in its id, after two hyphens. */
export function isApart(recipe: string): boolean {
  return recipe.includes('--');
}

/** Tasks with a step that is cooked together once, by its card: what an event swaps something in is not mixed. */
function merged(
  tasks: readonly DayTask[],
  recipes: readonly DayRecipe[],
  loads: readonly PlanLoad[],
  locale: string,
): ListedStep[] {
  const say = wordsIn(locale);
  const steps = Map.groupBy(tasks, (each) => {
    const card = cardOf(each, recipes);
    const alone = each.place || !card ? each.plan.event.id : '';
    return JSON.stringify([card?.card.id ?? each.task.recipe, each.task.number, alone]);
  });
  return [...steps.values()]
    .map((same): ListedStep => {
      const [first] = same as [DayTask, ...DayTask[]];
      const { task } = first;
      const card = cardOf(first, recipes);
      const together = same.length > 1 ? card?.card : undefined;
      // The same as the card's own step, so that one tick is both; done at each place, it is as many.
      const several = first.place && (card?.events.length ?? 0) > 1;
      const step = `${card?.card.id ?? `${first.plan.event.id}.${task.recipe}`}.${task.number}`;
      const shown = {
        id: several ? `${step}.${first.plan.event.id}` : step,
        at: first.time.at,
        ...(first.time.clock && { hours: hoursOf(first.time) }),
        recipeName: task.recipeName,
        ...(card && { card: card.card.id }),
        text: together?.steps.find(({ number }) => number === task.number)?.text ?? task.text,
        amounts: together
          ? [{ event: occasions(same, locale), makes: together.makes.printed }]
          : same.map(({ plan, task: own }) => ({ event: plan.event.occasion, makes: own.makes })),
        guests: [...new Set(same.flatMap(({ plan, task: own }) => guestsOf(plan, own.recipe)))],
        handsOn: summed(same),
        unattended: task.unattended,
        cookTo: task.cookTo,
        ...(task.heat !== undefined && { heat: task.heat }),
        ...placeOf(first, card, loads, say),
        skill: task.skill ?? '',
        who: first.time.who,
        why: first.time.why,
        cooledBy: first.time.cooledBy,
        coldBy: first.time.coldBy,
        waitsIn: waitsOf(same),
      };
      return { same, begins: Math.min(...same.map(({ time }) => time.begins)), shown };
    })
    .sort((a, b) => a.begins - b.begins);
}

/**
 * What a step goes into: the oven with the pans in it, else, for the last step of its recipe in the kitchen that day, the
 * pans it is chilled in, or leaves in.
 */
function placeOf(
  { task, time, plan, place }: DayTask,
  card: DayRecipe | undefined,
  loads: readonly PlanLoad[],
  say: Say,
): { oven?: string; pan?: string } {
  const load = place ? undefined : loads.find((each) => each.task === `${task.recipe}.${task.number}`);
  if (load) {
    const oven = say('day.oven-loads', { n: load.loads, count: load.uses, oven: load.equipment });
    return { oven, ...(load.containers !== '' && { pan: load.containers }) };
  }
  const day = plan.days.find(({ tasks }) => tasks.some(({ id }) => id === task.id));
  const away = day ? atThePlace(day) : new Set<string>();
  const later = day?.tasks.some(
    (each) => each.recipe === task.recipe && each.number > task.number && !away.has(each.id),
  );
  if (place || later || !card) return {};
  const packed = card.card.packed ?? [];
  const into = packed.filter(({ stage }) => stage === (time.coldBy === '' ? 'carry' : 'chill'));
  return into.length > 0 ? { pan: into.map(({ what }) => what).join(', ') } : {};
}

function hoursOf({ begins, handsOff, ends }: DayTime) {
  return { begins, handsOff, ends, to: clockOf(ends) };
}

/** Where what it finishes waits, for each event that is different. */
function waitsOf(same: readonly DayTask[]): string {
  return [...new Set(same.map(({ time }) => time.waitsIn))].filter(Boolean).join(' · ');
}

/** For whom portions are made separately. */
function guestsOf({ dishes }: PrepPlanDocument, recipe: string): string[] {
  return dishes
    .filter((dish) => dish.recipe === recipe && dish.apartFrom !== '')
    .flatMap(({ needs }) => needs.map(({ need, guests }) => `${guests} × ${need}`));
}

/** The card that a task's recipe is cooked by for its event. */
function cardOf({ plan, task }: DayTask, recipes: readonly DayRecipe[]): DayRecipe | undefined {
  return recipes.find(
    ({ events, card }) =>
      card.name === task.recipeName &&
      (card.id === task.recipe || card.id.startsWith(`${task.recipe}.`)) &&
      events.some(({ id }) => id === plan.event.id),
  );
}

function occasions(same: readonly DayTask[], locale: string): string {
  return allOf(
    same.map(({ plan }) => plan.event.occasion),
    locale,
  );
}

function summed(tasks: readonly DayTask[]): string {
  const total = tasks.reduce((sum, { task }) => sum + task.handsOnMinutes, 0);
  return durationText(minutes(total));
}
