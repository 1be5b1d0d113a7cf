import { type Allergen, allergenText, compareAllergens } from './allergen.ts';
import { allergensKnown } from './allergens-known.ts';
import type { Recipe } from './recipe.ts';
import { partsFirst } from './walk.ts';

/** Ids from a recipe down to the ingredient that brings something in. */
export type FoodPath = readonly string[];

/** An allergen and the ways it comes into a dish. */
export interface AllergenSource {
  readonly allergen: Allergen;
  /** At least one; at most {@link MOST_PATHS}, in the order of the recipe's lines. */
  readonly paths: readonly FoodPath[];
}

/** What is known of the allergens in a recipe, down to the bottom. */
export interface AllergenFacts {
  readonly contains: readonly AllergenSource[];
  /** What labels warn of, without what is contained anyway. */
  readonly mayContain: readonly AllergenSource[];
  /** The ingredients whose allergens are not known (`allergensKnown`): while there is one, the lists above are not complete. */
  readonly unsaid: readonly FoodPath[];
}

/**
 * Paths kept for each allergen. Recipes that use each other crosswise have a number of paths that doubles with
 * every level; an allergen is never dropped for that, only further ways to it.
 */
export const MOST_PATHS = 64;

/**
 * The allergens of a recipe with every way each comes in (recipe → part → ingredient), sorted as laws list
 * them. What may be contained is kept separately and dropped where the same allergen is contained anyway. Throws
 * where the recipe contains itself.
 */
export function allergensOf(recipe: Recipe): AllergenFacts {
  const facts = made.get(recipe) ?? factsOf(recipe);
  made.set(recipe, facts);
  return facts;
}

/** Facts found already: every menu and plan asks for them, and a recipe, once linked, never changes. */
const made = new WeakMap<Recipe, AllergenFacts>();

function factsOf(recipe: Recipe): AllergenFacts {
  const known = new Map<string, Gathered>();
  for (const part of partsFirst([recipe])) known.set(part.id, gather(part, known));
  const { contains, may, unsaid } = known.get(recipe.id) as Gathered;
  const warned = [...may].filter(([text]) => !contains.has(text)).map(([, source]) => source);
  return { contains: sorted(contains.values()), mayContain: sorted(warned), unsaid: [...unsaid.values()] };
}

interface Gathered {
  readonly contains: Map<string, { allergen: Allergen; paths: FoodPath[] }>;
  readonly may: Map<string, { allergen: Allergen; paths: FoodPath[] }>;
  /** By ingredient id: one way to each is enough to complete it. */
  readonly unsaid: Map<string, FoodPath>;
}

function gather(recipe: Recipe, known: ReadonlyMap<string, Gathered>): Gathered {
  const all: Gathered = { contains: new Map(), may: new Map(), unsaid: new Map() };
  for (const { item } of recipe.lines) {
    if (item.kind === 'ingredient') {
      const { id, contains, mayContain } = item.ingredient;
      const path = [recipe.id, id];
      for (const allergen of contains ?? []) add(all.contains, allergen, [path]);
      for (const allergen of mayContain) add(all.may, allergen, [path]);
      if (!allergensKnown(item.ingredient) && !all.unsaid.has(id)) all.unsaid.set(id, path);
      continue;
    }
    const part = known.get(item.recipe.id) as Gathered;
    const below = (paths: readonly FoodPath[]) => paths.map((path) => [recipe.id, ...path]);
    for (const { allergen, paths } of part.contains.values()) add(all.contains, allergen, below(paths));
    for (const { allergen, paths } of part.may.values()) add(all.may, allergen, below(paths));
    for (const [id, path] of part.unsaid) if (!all.unsaid.has(id)) all.unsaid.set(id, [recipe.id, ...path]);
  }
  return all;
}

function add(to: Gathered['contains'], allergen: Allergen, paths: readonly FoodPath[]): void {
  const key = allergenText(allergen);
  let source = to.get(key);
  if (!source) {
    source = { allergen, paths: [] };
    to.set(key, source);
  }
  for (const path of paths) {
    if (source.paths.length >= MOST_PATHS) return;
    // A food named on two lines (raw onion, fried onion) is one way in.
    if (!source.paths.some((other) => other.join('/') === path.join('/'))) source.paths.push(path);
  }
}

function sorted(sources: Iterable<AllergenSource>): AllergenSource[] {
  return [...sources].sort((a, b) => compareAllergens(a.allergen, b.allergen));
}
