import { daysBeforeText } from '../../engine/calendar/offset.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import { timesQuantity } from '../../engine/measure/quantity.ts';
import type { Crew } from '../../engine/menu/crew.ts';
import type { TimedTask, WorkedDay } from '../../engine/plan/clock/event-work.ts';
import type { HeldFood } from '../../engine/plan/clock/holding.ts';
import type { Waiting } from '../../engine/plan/clock/waiting.ts';
import { crewText } from '../../engine/plan/days/crew-text.ts';
import type { PlannedTask } from '../../engine/plan/event-plan.ts';
import type { PlanDay, PlanTask } from '../form/day.ts';
import { amountText } from '../words/amount-text.ts';
import { batchesText } from '../words/batches-text.ts';
import { afterText, clockOf } from '../words/clock-text.ts';
import type { ClockWords } from '../words/clock-words.ts';
import { coolingText } from '../words/cooling-words.ts';
import { dateText } from '../words/date-text.ts';
import { waitsInText } from '../words/holding-words.ts';
import { stepWhy } from '../words/step-why.ts';
import { whoText } from '../words/who-text.ts';
import { planLoads } from './loads.ts';
import { planPicture, vanOf } from './picture.ts';
import { planStep } from './recipe.ts';

/** How days are written. */
export interface DaySetting extends ClockWords {
  readonly crew: Crew | undefined;
  /** Id of the event. */
  readonly event: string;
  /** Names a task, the same through reruns. */
  readonly idOf: (task: PlannedTask) => string;
}

/** A day as the plan lists it, tasks in their order, with its pictures and loads, all by the one schedule. */
export function planDay(
  { day, kitchen, place, rota, van, held }: WorkedDay,
  waiting: readonly Waiting[],
  setting: DaySetting,
): PlanDay {
  const { idOf, stations, crew, say } = setting;
  const handsOn = day.tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0);
  const parts = [
    {
      where: 'in the kitchen' as const,
      tasks: kitchen,
      rota: rota.kitchen,
      van: van ? vanOf(setting.event, van, rota.kitchen, say) : [],
    },
    { where: 'at the place' as const, tasks: place, rota: rota.place, van: [] },
  ].filter(({ tasks }) => tasks.length > 0);
  const timed = [...kitchen, ...place];
  const numbers = new Map(day.tasks.map((task, index) => [idOf(task), index + 1]));
  const rowOf = (station: string) => stations.get(station) ?? station;
  return {
    date: day.date,
    dateText: dateText(day.date, setting.locale),
    when: daysBeforeText(day.daysBefore),
    handsOn: durationText(minutes(handsOn)),
    crew: crew ? crewText(crew) : '',
    tasks: day.tasks.map((task) => {
      const found = timed.filter((each) => each.task === task);
      const cooks = found.flatMap(
        ({ time }) => rota[time.where === 'kitchen' ? 'kitchen' : 'place'].cooks.get(time.id) ?? [],
      );
      return planTask(task, numbers.get(idOf(task)) ?? 0, found, cooks, held, setting);
    }),
    pictures: parts.map(({ where, tasks, rota: own, van: vans }) =>
      planPicture(
        tasks.map(({ task, time }) => ({
          time,
          number: numbers.get(idOf(task)) ?? 0,
          id: idOf(task),
          row: rowOf(task.step.station),
        })),
        {
          where,
          order: [...stations.values()],
          rota: own,
          van: vans,
          holding: [],
          waiting: day.daysBefore === 0 ? waitingHere(tasks, waiting) : [],
          say,
        },
      ),
    ),
    loads: planLoads(kitchen, setting, atOf(kitchen.every(({ time }) => time.clock))),
  };
}

/** The dishes that these tasks finish and that then wait. */
function waitingHere(tasks: readonly TimedTask[], waiting: readonly Waiting[]): Waiting[] {
  return waiting.filter(({ from, dish }) =>
    tasks.some(({ task, time }) => task.recipe === dish.dish.recipe && time.ends === from),
  );
}

/** How a minute of a day's work is written: by the clock where its beginning is known, else since the beginning. */
function atOf(clock: boolean): (minute: number) => string {
  return clock ? clockOf : afterText;
}

function planTask(
  task: PlannedTask,
  order: number,
  timed: readonly TimedTask[],
  cooks: readonly number[],
  held: readonly HeldFood[],
  setting: DaySetting,
): PlanTask {
  const { recipe, batches } = task;
  const time = timed[0]?.time;
  // A step in waves is done when its last one is.
  const ends = Math.max(...timed.map((each) => each.time.ends));
  const why = time ? stepWhy(time, setting) : '';
  const cooledBy = time?.clock ? coolingText(time, setting) : '';
  const waitsIn = waitsInText(
    held.filter(({ after }) => time?.clock && after.includes(time.id)),
    setting.equipment,
    setting,
  );
  const who = whoText(
    [...new Set(cooks)].sort((a, b) => a - b),
    setting.say,
  );
  return {
    ...planStep(task.step, task.number, batches, setting, task.handsOnMinutes),
    id: setting.idOf(task),
    order,
    at: time ? atOf(time.clock)(time.begins) : '',
    ...(time?.clock && { until: clockOf(ends) }),
    ...(who !== '' && { who }),
    ...(why !== '' && { why }),
    ...(cooledBy !== '' && { cooledBy }),
    ...(time?.clock && time.coldBy !== undefined && { coldBy: clockOf(time.coldBy) }),
    ...(waitsIn !== '' && { waitsIn }),
    recipe: recipe.id,
    recipeName: recipe.name,
    batches: batchesText(batches, setting.system),
    makes: amountText(timesQuantity(recipe.makes[0], batches), setting.system, 'line').printed,
  };
}
