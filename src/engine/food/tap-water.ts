import type { Ingredient } from './ingredient.ts';

/** True for what comes out of the tap: a food from water alone. It is bought only where a price list offers it. */
export function isTapWater(ingredient: Ingredient): boolean {
  return ingredient.from?.length === 1 && ingredient.from[0] === 'water';
}
