import { daysBeforeText } from '../../engine/calendar/offset.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import { timesQuantity } from '../../engine/measure/quantity.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { Crew } from '../../engine/menu/crew.ts';
import { spanOf } from '../../engine/plan/days/work-day.ts';
import { crewText } from '../../engine/plan/days/work-day-fit.ts';
import type { TimedTask } from '../../engine/plan/days/work-day-of.ts';
import type { WorkedDay } from '../../engine/plan/days/work-days.ts';
import type { PlannedTask } from '../../engine/plan/event-plan.ts';
import type { PlanDay, PlanDayPicture, PlanTask } from '../form/day.ts';
import { amountText } from '../words/amount-text.ts';
import { batchesText } from '../words/batches-text.ts';
import { afterText, clockOf } from '../words/clock-text.ts';
import { dateText } from '../words/date-text.ts';
import { planLoads } from './loads.ts';
import { planStep } from './recipe.ts';

/** How days are written. */
export interface DaySetting {
  readonly system: MeasureSystem;
  readonly locale: string;
  readonly stations: ReadonlyMap<string, string>;
  readonly crew: Crew | undefined;
  /** Names a task, the same through reruns. */
  readonly idOf: (task: PlannedTask) => string;
}

/** A worked day as the plan lists it, tasks in their order, with its pictures and loads. */
export function planDay({ day, kitchen, place, from, placeFrom }: WorkedDay, setting: DaySetting): PlanDay {
  const { idOf, stations, crew } = setting;
  const handsOn = day.tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0);
  const parts = [
    { where: 'in the kitchen' as const, tasks: kitchen, from: from ?? null },
    { where: 'at the place' as const, tasks: place, from: placeFrom ?? null },
  ].filter(({ tasks }) => tasks.length > 0);
  const numbers = new Map(day.tasks.map((task, index) => [idOf(task), index + 1]));
  return {
    date: day.date,
    dateText: dateText(day.date, setting.locale),
    when: daysBeforeText(day.daysBefore),
    handsOn: durationText(minutes(handsOn)),
    crew: crew ? crewText(crew) : '',
    tasks: day.tasks.map((task) => {
      const part = parts.find(({ tasks }) => tasks.some((timed) => timed.task === task));
      const timed = part?.tasks.find((each) => each.task === task);
      const at = part && timed ? atOf(part.from)(timed.time.begins) : '';
      return planTask(task, numbers.get(idOf(task)) ?? 0, at, setting);
    }),
    pictures: parts.map(({ where, tasks, from: begin }) => picture(where, tasks, begin, numbers, setting)),
    loads: planLoads(kitchen, setting, atOf(from ?? null)),
  };

  function picture(
    where: PlanDayPicture['where'],
    tasks: readonly TimedTask[],
    begin: number | null,
    order: ReadonlyMap<string, number>,
    { idOf: id }: DaySetting,
  ): PlanDayPicture {
    const span = spanOf(tasks.map(({ time }) => time));
    const names = [...new Set(tasks.map(({ task }) => task.step.station))];
    const known = [...stations.keys()];
    return {
      where,
      from: begin,
      minutes: span,
      takes: durationText(minutes(span)),
      stations: names
        .sort((a, b) => known.indexOf(a) - known.indexOf(b))
        .map((name) => ({
          name: stations.get(name) ?? name,
          tasks: tasks
            .filter(({ task }) => task.step.station === name)
            .map(({ task, time: { begins, handsOff, ends } }) => ({
              number: order.get(id(task)) ?? 0,
              id: id(task),
              begins,
              handsOff,
              ends,
            }))
            .sort((a, b) => a.begins - b.begins),
        })),
    };
  }
}

/** How a minute of a day's work is written: by the clock where its beginning is known, else since the beginning. */
function atOf(from: number | null): (minute: number) => string {
  return (minute) => (from === null ? afterText(minute) : clockOf(from + minute));
}

function planTask(task: PlannedTask, order: number, at: string, setting: DaySetting): PlanTask {
  const { recipe, batches } = task;
  return {
    ...planStep(task.step, task.number, batches, setting, task.handsOnMinutes),
    id: setting.idOf(task),
    order,
    at,
    recipe: recipe.id,
    recipeName: recipe.name,
    batches: batchesText(batches),
    makes: amountText(timesQuantity(recipe.makes[0], batches), setting.system, 'line').printed,
  };
}
