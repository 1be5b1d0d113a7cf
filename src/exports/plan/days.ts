import { daysBeforeText } from '../../engine/calendar/offset.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import { timesQuantity } from '../../engine/measure/quantity.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { Crew } from '../../engine/menu/crew.ts';
import type { TimedTask, WorkedDay } from '../../engine/plan/clock/event-work.ts';
import type { Waiting } from '../../engine/plan/clock/waiting.ts';
import { crewText } from '../../engine/plan/days/crew-text.ts';
import type { PlannedTask } from '../../engine/plan/event-plan.ts';
import type { PlanDay, PlanDayPicture, PlanTask } from '../form/day.ts';
import { amountText } from '../words/amount-text.ts';
import { batchesText } from '../words/batches-text.ts';
import { afterText, clockOf } from '../words/clock-text.ts';
import { type ClockWords, startWhy } from '../words/clock-words.ts';
import { dateText } from '../words/date-text.ts';
import { planLoads } from './loads.ts';
import { planStep } from './recipe.ts';

/** How days are written. */
export interface DaySetting extends ClockWords {
  readonly system: MeasureSystem;
  readonly crew: Crew | undefined;
  /** Names a task, the same through reruns. */
  readonly idOf: (task: PlannedTask) => string;
}

/** A day as the plan lists it, tasks in their order, with its pictures and loads, all by the one schedule. */
export function planDay(
  { day, kitchen, place }: WorkedDay,
  waiting: readonly Waiting[],
  setting: DaySetting,
): PlanDay {
  const { idOf, stations, crew } = setting;
  const handsOn = day.tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0);
  const parts = [
    { where: 'in the kitchen' as const, tasks: kitchen },
    { where: 'at the place' as const, tasks: place },
  ].filter(({ tasks }) => tasks.length > 0);
  const timed = [...kitchen, ...place];
  const numbers = new Map(day.tasks.map((task, index) => [idOf(task), index + 1]));
  return {
    date: day.date,
    dateText: dateText(day.date, setting.locale),
    when: daysBeforeText(day.daysBefore),
    handsOn: durationText(minutes(handsOn)),
    crew: crew ? crewText(crew) : '',
    tasks: day.tasks.map((task) => {
      const found = timed.find((each) => each.task === task);
      return planTask(task, numbers.get(idOf(task)) ?? 0, found, setting);
    }),
    pictures: parts.map(({ where, tasks }) => picture(where, tasks)),
    loads: planLoads(kitchen, setting, atOf(kitchen.every(({ time }) => time.clock))),
  };

  function picture(where: PlanDayPicture['where'], tasks: readonly TimedTask[]): PlanDayPicture {
    const from = Math.min(...tasks.map(({ time }) => time.begins));
    const span = Math.max(...tasks.map(({ time }) => time.ends)) - from;
    const names = [...new Set(tasks.map(({ task }) => task.step.station))];
    const known = [...stations.keys()];
    return {
      where,
      from: tasks.every(({ time }) => time.clock) ? from : null,
      minutes: span,
      takes: durationText(minutes(span)),
      stations: names
        .sort((a, b) => known.indexOf(a) - known.indexOf(b))
        .map((name) => ({
          name: stations.get(name) ?? name,
          tasks: tasks
            .filter(({ task }) => task.step.station === name)
            .map(({ task, time }) => ({
              number: numbers.get(idOf(task)) ?? 0,
              id: idOf(task),
              begins: time.begins - from,
              handsOff: time.handsOff - from,
              ends: time.ends - from,
              ...(time.critical && { critical: true as const }),
            }))
            .sort((a, b) => a.begins - b.begins),
        })),
      ...waitingShown(tasks, day.daysBefore === 0 ? waiting : [], from),
    };
  }
}

/** The dishes that these tasks finish and that then wait. */
function waitingShown(tasks: readonly TimedTask[], waiting: readonly Waiting[], from: number) {
  const own = waiting.filter(
    ({ from: ready, until, dish }) =>
      until > ready &&
      tasks.some(({ task, time }) => task.recipe === dish.dish.recipe && time.ends === ready),
  );
  return own.length === 0
    ? {}
    : {
        waiting: own.map(({ dish, as, from: ready, until }) => ({
          name: dish.dish.name,
          as,
          begins: ready - from,
          ends: until - from,
        })),
      };
}

/** How a minute of a day's work is written: by the clock where its beginning is known, else since the beginning. */
function atOf(clock: boolean): (minute: number) => string {
  return clock ? clockOf : afterText;
}

function planTask(
  task: PlannedTask,
  order: number,
  timed: TimedTask | undefined,
  setting: DaySetting,
): PlanTask {
  const { recipe, batches } = task;
  const time = timed?.time;
  const why = time?.clock ? startWhy(time, setting) : '';
  return {
    ...planStep(task.step, task.number, batches, setting, task.handsOnMinutes),
    id: setting.idOf(task),
    order,
    at: time ? atOf(time.clock)(time.begins) : '',
    ...(time?.clock && { until: clockOf(time.ends) }),
    ...(why !== '' && { why }),
    ...(time?.clock && time.coldBy !== undefined && { coldBy: clockOf(time.coldBy) }),
    recipe: recipe.id,
    recipeName: recipe.name,
    batches: batchesText(batches, setting.system),
    makes: amountText(timesQuantity(recipe.makes[0], batches), setting.system, 'line').printed,
  };
}
