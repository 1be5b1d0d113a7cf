import { isAtPlace, type Recipe } from './recipe.ts';

/** Whether all of a recipe is made at the place, so that nothing of it is packed as finished. */
export function isMadeThere({ steps }: Pick<Recipe, 'steps'>): boolean {
  return steps.length > 0 && steps.every(isAtPlace);
}
