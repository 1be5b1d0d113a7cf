import type { Recipe } from '../../../engine/food/recipe.ts';
import type { AddOn, Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { parseAddOnPrice } from '../../../engine/quote/add-on-price.ts';
import { parseCounts } from '../../../engine/quote/counts.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { linkDrinks } from '../drinks/drinks.ts';
import type { Reading } from '../grammar/reading.ts';
import { linkDishes } from './dish.ts';

/** What a client may add, with the food that comes with it. */
export function linkAddOn(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['add-ons']>[string],
  { currency, counts: usual }: Pick<Kitchen, 'currency' | 'counts'>,
  recipes: ReadonlyMap<string, Recipe>,
): AddOn | undefined {
  reading.understand(['price'], text.price, (words) => parseAddOnPrice(words, currency));
  if (text.cost !== undefined)
    reading.understand(['cost'], text.cost, (words) => parseAddOnPrice(words, currency));
  const counts = text.counts === undefined ? usual : reading.understand(['counts'], text.counts, parseCounts);
  if (counts === undefined) return undefined;
  const dishes = linkDishes(reading, ['dishes'], text.dishes ?? {}, counts, recipes, currency);
  for (const { recipe, insteadOf } of dishes) {
    if (!insteadOf) continue;
    const what = 'the food of an add-on can’t replace a dish, because no guest depends on it for a meal';
    const wayOut = 'delete “instead of”, or put the dish in a course of a package';
    reading.say('course-choice', ['dishes', recipe.id, 'instead of'], what, wayOut, 'key');
  }
  const { name, price, cost } = text;
  const drinks = text.drinks && linkDrinks(reading, text.drinks, { hours: undefined, counts, recipes, name });
  return {
    id,
    name,
    class: text.class,
    price,
    counts,
    dishes: drinks ? [...dishes, ...drinks.course.dishes] : dishes,
    ...(drinks && { drinks: drinks.drinks }),
    ...(cost !== undefined && { cost }),
  };
}
