import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { usesIn } from '../book/uses.ts';
import type { Day } from '../engine/calendar/day.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { dateMark } from '../engine/safety/date-mark.ts';

/**
 * Recipes in use of which nobody states how long they keep although the use-by of a label rests on it: dishes, what is
 * served beside them, and parts that are made on an earlier day.
 */
export function checkKeeping(book: Book): Finding[] {
  const { served } = usesIn(book);
  const { days } = book.kitchen.foodSafety.limits['date mark'];
  const asked = new Map<string, Recipe>();
  for (const recipe of book.recipes.values()) {
    if (!served.has(recipe.id)) continue;
    for (const each of [recipe, ...besideOf(recipe)])
      for (const unknown of dateMark(each, ANY_DAY, days).notStated)
        if (!standsForHours(unknown)) asked.set(unknown.id, unknown);
  }
  return [...asked.values()].map(({ id, hold, temperatureControl }) => {
    const needsCold = temperatureControl !== false && (hold === 'hot' || hold === 'cold');
    const what = `“${id}” does not state how long it keeps, so labels with it leave “Use by” blank`;
    const wayOut = `write “keeps:”, such as keeps: ${needsCold ? `3 days (at most ${days} where it needs the cold)` : '2 weeks'}, or fill in each label by hand`;
    return findingAt(book, 'keeps-not-stated', `recipe/${id}`, [], what, wayOut, 'key');
  });
}

/** Food that needs heat or cold and is held without: it keeps for hours, which `check` counts, and never for days. */
function standsForHours({ hold, temperatureControl }: Recipe): boolean {
  return hold === 'room' && temperatureControl !== false;
}

/** Which recipes a date rests on does not depend on the day. */
const ANY_DAY = '2001-01-01' as Day;

function besideOf({ beside = [], lines }: Recipe): Recipe[] {
  return lines.flatMap(({ item }) =>
    item.kind === 'recipe' && beside.includes(item.recipe.id) ? [item.recipe] : [],
  );
}
