import type { Recipe } from '../engine/food/recipe.ts';
import type { AddOn, Kitchen } from '../engine/kitchen/kitchen.ts';
import { parseAddOnPrice } from '../engine/quote/add-on-price.ts';
import { parseCounts } from '../engine/quote/counts.ts';
import type { KitchenText } from '../schema/kitchen.ts';
import { linkDishes } from './link-dish.ts';
import type { Reading } from './reading.ts';

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
  const { name, price, cost } = text;
  return { id, name, class: text.class, price, counts, dishes, ...(cost !== undefined && { cost }) };
}
