import type { Ingredient } from '../food/ingredient.ts';
import type { Origin } from '../food/origin.ts';
import type { Recipe, RecipeLine } from '../food/recipe.ts';
import type { LimitNameOf } from './limit.ts';

/** Raw animal food in a recipe, and the limit it is cooked by. */
export interface RawFood {
  readonly ingredient: Ingredient;
  /** The recipe that brings it in uncooked, as a pastry brings eggs into a tart; undefined for a line of its own. */
  readonly from: Recipe | undefined;
  readonly limit: LimitNameOf<'cooking'>;
}

/** The limits for raw animal food, the one that asks most first. */
export const STRICTEST_FIRST: readonly LimitNameOf<'cooking'>[] = [
  'poultry',
  'stuffed food',
  'ground or injected meat',
  'eggs',
  'whole roasts',
  'intact meat and fish',
  'eggs to order',
];

/** Game is taken for commercially raised, the only kind that a caterer may buy (FDA Food Code 3-201.17). */
const MEAT: ReadonlySet<Origin> = new Set(['beef', 'pork', 'lamb', 'game', 'insect']);
const FISH: ReadonlySet<Origin> = new Set(['fish', 'crustacean', 'mollusc']);

/** Words by which a cook says, without a field for it, that germs on the outside were carried in. */
const OPENED_WORDS = /\b(ground|minced|injected|tenderi[sz]ed)\b/i;

/** Whether an ingredient is animal food that has to be cooked; milk and honey are not. Origins that are not stated tell nothing. */
export function isRawAnimalFood({ from = [], soldAs }: Ingredient): boolean {
  if (soldAs === 'ready to eat') return false;
  return from.some(
    (origin) => MEAT.has(origin) || FISH.has(origin) || origin === 'poultry' || origin === 'egg',
  );
}

/** Whether some step says to what temperature the recipe is cooked. */
export function saysCookTo(recipe: Recipe): boolean {
  return recipe.steps.some(({ cookTo }) => cookTo !== undefined);
}

/**
 * The raw animal food that a recipe has to cook: its own lines', and what its parts bring in raw, those of which no
 * step says a temperature or which are said to be served undercooked. The strictest limit first, each ingredient once for each limit.
 */
export function rawFoodIn(recipe: Recipe): RawFood[] {
  const found = new Map<string, RawFood>();
  for (const line of recipe.lines) {
    for (const raw of rawFoodOfLine(line, recipe)) {
      const key = `${raw.ingredient.id} ${raw.limit}`;
      if (!found.has(key)) found.set(key, raw);
    }
  }
  return strictestFirst([...found.values()]);
}

function rawFoodOfLine(line: RecipeLine, recipe: Recipe): RawFood[] {
  const { item } = line;
  if (item.kind === 'ingredient') {
    return rawFoodOfIngredient(item.ingredient, recipe, line.preparation);
  }
  const part = item.recipe;
  if (saysCookTo(part) && !part.containsRaw) return [];
  return rawFoodIn(part).map((raw) => ({
    ...raw,
    from: raw.from ?? part,
    limit: recipe.cookedAs === 'stuffed' ? 'stuffed food' : raw.limit,
  }));
}

/** What of an ingredient is raw animal food in a recipe that calls for it, once for each limit; none where nothing is. */
export function rawFoodOfIngredient(
  ingredient: Ingredient,
  recipe: Recipe,
  preparation: string | null,
): RawFood[] {
  if (!isRawAnimalFood(ingredient)) return [];
  return limitsFor(ingredient, recipe, preparation).map((limit) => ({ ingredient, from: undefined, limit }));
}

/** The limits an ingredient is cooked by, one for each kind of animal food it holds. */
function limitsFor(
  { id, name, from = [], soldAs }: Ingredient,
  { cookedAs }: Recipe,
  preparation: string | null,
): LimitNameOf<'cooking'>[] {
  if (cookedAs === 'stuffed' || soldAs === 'stuffed') return ['stuffed food'];
  const limits: LimitNameOf<'cooking'>[] = [];
  if (from.includes('poultry')) limits.push('poultry');
  const meat = from.some((origin) => MEAT.has(origin));
  if (meat || from.some((origin) => FISH.has(origin))) {
    const opened = [soldAs, cookedAs].some(
      (state) => state === 'ground' || state === 'injected' || state === 'tenderized',
    );
    if (opened || OPENED_WORDS.test(`${id} ${name} ${preparation ?? ''}`))
      limits.push('ground or injected meat');
    else limits.push(meat && cookedAs === 'whole roast' ? 'whole roasts' : 'intact meat and fish');
  }
  if (from.includes('egg')) limits.push(cookedAs === 'to order' ? 'eggs to order' : 'eggs');
  return limits;
}

/** Raw food by what it asks, the most first. */
export function strictestFirst<Food extends RawFood>(foods: readonly Food[]): Food[] {
  return [...foods].sort((a, b) => STRICTEST_FIRST.indexOf(a.limit) - STRICTEST_FIRST.indexOf(b.limit));
}
