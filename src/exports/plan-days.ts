import { daysBeforeText } from '../engine/calendar/offset.ts';
import { durationText, minutes } from '../engine/measure/duration.ts';
import { timesQuantity } from '../engine/measure/quantity.ts';
import type { MeasureSystem } from '../engine/measure/units.ts';
import type { PlannedDay, PlannedTask } from '../engine/plan/event-plan.ts';
import { amountText } from './amount-text.ts';
import { batchesText } from './batches-text.ts';
import { dateText } from './date-text.ts';
import { planStep } from './plan-recipe.ts';
import type { PlanDay, PlanTask } from './prep-plan-document.ts';

/** A planned day as the plan lists it, tasks in their order. */
export function planDay(
  day: PlannedDay,
  event: string,
  system: MeasureSystem,
  locale: string,
  stations: ReadonlyMap<string, string>,
): PlanDay {
  const handsOn = day.tasks.reduce((sum, task) => sum + task.handsOnMinutes, 0);
  return {
    date: day.date,
    dateText: dateText(day.date, locale),
    when: daysBeforeText(day.daysBefore),
    handsOn: durationText(minutes(handsOn)),
    tasks: day.tasks.map((task) => planTask(task, event, system, stations)),
  };
}

function planTask(
  task: PlannedTask,
  event: string,
  system: MeasureSystem,
  stations: ReadonlyMap<string, string>,
): PlanTask {
  const { recipe, batches } = task;
  return {
    ...planStep(task.step, task.number, stations, task.handsOnMinutes),
    id: `${event}.${recipe.id}.${task.number}`,
    recipe: recipe.id,
    recipeName: recipe.name,
    batches: batchesText(batches),
    makes: amountText(timesQuantity(recipe.makes[0], batches), system, 'line').printed,
  };
}
