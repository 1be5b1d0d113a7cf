import type { Day } from '../../calendar/day.ts';
import { writtenId } from '../../food/variant.ts';
import type { DayBatch } from '../days/day-batches.ts';
import type { FullDay } from '../event-input.ts';

/** Why a batch is made on an earlier day, how many days before, and the date that had no room for it; undefined where it is made when its recipe says. */
export function earlierWork({
  recipe,
  events,
}: DayBatch): { readonly because: FullDay; readonly days: number; readonly date: Day } | undefined {
  const input = events[0]?.plan.input;
  const work = input?.earlier?.find((each) => each.recipe === writtenId(recipe.id));
  return input && work && { because: work.because, days: work.days ?? 1, date: input.date };
}
