import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { parseNeed } from '../engine/food/need.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { recipeSuits, variantFor } from '../engine/food/variant.ts';
import type { DishTerms } from '../engine/quote/terms.ts';
import type { Offer } from '../schema/offer.ts';
import { offeredFood, recipeFacts } from './dish-terms.ts';

/** What is known now of a dish that was offered differently. */
export interface DishCorrection {
  readonly recipe: string;
  readonly dish: string;
  /** Allergens it contains that the offer did not say, in the words of content files. */
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Diets the offer claimed that it no longer supports; `vegan on request` for what it could be made for. */
  readonly lostMarks: readonly string[];
  /** True where nobody says any longer which allergens some ingredient contains: anything may be in it. */
  readonly unsaid?: true;
  /** The day on which the client was told of all of it; missing before. */
  readonly toldOn?: Day;
}

/**
 * Where the food facts of an issued offer have become unsafe to rely on: allergens added since, diets no longer
 * supported, needs for which a dish can no longer be made, allergens that nobody says any longer. Nothing else of an offer ever changes; less harmful
 * facts, such as an allergen taken out, stay frozen. A dish whose recipe cannot be read now has no correction:
 * nothing newer is known.
 */
export function correctionsTo(offer: Pick<Offer, 'terms'>, book: Pick<Book, 'recipes'>): DishCorrection[] {
  return [...offeredFood(offer.terms).values()].flatMap((dish) => {
    const recipe = book.recipes.get(dish.recipe);
    if (!recipe) return [];
    const now = recipeFacts(recipe);
    const contains = now.contains.filter((each) => !dish.contains.includes(each));
    const known = [...dish.contains, ...dish.mayContain];
    const mayContain = now.mayContain.filter((each) => !known.includes(each));
    const lostMarks = [
      ...dish.marks.filter((mark) => !now.marks.includes(mark)),
      ...(dish.onRequest ?? []).filter((need) => !canEat(recipe, need)).map(onRequestText),
    ];
    const unsaid = now.unsaid === true && dish.unsaid !== true;
    if (contains.length + mayContain.length + lostMarks.length === 0 && !unsaid) return [];
    const unknown = unsaid ? { unsaid } : {};
    return [{ recipe: dish.recipe, dish: dish.name, contains, mayContain, lostMarks, ...unknown }];
  });
}

/** Whether a recipe suits a need, as it is or made apart. */
function canEat(recipe: Recipe, text: string): boolean {
  const need = parseNeed(text);
  if (!need.ok) return false;
  return recipeSuits(recipe, need.value) === 'yes' || variantFor(recipe, need.value) !== undefined;
}

/** A dish of an offer with everything harmful that is known of it now. */
export function correctedDish(dish: DishTerms, corrections: readonly DishCorrection[]): DishTerms {
  const found = corrections.find((each) => each.recipe === dish.recipe);
  if (!found) return dish;
  const contains = [...dish.contains, ...found.contains];
  const onRequest = dish.onRequest?.filter((need) => !found.lostMarks.includes(onRequestText(need)));
  return {
    ...dish,
    marks: dish.marks.filter((mark) => !found.lostMarks.includes(mark)),
    contains,
    mayContain: [...dish.mayContain, ...found.mayContain].filter((each) => !contains.includes(each)),
    ...(onRequest ? { onRequest } : {}),
    ...(found.unsaid ? { unsaid: true as const } : {}),
  };
}

/** How a need that a dish can be made for is shown: `vegan on request`. */
export function onRequestText(need: string): string {
  return `${need} on request`;
}
