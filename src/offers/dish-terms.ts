import { allergenText } from '../engine/food/allergen.ts';
import { allergensOf } from '../engine/food/allergens-of.ts';
import { dietsOf } from '../engine/food/diets-of.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { perGuestText } from '../engine/measure/per-guest.ts';
import type { Dish } from '../engine/menu/package.ts';
import type { DishTerms } from '../engine/quote/terms.ts';

/** A dish as the client sees it: its amount by the head and what is known of the food. */
export function dishTerms(dish: Dish): DishTerms {
  return {
    recipe: dish.recipe.id,
    name: dish.recipe.name,
    perGuest: perGuestText(dish.perGuest),
    counts: dish.counts,
    ...recipeFacts(dish.recipe),
  };
}

/**
 * The diets a recipe suits (only where every ingredient down to the bottom says so) and its allergens, in the
 * words of content files, so that the names of either law can be made from them.
 */
export function recipeFacts(recipe: Recipe): Pick<DishTerms, 'marks' | 'contains' | 'mayContain'> {
  const { contains, mayContain } = allergensOf(recipe);
  return {
    marks: dietsOf(recipe)
      .filter((claim) => claim.suits === 'yes')
      .map((claim) => claim.diet),
    contains: contains.map((source) => allergenText(source.allergen)),
    mayContain: mayContain.map((source) => allergenText(source.allergen)),
  };
}
