import { isAtPlace, type Recipe, type RecipeLine } from '../food/recipe.ts';
import { firstStepOf } from '../food/step-lines.ts';
import type { HeldTemperature } from '../measure/temperature.ts';
import { rungMet, type SafetyRules } from './limit.ts';
import { type RawFood, rawFoodOfIngredient, STRICTEST_FIRST, strictestFirst } from './raw-food.ts';

/** Food that leaves the kitchen raw, and what is done with it there. */
export interface LeavesRaw {
  /** What is raw in it, the strictest limit first; empty where its recipe only says that it holds something raw. */
  readonly foods: readonly RawFood[];
  /** `not stated`: no step cooks it enough, in the kitchen or at the place, and nobody says that it is served raw. */
  readonly next: 'cooked there' | 'served raw' | 'not stated';
  /** The temperature of the recipe's own step at the place, where that is enough for all of it. */
  readonly cookTo: HeldTemperature | undefined;
}

/** Raw food, and whether a recipe means it to be served so. */
type Carried = RawFood & { readonly meant: boolean };

/**
 * What of a recipe is still raw when it leaves the kitchen: its raw animal food and what its parts bring in, as far as
 * no step before serving cooks it to its limit (FDA Food Code 3-401.11). What travels beside it is judged for itself. Of
 * what no step tells, the worst is taken: it counts as raw. Undefined where all of it is ready to eat or cooked.
 */
export function leavesRaw(recipe: Recipe, rules: SafetyRules): LeavesRaw | undefined {
  const left = recipe.lines.flatMap((line) => carriedRaw(line, recipe, rules));
  if (left.length === 0)
    return recipe.containsRaw ? { foods: [], next: 'served raw', cookTo: undefined } : undefined;
  return judged(left, recipe, rules);
}

/** The same of one line, which goes to the place in a container of its own. */
export function lineLeavesRaw(line: RecipeLine, recipe: Recipe, rules: SafetyRules): LeavesRaw | undefined {
  const left = carriedRaw(line, recipe, rules);
  return left.length === 0 ? undefined : judged(left, recipe, rules);
}

function judged(left: readonly Carried[], recipe: Recipe, rules: SafetyRules): LeavesRaw {
  const foods = strictestFirst(left);
  if (left.every(({ meant }) => meant)) return { foods, next: 'served raw', cookTo: undefined };
  const there = recipe.steps.flatMap((step) => (step.cookTo && isAtPlace(step) ? [step.cookTo] : []));
  const cookTo = there.find((each) => foods.every(({ limit }) => rungMet(rules.limits[limit], each)));
  // What is heated again was cooked, or so its recipe says: but no step says to what.
  const isCooking = there.length > 0 && !recipe.reheat;
  return { foods, next: isCooking ? 'cooked there' : 'not stated', cookTo };
}

/**
 * Where raw food belongs among other raw food, the higher the lower: what asks for more heat never drips on what asks
 * for less.
 */
export function rawDepth({ foods }: LeavesRaw): number {
  const [strictest] = foods;
  return strictest ? STRICTEST_FIRST.length - STRICTEST_FIRST.indexOf(strictest.limit) : 0;
}

/** What a line brings in raw, as far as no step in the kitchen from the one that takes it on cooks it to its limit. */
function carriedRaw(line: RecipeLine, recipe: Recipe, rules: SafetyRules): Carried[] {
  const all = rawIn(line, recipe, rules);
  if (recipe.containsRaw) return all;
  const here = recipe.steps
    .slice(firstStepOf(line))
    .flatMap((step) => (step.cookTo && !isAtPlace(step) ? [step.cookTo] : []));
  return all.filter(({ limit }) => !here.some((cookTo) => rungMet(rules.limits[limit], cookTo)));
}

function rawIn({ item, preparation }: RecipeLine, recipe: Recipe, rules: SafetyRules): Carried[] {
  if (item.kind === 'ingredient')
    return rawFoodOfIngredient(item.ingredient, recipe, preparation).map((raw) => ({
      ...raw,
      meant: recipe.containsRaw,
    }));
  const part = item.recipe;
  if (recipe.beside?.includes(part.id)) return [];
  return part.lines
    .flatMap((line) => carriedRaw(line, part, rules))
    .map((raw) => ({
      ...raw,
      from: raw.from ?? part,
      limit: recipe.cookedAs === 'stuffed' ? ('stuffed food' as const) : raw.limit,
      meant: raw.meant || recipe.containsRaw,
    }));
}
