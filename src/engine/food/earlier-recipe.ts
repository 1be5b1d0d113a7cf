import type { LineItem, Recipe, RecipeChange, RecipeStep } from './recipe.ts';

/** By recipe and by what is done earlier: events that do the same earlier share one recipe, and so its batches. */
const made = new WeakMap<Recipe, Map<string, Recipe>>();

/**
 * A recipe with all that some recipes in it (by id, itself too) have to do on the event's own day done the day before, also
 * in what may be taken instead for a need. One that has none of them in it is the same object.
 */
export function doneEarlier(recipe: Recipe, ids: ReadonlySet<string>): Recipe {
  const key = JSON.stringify([...idsIn(recipe)].filter((id) => ids.has(id)).sort());
  if (key === '[]') return recipe;
  const known = made.get(recipe) ?? new Map<string, Recipe>();
  made.set(recipe, known);
  const found = known.get(key) ?? relinked(recipe, ids);
  known.set(key, found);
  return found;
}

function relinked(recipe: Recipe, ids: ReadonlySet<string>): Recipe {
  const item = (each: LineItem): LineItem =>
    each.kind === 'recipe' ? { kind: 'recipe', recipe: doneEarlier(each.recipe, ids) } : each;
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
    steps: ids.has(recipe.id) ? recipe.steps.map(dayBefore) : recipe.steps,
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

function dayBefore(step: RecipeStep): RecipeStep {
  const { when } = step;
  if (when.daysBefore !== 0 || when.atServing) return step;
  return { ...step, when: { daysBefore: 1, atServing: false, early: true } };
}
