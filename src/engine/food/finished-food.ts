import { type Conversion, convert } from '../measure/conversions.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { Recipe } from './recipe.ts';

/** What finished food converts by: all that a batch makes is the same amount, `50 servings = 13 lb = 12 qt`. */
export function finishedFoodConversions({ makes }: Pick<Recipe, 'makes'>): readonly Conversion[] {
  const [batch, ...others] = makes;
  const conversions = known.get(makes) ?? others.map((other) => ({ left: batch, right: other }));
  known.set(makes, conversions);
  return conversions;
}

/** One list for what a recipe makes, since paths through conversions are kept with their list. */
const known = new WeakMap<Recipe['makes'], readonly Conversion[]>();

/** An amount of finished food in another unit, exactly; undefined where what the recipe makes does not say. */
export function convertFinishedFood(
  recipe: Pick<Recipe, 'makes'>,
  q: Quantity,
  unit: string,
): Quantity | undefined {
  return q.unit === unit ? q : convert(q, unit, finishedFoodConversions(recipe));
}
