import type { Day } from '../../calendar/day.ts';
import { isAtPlace, type Recipe, type RecipeLine } from '../../food/recipe.ts';
import type { ClockStep } from './clock-step.ts';

/**
 * Whether what a step makes goes on the road this very date: a dish, what travels beside one, what a step at the place
 * takes, and what nothing of the date takes. A part that is used up in the kitchen need not be cold.
 */
export function leaves({ batch }: ClockStep, steps: readonly ClockStep[], date: Day): boolean {
  const { recipe, events } = batch;
  const isDish = events.some(
    ({ plan }) => plan.input.date === date && plan.dishes.some(({ dish }) => dish.recipe === recipe),
  );
  const uses = steps.flatMap(({ batch: { recipe: into } }) =>
    into.lines
      .filter(({ item }) => item.kind === 'recipe' && item.recipe === recipe)
      .map((line) => isTakenAlong(recipe, line, into)),
  );
  return isDish || uses.length === 0 || uses.includes(true);
}

function isTakenAlong({ id }: Recipe, { steps = [0] }: RecipeLine, into: Recipe): boolean {
  const takenBy = into.steps.filter((_, at) => steps.includes(at));
  return into.beside?.includes(id) === true || takenBy.some(isAtPlace);
}
