import type { Day } from '../../../engine/calendar/day.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { Crew } from '../../../engine/menu/crew.ts';
import { crewText, overfull } from '../../../engine/plan/days/work-day-fit.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import type { DayView } from '../view.ts';

/**
 * Hands-on time in the kitchen of all events of a day, and by how much it is more than the crew has; null where
 * nobody has said who cooks. Each event's batches count as if made by themselves, so it is never too little.
 */
export function dayCrew(plans: readonly EventPlan[], date: Day, crew: Crew | undefined): DayView['crew'] {
  if (!crew) return null;
  const handsOn = plans
    .flatMap(({ days }) => days.filter((day) => day.date === date).flatMap(({ tasks }) => tasks))
    .filter(({ step }) => !step.when.atServing)
    .reduce((sum, task) => sum + task.handsOnMinutes, 0);
  const over = overfull({ daysBefore: 0, handsOn, span: 0 }, crew);
  return {
    text: `${durationText(minutes(handsOn)) || 'nothing'} of hands-on kitchen work for all events; the crew has ${crewText(crew)}`,
    over: over
      ? `${durationText(minutes(over.byHands))} more than the crew has: move work to another day or bring in more people`
      : '',
  };
}
