import { convertFinishedFood } from '../../../engine/food/finished-food.ts';
import type { Ingredient } from '../../../engine/food/ingredient.ts';
import type { LineItem, Recipe, RecipeLine } from '../../../engine/food/recipe.ts';
import { convert } from '../../../engine/measure/conversions.ts';
import { singular } from '../../../engine/measure/count-words.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import type { Quantity } from '../../../engine/measure/quantity.ts';
import type { PriceList } from '../../../engine/purchase/price-list.ts';
import type { RecipeText } from '../../../schema/recipe.ts';
import type { Path } from '../../files/place-of.ts';
import { suggestion } from '../../ledger.ts';
import type { Reading } from '../grammar/reading.ts';
import { readLineKey } from './line-key.ts';

/** What recipe lines are linked to. */
export interface Larder {
  readonly ingredients: ReadonlyMap<string, Ingredient>;
  /** The recipes linked so far: parts come before what they go into. */
  readonly recipes: ReadonlyMap<string, Recipe>;
  /** Ids of all recipe files, linked or not. */
  readonly recipeIds: ReadonlySet<string>;
  readonly prices: PriceList;
}

/** One line of a recipe, its amount in a unit that leads to what is bought or what the other recipe makes. */
export function linkRecipeLine(
  reading: Reading,
  key: string,
  text: RecipeText['ingredients'][string],
  larder: Larder,
): RecipeLine | undefined {
  const path = ['ingredients', key];
  const amount = reading.understand([...path, 'amount'], text.amount, parseQuantity);
  const { id, preparation, asPurchased } = readLineKey(key);
  const item = lineItem(reading, path, id, larder);
  if (!amount || !item) return undefined;
  const trimmed = item.kind === 'ingredient' && !asPurchased ? trimmedCount(amount, item.ingredient) : null;
  checkUnit(reading, [...path, 'amount'], trimmed ?? amount, item, larder.prices);
  const shared = { item, preparation, asPurchased, note: text.note };
  return trimmed ? { ...shared, amount: trimmed, trimmed: true } : { ...shared, amount };
}

/** The count in `8 trimmed heads` or `6 trimmed`; null where the food has a measure of its own called so. */
function trimmedCount({ amount, unit }: Quantity, { conversions }: Ingredient): Quantity | null {
  const words = unit.split(' ');
  if (!words.includes('trimmed')) return null;
  if (conversions.some(({ left, right }) => left.unit === unit || right.unit === unit)) return null;
  const rest = words.filter((word) => word !== 'trimmed').join(' ');
  return { amount, unit: rest === '' ? 'each' : singular(rest) };
}

/** The ingredient or recipe of an id; undefined, with a finding or held back, where there is none to be had. */
export function lineItem(
  reading: Reading,
  path: Path,
  id: string,
  larder: Larder,
  part: 'key' | 'value' = 'key',
): LineItem | undefined {
  const { ledger } = reading;
  const isRecipe = larder.recipeIds.has(id);
  const ingredient = larder.ingredients.get(id);
  if (isRecipe && (ingredient || ledger.held.has(`ingredient/${id}`))) {
    const what = `“${id}” is both an ingredient and a recipe`;
    reading.say('ambiguous-id', path, what, `rename recipes/${id}.mdx and every line that means it`, part);
    return undefined;
  }
  if (ingredient) return { kind: 'ingredient', ingredient };
  const recipe = larder.recipes.get(id);
  if (recipe) return { kind: 'recipe', recipe };
  if (ledger.held.has(`ingredient/${id}`)) reading.restOn(`ingredient/${id}`);
  else if (isRecipe) reading.restOn(`recipe/${id}`);
  else if (ledger.unreadable.has('ingredient')) reading.restOn(`ingredient/${id}`);
  else {
    const near = suggestion(ledger, id, [...larder.ingredients.keys(), ...larder.recipeIds]);
    const wayOut = near ?? 'add it in ingredients/, or as a recipe';
    reading.say('unknown-id', path, `no ingredient or recipe is called “${id}”`, wayOut, part);
  }
  return undefined;
}

/** Tells an amount in a unit that leads neither to what another recipe makes nor to any pack. */
export function checkUnit(
  reading: Reading,
  path: Path,
  amount: Quantity,
  item: LineItem,
  prices: PriceList,
): void {
  if (item.kind === 'recipe') {
    const { id, makes } = item.recipe;
    if (convertFinishedFood(item.recipe, amount, makes[0].unit)) return;
    const units = [...new Set(makes.map((each) => each.unit))].join(', ');
    const what = `“${id}” makes ${units}, and there is no conversion from ${amount.unit}`;
    const wayOut = `write the amount in ${units}, or add to the “makes” of ${id} what a batch is in ${amount.unit}`;
    reading.say('unit-not-reached', path, what, wayOut);
    return;
  }
  const { id, conversions } = item.ingredient;
  const packs = prices.get(id) ?? [];
  if (packs.length === 0) return;
  const units = [...new Set(packs.map((pack) => pack.contents.unit))];
  if (units.some((unit) => convert(amount, unit, conversions))) return;
  const what = `“${id}” is bought by the ${units.join(' or ')}, and there is no conversion from ${amount.unit}`;
  const wayOut = `add to the conversions of ${id} what 1 ${amount.unit} is, such as “1 ${amount.unit} = … ${units[0]}”`;
  reading.say('unit-not-reached', path, what, wayOut);
}
