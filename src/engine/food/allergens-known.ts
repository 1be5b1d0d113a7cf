import type { AllergenGroup } from './allergen.ts';
import type { Ingredient } from './ingredient.ts';

/**
 * Origins that are allergens themselves: FDA's major food allergens and Regulation (EU) No 1169/2011, Annex II list
 * milk, eggs, fish and shellfish as such. Whoever knows better, of a fining agent say, asks a licensed person.
 */
const ALLERGENS_BY_ORIGIN = [
  'milk',
  'egg',
  'fish',
  'crustacean',
  'mollusc',
] as const satisfies AllergenGroup[];

/** What an ingredient comes from that is an allergen and that its stated `contains` leaves out; none while nothing is stated. */
export function leftOutAllergens({ from, contains }: Pick<Ingredient, 'from' | 'contains'>): AllergenGroup[] {
  if (contains === undefined) return [];
  return ALLERGENS_BY_ORIGIN.filter(
    (origin) => from?.includes(origin) && !contains.some(({ group }) => group === origin),
  );
}

/**
 * Whether the allergens of an ingredient are known: its `contains` is stated and names all that `from` brings in. Two
 * statements that contradict each other are no knowledge, so nobody is told that a dish with it suits them.
 */
export function allergensKnown(ingredient: Pick<Ingredient, 'from' | 'contains'>): boolean {
  return ingredient.contains !== undefined && leftOutAllergens(ingredient).length === 0;
}
