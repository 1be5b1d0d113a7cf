import type { Day } from '../../calendar/day.ts';
import { isAtPlace } from '../../food/recipe.ts';
import { coldLoad } from '../days/cold-room.ts';
import type { EventPlan } from '../event-plan.ts';
import type { ClockKitchen } from './kitchen-steps.ts';

/** Whether a day's hands-on work is within what the crew has, and all that stands in the cold goes into the cold room. */
export function hasRoom(
  plans: readonly EventPlan[],
  date: Day,
  { crew, equipment }: Pick<ClockKitchen, 'crew' | 'equipment'>,
): boolean {
  const { share } = coldLoad(plans, date, equipment);
  if (share?.gt(1n)) return false;
  const handsOn = plans
    .flatMap(({ days }) => days.filter((day) => day.date === date).flatMap(({ tasks }) => tasks))
    .filter(({ step }) => !isAtPlace(step))
    .reduce((sum, task) => sum + task.handsOnMinutes, 0);
  return !crew || handsOn <= crew.people * crew.each;
}
