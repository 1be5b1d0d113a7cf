import { addDays, compareDays, type Day, daysBetween } from '../calendar/day.ts';
import type { Recipe } from '../food/recipe.ts';
import { partsFirst } from '../food/walk.ts';

/** When a recipe's food is made, and the last day on which it may be served. */
export interface DateMark {
  readonly madeOn: Day;
  readonly useBy: Day;
}

/** Used where a recipe says nothing of how long food keeps that needs no cold. */
const A_YEAR = 365;

/**
 * The date mark of a recipe made for an event, from its steps. Made on: the day of its first step. Use by: that
 * day and the days it keeps, day 1 included, at most `mostDaysCold` (FDA Food Code 3-501.17) where it is kept cold or
 * hot and needs it; and never later than the use-by of a part made ahead, since a mixture takes the date of its
 * earliest part. A part that is frozen stands still on the day of its last step and goes on with the next day when
 * it is thawed, the first day of what it goes into. Food that needs no heat or cold, and a frozen dish, have only the
 * limit that their recipe states.
 */
export function dateMark(recipe: Recipe, eventDate: Day, mostDaysCold: number): DateMark {
  const marks = new Map<string, { useBy: Day; ifThawed: (on: Day) => Day }>();
  for (const part of partsFirst([recipe])) {
    const madeOn = firstDay(part, eventDate);
    const limits = part.lines.flatMap(({ item }) =>
      item.kind === 'recipe' ? [(marks.get(item.recipe.id) as Marked).ifThawed(madeOn)] : [],
    );
    marks.set(part.id, marked(part, madeOn, limits, eventDate, mostDaysCold));
  }
  return { madeOn: firstDay(recipe, eventDate), useBy: (marks.get(recipe.id) as Marked).useBy };
}

interface Marked {
  readonly useBy: Day;
  /** Its use-by in a dish begun on a day. */
  readonly ifThawed: (on: Day) => Day;
}

function marked(
  part: Recipe,
  madeOn: Day,
  ofParts: readonly Day[],
  eventDate: Day,
  mostDaysCold: number,
): Marked {
  const stated = addDays(madeOn, (part.keepsDays ?? A_YEAR) - 1);
  const inTheCold = part.temperatureControl === false ? stated : addDays(madeOn, mostDaysCold - 1);
  if (part.hold !== 'frozen') {
    const needsIt = part.hold === 'hot' || part.hold === 'cold';
    const useBy = earliest([...ofParts, stated, ...(needsIt ? [inTheCold] : [])]);
    return { useBy, ifThawed: () => useBy };
  }
  const frozenOn = lastDay(part, eventDate);
  const left = daysBetween(frozenOn, earliest([...ofParts, inTheCold]));
  const useBy = earliest([stated, ...(left < 0 ? [addDays(frozenOn, left)] : [])]);
  return {
    useBy,
    ifThawed: (on) => (part.temperatureControl === false ? useBy : earliest([useBy, addDays(on, left - 1)])),
  };
}

function earliest(days: readonly Day[]): Day {
  return [...days].sort(compareDays)[0] as Day;
}

function firstDay(recipe: Recipe, eventDate: Day): Day {
  return addDays(eventDate, -Math.max(0, ...recipe.steps.map((step) => step.when.daysBefore)));
}

function lastDay(recipe: Recipe, eventDate: Day): Day {
  const { steps } = recipe;
  return addDays(eventDate, steps.length === 0 ? 0 : -Math.min(...steps.map((step) => step.when.daysBefore)));
}
