import type { Day } from '../../../engine/calendar/day.ts';
import { isAtPlace } from '../../../engine/food/recipe.ts';
import { durationText, minutes } from '../../../engine/measure/duration.ts';
import type { Crew } from '../../../engine/menu/crew.ts';
import { crewText } from '../../../engine/plan/days/crew-text.ts';
import type { EventPlan } from '../../../engine/plan/event-plan.ts';
import type { Say } from '../../../words/words-in.ts';
import type { DayView } from './view.ts';

/**
 * Hands-on time in the kitchen of all events of a day, and by how much it is more than the crew has; null where
 * it is not stated who cooks. Each event's batches count as if made by themselves, so it is never too little.
 */
export function dayCrew(
  plans: readonly EventPlan[],
  date: Day,
  crew: Crew | undefined,
  say: Say,
): DayView['crew'] {
  if (!crew) return null;
  const handsOn = plans
    .flatMap(({ days }) => days.filter((day) => day.date === date).flatMap(({ tasks }) => tasks))
    .filter(({ step }) => !isAtPlace(step))
    .reduce((sum, task) => sum + task.handsOnMinutes, 0);
  const over = handsOn - crew.people * crew.each;
  return {
    text:
      handsOn === 0
        ? say('day.crew-no-work', { crew: crewText(crew) })
        : say('day.crew-work', { time: durationText(minutes(handsOn)), crew: crewText(crew) }),
    over: over > 0 ? say('day.crew-over', { time: durationText(minutes(over)) }) : '',
  };
}
