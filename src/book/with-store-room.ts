import type { Ingredient } from '../engine/food/ingredient.ts';
import { type Conversion, conversionPath } from '../engine/measure/conversions.ts';

/**
 * A caterer's own entry of a food with the store-room's measures and yields that it does not speak of itself: one
 * `1 each = 150 g` replaces the store-room's weight of one and keeps its cup. A measure of the store-room between two
 * units that the entry's own lead between is dropped, so that the caterer's figures are never passed by.
 */
export function withStoreRoom(own: Ingredient, stored: Ingredient | undefined): Ingredient {
  if (!stored) return own;
  const conversions: Conversion[] = [...own.conversions];
  for (const each of stored.conversions)
    if (conversionPath(each.left.unit, each.right.unit, conversions) === undefined) conversions.push(each);
  return { ...own, conversions, yields: new Map([...stored.yields, ...own.yields]) };
}
