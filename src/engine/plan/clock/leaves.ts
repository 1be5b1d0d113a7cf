import type { Day } from '../../calendar/day.ts';
import { isAtPlace, type Recipe, type RecipeLine } from '../../food/recipe.ts';
import { cookedDishes } from '../cooked-dishes.ts';
import type { DayBatch } from '../days/day-batches.ts';
import type { ClockStep } from './clock-step.ts';

/**
 * The batches of which something goes on the road this very date: a dish, what travels beside one, what a step at the
 * place takes, and what nothing of the date takes. A part that is used up in the kitchen need not be cold.
 */
export function leaving(steps: readonly ClockStep[], date: Day): ReadonlySet<DayBatch> {
  const batches = [...new Set(steps.map(({ batch }) => batch))];
  const along = new Map<Recipe, boolean>();
  for (const into of new Set(batches.map(({ recipe }) => recipe)))
    for (const line of into.lines) {
      if (line.item.kind !== 'recipe') continue;
      const { recipe } = line.item;
      along.set(recipe, along.get(recipe) === true || isTakenAlong(recipe, line, into));
    }
  return new Set(
    batches.filter(({ recipe, events }) => along.get(recipe) !== false || isDish(recipe, events, date)),
  );
}

function isDish(recipe: Recipe, events: DayBatch['events'], date: Day): boolean {
  return events.some(
    ({ plan }) => plan.input.date === date && cookedDishes(plan).some(({ dish }) => dish.recipe === recipe),
  );
}

function isTakenAlong({ id }: Recipe, { steps = [0] }: RecipeLine, into: Recipe): boolean {
  const takenBy = into.steps.filter((_, at) => steps.includes(at));
  return into.beside?.includes(id) === true || takenBy.some(isAtPlace);
}
