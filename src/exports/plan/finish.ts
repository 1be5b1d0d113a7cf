import type { Recipe } from '../../engine/food/recipe.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { EventPlan } from '../../engine/plan/event-plan.ts';
import { stepWords } from '../words/step-words.ts';

/** How a recipe of an event is finished on site, for the batches cooked of it; empty where that is not stated. */
export function finishWords(
  { recipes }: Pick<EventPlan, 'recipes'>,
  { id, finish }: Recipe,
  system: MeasureSystem,
): string {
  const planned = recipes.find(({ recipe }) => recipe.id === id);
  if (finish === undefined || !planned) return finish ?? '';
  return stepWords(finish, planned.batches, system);
}
