import { allergenText } from '../../engine/food/allergen.ts';
import { allergensOf } from '../../engine/food/allergens-of.ts';
import { DIETS } from '../../engine/food/diet.ts';
import { dietsOf } from '../../engine/food/diets-of.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import { changesIn, needsOnRequest } from '../../engine/food/variant.ts';
import { perGuestText } from '../../engine/measure/per-guest.ts';
import type { Dish } from '../../engine/menu/package.ts';
import type { AddOnTerms, DishTerms, Terms } from '../../engine/quote/terms.ts';

/** A dish as the client sees it: its per-guest amount and what is known of the food. */
export function dishTerms(dish: Dish): DishTerms {
  const role = dish.role ?? dish.recipe.role;
  return {
    recipe: dish.recipe.id,
    name: dish.recipe.name,
    perGuest: perGuestText(dish.perGuest),
    counts: dish.counts,
    ...(role && { role }),
    ...(dish.insteadOf && { insteadOf: dish.insteadOf }),
    ...recipeFacts(dish.recipe),
  };
}

/** What is known of the food of a dish, as terms freeze it. */
export type FoodFacts = Pick<DishTerms, 'marks' | 'contains' | 'mayContain' | 'onRequest' | 'unsaid'>;

/**
 * The diets a recipe suits (only where every ingredient down to the bottom says so), its allergens, in the words of
 * content files, so that the names of either law can be made from them, and the needs for which it can be made separately.
 */
export function recipeFacts(recipe: Recipe): FoodFacts {
  const facts = known.get(recipe) ?? gatherFacts(recipe);
  known.set(recipe, facts);
  return facts;
}

/** Facts of a recipe: every offer that has it asks for them, and a recipe, once linked, never changes. */
const known = new WeakMap<Recipe, FoodFacts>();

function gatherFacts(recipe: Recipe): FoodFacts {
  const { contains, mayContain, unsaid } = allergensOf(recipe);
  const onRequest = changesIn(recipe).length === 0 ? [] : needsOnRequest(recipe, DIETS);
  return {
    marks: dietsOf(recipe)
      .filter((claim) => claim.suits === 'yes')
      .map((claim) => claim.diet),
    contains: contains.map((source) => allergenText(source.allergen)),
    mayContain: mayContain.map((source) => allergenText(source.allergen)),
    ...(onRequest.length > 0 ? { onRequest } : {}),
    ...(unsaid.length > 0 ? { unsaid: true as const } : {}),
  };
}

/** Every dish of the terms by its recipe's id: those of the menus and the food of the add-ons. */
export function offeredFood(terms: Pick<Terms, 'packages' | 'addOns'>): Map<string, DishTerms> {
  const dishes = new Map<string, DishTerms>();
  const add = ({ dishes: food = [] }: Pick<AddOnTerms, 'dishes'>) => {
    for (const dish of food) dishes.set(dish.recipe, dish);
  };
  for (const { courses } of terms.packages) courses.forEach(add);
  terms.addOns.forEach(add);
  return dishes;
}
