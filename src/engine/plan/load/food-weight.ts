import type Fraction from 'fraction.js';
import { convertFinishedFood, finishedFoodConversions } from '../../food/finished-food.ts';
import type { Recipe } from '../../food/recipe.ts';
import { convert } from '../../measure/conversions.ts';
import type { Quantity } from '../../measure/quantity.ts';
import type { PackedFood } from './packed-food.ts';

/**
 * What an amount of a food on the van weighs, in grams: as its recipe or its ingredient states it; where only its volume is
 * known, as much as water, which a stew or a sauce is close to; of a recipe that states neither, what goes into it, so that
 * what it lost in cooking is still counted. Undefined where none of that is known.
 */
export function foodGrams(food: PackedFood, amount: Quantity): Fraction | undefined {
  if (food.kind === 'dish') return recipeGrams(food.planned.dish.recipe, amount);
  const { item } = food.component.line;
  return item.kind === 'recipe'
    ? recipeGrams(item.recipe, amount)
    : gramsOf(amount, item.ingredient.conversions);
}

function recipeGrams(recipe: Recipe, amount: Quantity): Fraction | undefined {
  const stated = gramsOf(amount, finishedFoodConversions(recipe));
  if (stated) return stated;
  const share = convertFinishedFood(recipe, amount, recipe.makes[0].unit)?.amount.div(recipe.makes[0].amount);
  if (!share) return undefined;
  let sum: Fraction | undefined;
  for (const { item, amount: each } of recipe.lines) {
    const grams =
      item.kind === 'recipe' ? recipeGrams(item.recipe, each) : gramsOf(each, item.ingredient.conversions);
    if (!grams) return undefined;
    sum = sum ? sum.add(grams) : grams;
  }
  return sum?.mul(share);
}

/** By weight where conversions lead there, else a volume as if it were water. */
function gramsOf(amount: Quantity, conversions: Parameters<typeof convert>[2]): Fraction | undefined {
  const known = convert(amount, 'g', conversions);
  if (known) return known.amount;
  // A milliliter of water weighs a gram.
  return convert(amount, 'ml', conversions)?.amount;
}
