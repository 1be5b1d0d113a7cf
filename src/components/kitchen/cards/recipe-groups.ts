import type { PlanRecipe } from '../../../exports/form/food.ts';

/** A recipe with those that are made separately from it for guests who need it. */
export interface RecipeGroup {
  readonly recipe: PlanRecipe;
  readonly separate: readonly PlanRecipe[];
}

/**
 * Recipes as cards show them: what is made separately stands on the card of the recipe that it is changed from, which its
 * id begins with. Where all of a recipe is made separately, the first stands for it.
 */
export function recipeGroups(recipes: readonly PlanRecipe[]): RecipeGroup[] {
  const groups = Map.groupBy(recipes, ({ id }) => id.split('--')[0]);
  return [...groups].flatMap(([base, own]) => {
    const recipe = own.find(({ id }) => id === base) ?? own[0];
    return recipe ? [{ recipe, separate: own.filter((each) => each !== recipe) }] : [];
  });
}

/** What differs from the recipe's own steps in how it is done. */
export function stepsBeside(recipe: PlanRecipe, separate: PlanRecipe): PlanRecipe['steps'] {
  return separate.steps.filter(({ text }) => !recipe.steps.some((step) => step.text === text));
}
