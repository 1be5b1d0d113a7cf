import Fraction from 'fraction.js';
import { convert } from '../measure/conversions.ts';
import { finishedFoodConversions } from './finished-food.ts';
import type { Ingredient } from './ingredient.ts';
import type { Recipe } from './recipe.ts';

/** An ingredient of a finished dish and its weight in one batch, in grams; null where no conversion leads to one. */
export interface LabelIngredient {
  readonly ingredient: Ingredient;
  readonly grams: Fraction | null;
}

/**
 * The ingredients of a recipe down to the bottom, heaviest first, as food labels list them (21 CFR 101.4(a)(1):
 * descending order of predominance by weight; Regulation (EU) No 1169/2011, Article 18 the same). Weights are
 * those written in the lines, as the food goes in. Those whose weight no conversion gives come last, by name.
 */
export function ingredientsByWeight(recipe: Recipe): LabelIngredient[] {
  const found = new Map<string, { ingredient: Ingredient; grams: Fraction | null }>();
  gather(recipe, new Fraction(1n), found, new Set());
  return [...found.values()].sort((a, b) => {
    if (a.grams && b.grams) return b.grams.compare(a.grams) || byName(a.ingredient, b.ingredient);
    if (a.grams || b.grams) return a.grams ? -1 : 1;
    return byName(a.ingredient, b.ingredient);
  });
}

function gather(
  recipe: Recipe,
  batches: Fraction,
  found: Map<string, { ingredient: Ingredient; grams: Fraction | null }>,
  within: Set<string>,
): void {
  if (within.has(recipe.id)) throw new Error(`recipe ${recipe.id} contains itself`);
  within.add(recipe.id);
  for (const { item, amount } of recipe.lines) {
    const used = { unit: amount.unit, amount: amount.amount.mul(batches) };
    if (item.kind === 'recipe') {
      const [made] = item.recipe.makes;
      const as = convert(used, made.unit, finishedFoodConversions(item.recipe));
      // Without a way to the part's own unit its share is unknown; its ingredients are listed all the same.
      gather(item.recipe, as ? as.amount.div(made.amount) : new Fraction(0n), found, within);
      continue;
    }
    const { ingredient } = item;
    const weight = convert(used, 'g', ingredient.conversions)?.amount ?? null;
    const known = found.get(ingredient.id);
    const grams = known ? known.grams && weight && known.grams.add(weight) : weight;
    found.set(ingredient.id, { ingredient, grams });
  }
  within.delete(recipe.id);
}

function byName(a: Ingredient, b: Ingredient): number {
  return a.name < b.name ? -1 : a.name > b.name ? 1 : 0;
}
