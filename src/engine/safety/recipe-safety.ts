import type { Recipe } from '../food/recipe.ts';
import { cookingFindings } from './cooking.ts';
import { chillFindings, coolingFindings } from './cooling.ts';
import { holdingFindings } from './holding.ts';
import { reheatingFindings } from './reheating.ts';
import type { SafetyFinding, SafetySetting } from './safety-finding.ts';

/** Everything in one recipe that its food code asks otherwise, as far as the recipe tells. */
export function recipeSafety(recipe: Recipe, setting: SafetySetting): SafetyFinding[] {
  return [
    ...cookingFindings(recipe, setting),
    ...reheatingFindings(recipe, setting),
    ...coolingFindings(recipe, setting),
    ...chillFindings(recipe, setting),
    ...holdingFindings(recipe, setting),
  ];
}
