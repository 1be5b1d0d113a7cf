import type { Recipe } from '../food/recipe.ts';
import { ingredientsOf } from '../food/walk.ts';
import { heldTemperatureText } from '../measure/temperature.ts';
import { heatSteps } from './heat-steps.ts';
import { citation, DEFERRAL, type LimitNameOf, rungMet, rungText } from './limit.ts';
import { rawFoodIn } from './raw-food.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** The limit by which a recipe's food is heated again: bought ready-to-eat food, and nothing else in it, needs less. */
export function reheatingLimit(recipe: Recipe): LimitNameOf<'cooking'> {
  const all = ingredientsOf(recipe);
  return all.length > 0 && all.every(({ soldAs }) => soldAs === 'ready to eat')
    ? 'reheating ready-to-eat food'
    : 'reheating';
}

/** Food that is cooked ahead and then not heated again as its limit asks. */
export function reheatingFindings(recipe: Recipe, { rules, scale }: SafetySetting): SafetyFinding[] {
  if (recipe.temperatureControl === false) return [];
  const { reheating, needsReheating } = heatSteps(recipe, rawFoodIn(recipe).length > 0);
  const name = reheatingLimit(recipe);
  const limit = rules.limits[name];
  if (!needsReheating || (reheating && rungMet(limit, reheating.cookTo))) return [];
  const asked = rungText(limit.rungs[0], scale);
  const source = citation(rules, name);
  const what = reheating
    ? `is reheated to ${heldTemperatureText(reheating.cookTo)}, but ${source} requires ${asked}`
    : `is cooked ahead and reheated, but no step after cooking states a temperature; ${source} requires ${asked}`;
  return [
    {
      code: 'reheat-low',
      at: reheating ? ['steps', reheating.index, 'cook to'] : recipe.reheat ? ['reheat'] : ['hold'],
      what,
      wayOut: `write “cook to: ${asked}” in the step that reheats it${recipe.reheat ? ', or leave out “reheat” if it stays hot' : ''}; ${DEFERRAL}`,
    },
  ];
}
