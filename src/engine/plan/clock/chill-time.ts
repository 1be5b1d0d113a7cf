import type { Recipe } from '../../food/recipe.ts';
import { usualChill } from '../../food/usual-chill.ts';
import type { Container } from '../../kitchen/container.ts';
import { isCooled } from '../../safety/cooling.ts';
import { heatSteps } from '../../safety/heat-steps.ts';
import { rawFoodIn } from '../../safety/raw-food.ts';

/**
 * After which step of a recipe its food is cooled, by position from 0, and how many minutes it takes to be cold: as the
 * recipe states, else as usual for what it is chilled in; not known where it is chilled in nothing. Undefined for food that is not cooked and then cooled.
 */
export function chillAfter(
  recipe: Recipe,
  containers: ReadonlyMap<string, Container>,
): { readonly index: number; readonly minutes: number | undefined } | undefined {
  if (!isCooled(recipe)) return undefined;
  const { cooking } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
  const last = cooking.at(-1);
  if (!last) return undefined;
  return { index: last.index, minutes: recipe.chill ?? usualChill(recipe, containers) };
}
