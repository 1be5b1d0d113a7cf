import { allergensOf } from '../engine/food/allergens-of.ts';
import type { Dish } from '../engine/menu/package.ts';

/** Ingredients whose allergens nobody has said, by id, with the names of the dishes that hold them. */
export function unsaidAllergens(
  dishes: readonly Pick<Dish, 'recipe'>[],
): { readonly ingredient: string; readonly dishes: readonly string[] }[] {
  const found = new Map<string, Set<string>>();
  for (const { recipe } of dishes) {
    for (const path of allergensOf(recipe).unsaid) {
      const ingredient = path.at(-1) ?? recipe.id;
      found.set(ingredient, (found.get(ingredient) ?? new Set()).add(recipe.name));
    }
  }
  return [...found]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([ingredient, names]) => ({ ingredient, dishes: [...names] }));
}
