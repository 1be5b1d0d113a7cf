import { addDays, compareDays, type Day, daysBetween } from '../calendar/day.ts';
import type { Recipe } from '../food/recipe.ts';
import { partsFirst } from '../food/walk.ts';

/** When a recipe's food is made, and the last day on which it may be served. */
export interface DateMark {
  readonly madeOn: Day;
  /** Undefined where it rests on how long something keeps that nobody has stated: then a person decides. */
  readonly useBy: Day | undefined;
  /** The last day that the food code and what is stated allow in any case; undefined where nothing sets one. */
  readonly atTheLatest: Day | undefined;
  /** The recipes whose keeping it rests on and is not stated: the dish itself, or parts made on a day before. */
  readonly notStated: readonly Recipe[];
}

/**
 * The date mark of a recipe made for an event, from its steps. Made on: the day of its first step. Use by: that
 * day and the days it keeps, day 1 included, at most `mostDaysCold` (FDA Food Code 3-501.17) where it is kept cold or
 * hot and needs it; and never later than the use-by of a part made ahead, since a mixture takes the date of its
 * earliest part. A part that is frozen stands still on the day of its last step and goes on with the next day when
 * it is thawed, the first day of what it goes into. Food that needs no heat or cold, and a frozen dish, have only the
 * limit that their recipe states; where it states none, there is no use-by: nothing is made up.
 */
export function dateMark(recipe: Recipe, eventDate: Day, mostDaysCold: number): DateMark {
  const marks = new Map<string, Marked>();
  for (const part of partsFirst([recipe])) {
    const madeOn = firstDay(part, eventDate);
    const parts = part.lines.flatMap(({ item }) =>
      item.kind === 'recipe' ? [marks.get(item.recipe.id) as Marked] : [],
    );
    // What is made on the same day keeps as long as what it goes into is stated to.
    const ahead = parts.filter((each) => each.madeOn < madeOn);
    const notStated = new Set(ahead.flatMap((each) => [...each.notStated]));
    if (part.keepsDays === undefined) notStated.add(part);
    const limits = parts.flatMap((each) => each.ifThawed(madeOn) ?? []);
    marks.set(part.id, { ...limited(part, madeOn, limits, eventDate, mostDaysCold), madeOn, notStated });
  }
  const { madeOn, latest, notStated } = marks.get(recipe.id) as Marked;
  return {
    madeOn,
    useBy: notStated.size === 0 ? latest : undefined,
    atTheLatest: latest,
    notStated: [...notStated],
  };
}

interface Marked extends Limited {
  readonly madeOn: Day;
  readonly notStated: ReadonlySet<Recipe>;
}

interface Limited {
  /** The last day by all that is known of it; undefined where nothing sets one. */
  readonly latest: Day | undefined;
  /** The same in a dish begun on a day. */
  readonly ifThawed: (on: Day) => Day | undefined;
}

function limited(
  part: Recipe,
  madeOn: Day,
  ofParts: readonly Day[],
  eventDate: Day,
  mostDaysCold: number,
): Limited {
  const stated = part.keepsDays === undefined ? [] : [addDays(madeOn, part.keepsDays - 1)];
  const inTheCold = part.temperatureControl === false ? stated : [addDays(madeOn, mostDaysCold - 1)];
  if (part.hold !== 'frozen') {
    const needsIt = part.hold === 'hot' || part.hold === 'cold';
    const latest = earliest([...ofParts, ...stated, ...(needsIt ? inTheCold : [])]);
    return { latest, ifThawed: () => latest };
  }
  const frozenOn = lastDay(part, eventDate);
  const runsOut = earliest([...ofParts, ...inTheCold]);
  const left = runsOut === undefined ? undefined : daysBetween(frozenOn, runsOut);
  const latest = earliest([...stated, ...(left !== undefined && left < 0 ? [addDays(frozenOn, left)] : [])]);
  return {
    latest,
    ifThawed: (on) =>
      part.temperatureControl === false || left === undefined
        ? latest
        : earliest([...(latest === undefined ? [] : [latest]), addDays(on, left - 1)]),
  };
}

function earliest(days: readonly Day[]): Day | undefined {
  return [...days].sort(compareDays)[0];
}

function firstDay(recipe: Recipe, eventDate: Day): Day {
  return addDays(eventDate, -Math.max(0, ...recipe.steps.map((step) => step.when.daysBefore)));
}

function lastDay(recipe: Recipe, eventDate: Day): Day {
  const { steps } = recipe;
  return addDays(eventDate, steps.length === 0 ? 0 : -Math.min(...steps.map((step) => step.when.daysBefore)));
}
