import { addDays, type Day } from '../calendar/day.ts';
import type { Recipe } from '../food/recipe.ts';
import { partsFirst } from '../food/walk.ts';

/**
 * The most days that ready-to-eat food may be kept at 41 °F (5 °C) or below, the day it is made counted as day 1:
 * FDA Food Code 3-501.17 (2022 edition; not read in full, so from the adoptions by states). Local codes differ.
 */
export const MOST_DAYS_COLD = 7;

/** When a recipe's food is made, and the last day on which it may be served. */
export interface DateMark {
  readonly madeOn: Day;
  readonly useBy: Day;
}

/**
 * The date mark of a recipe made for an event, from its steps. Made on: the day of its first step. Use by: that
 * day and the days it keeps, day 1 included, at most {@link MOST_DAYS_COLD}; and never later than the use-by of a
 * part made ahead, since a mixture takes the date of its earliest part (3-501.17). Food kept at room temperature or
 * frozen has only the limit that its recipe states.
 */
export function dateMark(recipe: Recipe, eventDate: Day): DateMark {
  const useBy = new Map<string, Day>();
  for (const part of partsFirst([recipe])) {
    const limits = part.lines.flatMap(({ item }) =>
      item.kind === 'recipe' ? [useBy.get(item.recipe.id) as Day] : [],
    );
    limits.push(addDays(madeOnDay(part, eventDate), daysKept(part) - 1));
    useBy.set(
      part.id,
      limits.reduce((a, b) => (a < b ? a : b)),
    );
  }
  return { madeOn: madeOnDay(recipe, eventDate), useBy: useBy.get(recipe.id) as Day };
}

function madeOnDay(recipe: Recipe, eventDate: Day): Day {
  return addDays(eventDate, -Math.max(0, ...recipe.steps.map((step) => step.when.daysBefore)));
}

function daysKept(recipe: Recipe): number {
  const stated = recipe.keepsDays;
  if (recipe.hold === 'hot' || recipe.hold === 'cold')
    return Math.min(stated ?? MOST_DAYS_COLD, MOST_DAYS_COLD);
  return stated ?? 365;
}
