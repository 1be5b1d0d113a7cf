import type { Ingredient } from './ingredient.ts';
import type { Origin } from './origin.ts';

/** Origins that by themselves make no compound good: salted butter is still butter. */
const PLAIN: readonly Origin[] = ['water', 'mineral', 'microbe'];

/** Whether a food is bought made from several others, as mayonnaise and sausage are: it lists parts or has several origins. */
export function isCompound({ from = [], parts }: Pick<Ingredient, 'from' | 'parts'>): boolean {
  return parts !== undefined || from.filter((origin) => !PLAIN.includes(origin)).length > 1;
}
