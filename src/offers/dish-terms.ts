import { allergenText } from '../engine/food/allergen.ts';
import { allergensOf } from '../engine/food/allergens-of.ts';
import { dietsOf } from '../engine/food/diets-of.ts';
import { perGuestText } from '../engine/measure/per-guest.ts';
import type { Dish } from '../engine/menu/package.ts';
import type { DishTerms } from '../engine/quote/terms.ts';

/**
 * A dish as the client sees it: its amount by the head, the diets it suits (only where every ingredient down to
 * the bottom says so) and its allergens in the words of content files, so that either law's names can be made.
 */
export function dishTerms(dish: Dish): DishTerms {
  const { contains, mayContain } = allergensOf(dish.recipe);
  return {
    recipe: dish.recipe.id,
    name: dish.recipe.name,
    perGuest: perGuestText(dish.perGuest),
    counts: dish.counts,
    marks: dietsOf(dish.recipe)
      .filter((claim) => claim.suits === 'yes')
      .map((claim) => claim.diet),
    contains: contains.map((source) => allergenText(source.allergen)),
    mayContain: mayContain.map((source) => allergenText(source.allergen)),
  };
}
