import Fraction from 'fraction.js';
import { convert } from '../measure/conversions.ts';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import { losesTrim } from './as-bought.ts';
import { convertFinishedFood } from './finished-food.ts';
import type { Ingredient } from './ingredient.ts';
import type { BatchRule, Recipe, RecipeLine } from './recipe.ts';
import { partsFirst } from './walk.ts';
import { type Yield, yieldOf } from './yield.ts';

/** So much finished food that somebody needs: a dish, or a recipe it goes into. */
export interface FoodNeed {
  readonly recipe: Recipe;
  readonly need: Quantity;
  /** Who needs it, for the reader: the name of a dish or of a recipe. */
  readonly by: string;
}

/** A recipe as it must be cooked to meet all its needs. */
export interface ExplodedRecipe {
  readonly recipe: Recipe;
  /** Each need in the batch's unit, exact. */
  readonly usedBy: readonly { readonly by: string; readonly need: Quantity }[];
  /** The sum of the needs, exact. */
  readonly need: Quantity;
  readonly exactBatches: Fraction;
  /** The batches cooked, after the rounding asked for. */
  readonly batches: Fraction;
  readonly makes: Quantity;
  /** The recipe's lines times the batches cooked. */
  readonly lines: readonly { readonly line: RecipeLine; readonly amount: Quantity }[];
}

/** What one recipe line needs of an ingredient. */
export interface IngredientUse {
  readonly recipe: Recipe;
  readonly line: RecipeLine;
  /** As the line writes it, times the batches. */
  readonly amount: Quantity;
  readonly yield: Yield;
  /** As purchased where its trim is lost: amount ÷ share left, exact, in the line's unit. */
  readonly asPurchased: Quantity;
}

/**
 * What a use comes to as bought in a unit, exact: its amount, divided by the share left where the way there loses
 * its trim. Undefined where no conversion of the food leads there.
 */
export function purchasedIn(
  { line, amount, asPurchased, yield: { share } }: IngredientUse,
  unit: string,
  { conversions }: Ingredient,
): Quantity | undefined {
  const loses = !share.equals(1n) && losesTrim(line, unit, conversions);
  return convert(loses ? asPurchased : amount, unit, conversions);
}

/** An amount that could not be calculated: no conversion leads to the unit it is needed in. */
export interface UnitGap {
  /** Who needs it. */
  readonly by: string;
  readonly recipe: Recipe;
  readonly need: Quantity;
  readonly unit: string;
}

/** Needs broken down to what is bought. */
export interface Explosion {
  /** Parts before what they go into. */
  readonly recipes: readonly ExplodedRecipe[];
  /** By ingredient id, in the order of `recipes` and their lines. */
  readonly ingredients: ReadonlyMap<string, { ingredient: Ingredient; uses: IngredientUse[] }>;
  /** Needs left out of all sums, because their unit is not one that the recipe makes. */
  readonly gaps: readonly UnitGap[];
}

/** How exact batches become batches cooked. */
export type BatchRounding = (exact: Fraction, rule: BatchRule) => Fraction;

/**
 * Breaks needs down through recipes and their parts to ingredients as purchased. The needs of a recipe are
 * summed first, wherever it is used, and rounded to batches once; its lines follow the rounded batches. Nothing
 * else is rounded. Throws where a recipe contains itself.
 */
export function explode(needs: readonly FoodNeed[], round: BatchRounding): Explosion {
  const order = partsFirst(needs.map(({ recipe }) => recipe));
  const usedBy = new Map(order.map(({ id }) => [id, [] as { by: string; need: Quantity }[]]));
  const gaps: UnitGap[] = [];
  const call = ({ recipe, need, by }: FoodNeed): void => {
    const { unit } = recipe.makes[0];
    const asMade = convertFinishedFood(recipe, need, unit);
    if (asMade) usedBy.get(recipe.id)?.push({ by, need: asMade });
    else gaps.push({ by, recipe, need, unit });
  };
  for (const need of needs) call(need);
  const cooked: ExplodedRecipe[] = [];
  // Users before parts: when a part's turn comes, every user has stated what it needs of it.
  for (const recipe of order.toReversed()) {
    const exploded = cook(recipe, usedBy.get(recipe.id) ?? [], round);
    cooked.push(exploded);
    for (const { line, amount } of exploded.lines)
      if (line.item.kind === 'recipe') call({ recipe: line.item.recipe, need: amount, by: recipe.name });
  }
  const recipes = cooked.reverse();
  return { recipes, ingredients: ingredientUses(recipes), gaps };
}

function cook(recipe: Recipe, usedBy: ExplodedRecipe['usedBy'], round: BatchRounding): ExplodedRecipe {
  const [batch] = recipe.makes;
  const sum = usedBy.reduce((total, { need }) => total.add(need.amount), new Fraction(0n));
  const exactBatches = sum.div(batch.amount);
  const batches = round(exactBatches, recipe.batches);
  return {
    recipe,
    usedBy,
    need: { amount: sum, unit: batch.unit },
    exactBatches,
    batches,
    makes: timesQuantity(batch, batches),
    lines: recipe.lines.map((line) => ({ line, amount: timesQuantity(line.amount, batches) })),
  };
}

function ingredientUses(recipes: readonly ExplodedRecipe[]): Explosion['ingredients'] {
  const found = new Map<string, { ingredient: Ingredient; uses: IngredientUse[] }>();
  for (const { recipe, lines } of recipes) {
    for (const { line, amount } of lines) {
      if (line.item.kind !== 'ingredient' || amount.amount.n === 0n) continue;
      const { ingredient } = line.item;
      const left = yieldOf(ingredient, line);
      const asPurchased = { amount: amount.amount.div(left.share), unit: amount.unit };
      const entry = found.get(ingredient.id) ?? { ingredient, uses: [] };
      entry.uses.push({ recipe, line, amount, yield: left, asPurchased });
      found.set(ingredient.id, entry);
    }
  }
  return found;
}
