import { type Hold, isAtPlace, type Recipe } from '../food/recipe.ts';

/** How food is kept on the way: as it is held, but hot food that is cooked or heated only at the place travels cold. */
export function travelsAs(recipe: Pick<Recipe, 'steps' | 'hold'>): Hold {
  const heatedThere = recipe.steps.some((step) => isAtPlace(step) && step.cookTo !== undefined);
  return recipe.hold === 'hot' && heatedThere ? 'cold' : recipe.hold;
}
