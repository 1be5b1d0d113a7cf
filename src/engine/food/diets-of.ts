import type { AllergenGroup } from './allergen.ts';
import { allergensKnown } from './allergens-known.ts';
import { DIETS, type Diet } from './diet.ts';
import type { Ingredient } from './ingredient.ts';
import type { Origin } from './origin.ts';
import type { Recipe } from './recipe.ts';
import { ingredientsOf } from './walk.ts';

/** Whether a food suits a diet. `unknown` must never be shown as yes. */
export type Suits = 'yes' | 'no' | 'unknown';

/** What Salver claims of a food and a diet. */
export interface DietClaim {
  readonly diet: Diet;
  readonly suits: Suits;
  /** Ids of the ingredients that stand against it (no) or have something not stated (unknown); empty for yes. */
  readonly because: readonly string[];
}

interface DietRule {
  /** Origins that rule the diet out. */
  readonly not: readonly Origin[];
  /** Origins whose own source decides and is not stated. */
  readonly unsure: readonly Origin[];
  /** Allergens that rule it out, whatever the origin says: two statements, and the stricter counts. */
  readonly notContaining: readonly AllergenGroup[];
  /** Which facts must have been said before the diet can be claimed. */
  readonly needs: readonly ('from' | 'contains')[];
  /** Allergens whose mere warning (`may contain`) leaves the diet unknown. */
  readonly unsureIfMayContain: readonly AllergenGroup[];
}

const MEAT: readonly Origin[] = [
  'beef',
  'pork',
  'lamb',
  'poultry',
  'game',
  'insect',
  'animal rennet',
  'gelatin',
];
const SEAFOOD = ['fish', 'crustacean', 'mollusc'] as const;
const BOTH = ['from', 'contains'] as const;

/*
 * Vegetarian and vegan follow ISO 23662:2021 (4.2, ovo-lacto-vegetarian: nothing of animal origin, processing
 * aids and enzymes included, but milk, eggs, honey). Pescatarian adds fish and shellfish to it (common usage,
 * no standard). Gelatin may come from pigs and seldom says so, hence unknown for `no pork`; rennet is of calf,
 * kid or lamb. `no gluten` counts oats, as the EU does and the US does not, and does not claim against a
 * warned-of trace.
 */
const RULES: Readonly<Record<Diet, DietRule>> = {
  vegetarian: {
    not: [...MEAT, ...SEAFOOD],
    unsure: [],
    notContaining: SEAFOOD,
    needs: BOTH,
    unsureIfMayContain: [],
  },
  vegan: {
    not: [...MEAT, ...SEAFOOD, 'milk', 'egg', 'honey'],
    unsure: [],
    notContaining: [...SEAFOOD, 'milk', 'egg'],
    needs: BOTH,
    unsureIfMayContain: [],
  },
  pescatarian: { not: MEAT, unsure: [], notContaining: [], needs: BOTH, unsureIfMayContain: [] },
  'no gluten': {
    not: [],
    unsure: [],
    notContaining: ['cereal'],
    needs: ['contains'],
    unsureIfMayContain: ['cereal'],
  },
  'no pork': {
    not: ['pork'],
    unsure: ['gelatin'],
    notContaining: [],
    needs: ['from'],
    unsureIfMayContain: [],
  },
  'no alcohol': { not: ['alcohol'], unsure: [], notContaining: [], needs: ['from'], unsureIfMayContain: [] },
};

/** Whether one ingredient suits a diet. Anything the diet rests on that is not stated makes it unknown. */
export function ingredientSuits(ingredient: Ingredient, diet: Diet): Suits {
  const rule = RULES[diet];
  const { from, contains, mayContain } = ingredient;
  if (from?.some((origin) => rule.not.includes(origin))) return 'no';
  if (contains?.some(({ group }) => rule.notContaining.includes(group))) return 'no';
  if (rule.needs.includes('contains') && !allergensKnown(ingredient)) return 'unknown';
  if (rule.needs.includes('from') && from === undefined) return 'unknown';
  // An empty list of origins says nothing either.
  if (rule.needs.includes('from') && from?.length === 0) return 'unknown';
  if (from?.some((origin) => rule.unsure.includes(origin))) return 'unknown';
  return mayContain.some(({ group }) => rule.unsureIfMayContain.includes(group)) ? 'unknown' : 'yes';
}

/**
 * Whether a recipe suits each diet: yes only when every ingredient down to the bottom does, no as soon as one
 * does not, else unknown. A recipe without any ingredient claims nothing. Throws where it contains itself.
 */
export function dietsOf(recipe: Recipe): readonly DietClaim[] {
  const claims = made.get(recipe) ?? claimsOf(recipe);
  made.set(recipe, claims);
  return claims;
}

/** Claims made already: every menu and plan asks for them, and a recipe, once linked, never changes. */
const made = new WeakMap<Recipe, readonly DietClaim[]>();

function claimsOf(recipe: Recipe): DietClaim[] {
  const ingredients = ingredientsOf(recipe);
  return DIETS.map((diet) => {
    if (ingredients.length === 0) return { diet, suits: 'unknown', because: [recipe.id] };
    const against: Record<Suits, string[]> = { yes: [], no: [], unknown: [] };
    for (const ingredient of ingredients) against[ingredientSuits(ingredient, diet)].push(ingredient.id);
    if (against.no.length > 0) return { diet, suits: 'no', because: against.no };
    if (against.unknown.length > 0) return { diet, suits: 'unknown', because: against.unknown };
    return { diet, suits: 'yes', because: [] };
  });
}
