import type { LineItem, Recipe, RecipeChange, RecipeStep } from './recipe.ts';

/** By recipe and by what is done earlier: events that do the same earlier share one recipe, and so its batches. */
const made = new WeakMap<Recipe, Map<string, Recipe>>();

/**
 * A recipe with all that some recipes in it (by id, itself too) have to do on the event's own day done so many days before
 * it, also in what may be taken instead for a need. One that has none of them in it is the same object.
 */
export function doneEarlier(recipe: Recipe, days: ReadonlyMap<string, number>): Recipe {
  const own = [...idsIn(recipe)].filter((id) => days.has(id)).sort();
  const key = JSON.stringify(own.map((id) => [id, days.get(id)]));
  if (key === '[]') return recipe;
  const known = made.get(recipe) ?? new Map<string, Recipe>();
  made.set(recipe, known);
  const found = known.get(key) ?? relinked(recipe, days);
  known.set(key, found);
  return found;
}

function relinked(recipe: Recipe, days: ReadonlyMap<string, number>): Recipe {
  const by = days.get(recipe.id);
  const item = (each: LineItem): LineItem =>
    each.kind === 'recipe' ? { kind: 'recipe', recipe: doneEarlier(each.recipe, days) } : each;
  const changes = recipe.changes?.map(
    (change): RecipeChange => ({
      ...change,
      // What would be made with this very recipe is left as it is.
      instead: change.instead && (isIn(recipe, change.instead) ? change.instead : item(change.instead)),
    }),
  );
  return {
    ...recipe,
    lines: recipe.lines.map((line) => ({ ...line, item: item(line.item) })),
    steps: by === undefined ? recipe.steps : recipe.steps.map((step) => daysBefore(step, by)),
    ...(changes && { changes }),
  };
}

function isIn({ id }: Recipe, item: LineItem): boolean {
  return item.kind === 'recipe' && idsIn(item.recipe).has(id);
}

/** Ids of all recipes that one is made with, or may be for a need; its own too. */
function idsIn(recipe: Recipe, seen = new Set<string>()): Set<string> {
  if (seen.has(recipe.id)) return seen;
  seen.add(recipe.id);
  for (const { item } of recipe.lines) if (item.kind === 'recipe') idsIn(item.recipe, seen);
  for (const { instead } of recipe.changes ?? []) if (instead?.kind === 'recipe') idsIn(instead.recipe, seen);
  return seen;
}

function daysBefore(step: RecipeStep, days: number): RecipeStep {
  const { when } = step;
  if (when.daysBefore !== 0 || when.atServing) return step;
  return { ...step, when: { daysBefore: days, atServing: false, early: true } };
}
