import Fraction from 'fraction.js';
import { type AmountOfLine, isAsBought } from './as-bought.ts';
import type { Ingredient } from './ingredient.ts';
import type { RecipeLine } from './recipe.ts';

/**
 * Where the share left of a food comes from: the recipe line's amount is as purchased, the food states it for
 * the line's preparation, states one for any preparation, states none at all (it is bought ready to use), or
 * states shares for other preparations only, so that this one is not known.
 */
export type YieldBasis = 'as purchased' | 'preparation' | 'default' | 'ready to use' | 'unsaid';

/** The share of a bought food that is left when made ready: edible portion ÷ as purchased. */
export interface Yield {
  /** Above 0 and at most 1, exact. */
  readonly share: Fraction;
  readonly basis: YieldBasis;
}

const WHOLE = new Fraction(1n);

/** What of a recipe line decides how much is left of its food. */
export type PreparedLine = AmountOfLine & Pick<RecipeLine, 'preparation'>;

/**
 * What is left of an ingredient as a recipe line prepares it, in the order: the amount is of the food as bought →
 * the food's yield for the line's preparation → its default yield → nothing is lost. Where the food states yields
 * but neither this preparation nor a default, the share is taken as 1 and the basis is `unsaid`, which a caller
 * must report: nothing would be bought for the loss.
 */
export function yieldOf(ingredient: Ingredient, line: PreparedLine): Yield {
  const { preparation } = line;
  if (isAsBought(line)) return { share: WHOLE, basis: 'as purchased' };
  const stated = preparation === null ? undefined : ingredient.yields.get(preparation);
  if (stated) return { share: stated, basis: 'preparation' };
  if (ingredient.yield) return { share: ingredient.yield, basis: 'default' };
  return { share: WHOLE, basis: ingredient.yields.size === 0 ? 'ready to use' : 'unsaid' };
}
