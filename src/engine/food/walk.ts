import type { Ingredient } from './ingredient.ts';
import type { Recipe } from './recipe.ts';

/**
 * All recipes that these use, themselves included, each once, parts before what they go into: the order in
 * which a kitchen can cook them. Recipes are distinguished by id. A recipe that contains itself is refused by the
 * Book; met here it throws an Error that names the ring.
 */
export function partsFirst(recipes: Iterable<Recipe>): Recipe[] {
  const ordered: Recipe[] = [];
  const state = new Map<string, 'open' | 'done'>();
  const trail: string[] = [];
  const visit = (recipe: Recipe): void => {
    const seen = state.get(recipe.id);
    if (seen === 'done') return;
    if (seen === 'open') {
      const ring = [...trail.slice(trail.indexOf(recipe.id)), recipe.id];
      throw new Error(`recipe ${recipe.id} contains itself: ${ring.join(' → ')}`);
    }
    state.set(recipe.id, 'open');
    trail.push(recipe.id);
    for (const line of recipe.lines) if (line.item.kind === 'recipe') visit(line.item.recipe);
    trail.pop();
    state.set(recipe.id, 'done');
    ordered.push(recipe);
  };
  for (const recipe of recipes) visit(recipe);
  return ordered;
}

/** Every ingredient of a recipe down to the bottom, each once, in the order in which recipe lines name them. */
export function ingredientsOf(recipe: Recipe): Ingredient[] {
  const found = new Map<string, Ingredient>();
  for (const part of partsFirst([recipe]))
    for (const { item } of part.lines)
      if (item.kind === 'ingredient') found.set(item.ingredient.id, item.ingredient);
  return [...found.values()];
}
