import type { LineItem, Recipe, RecipeStep } from './recipe.ts';

/** By recipe and by what is done earlier: events that do the same earlier share one recipe, and so its batches. */
const made = new WeakMap<Recipe, Map<string, Recipe>>();

/**
 * A recipe with all that some recipes in it (by id, itself too) have to do on the event's own day done the day before.
 * One that has none of them in it is the same object.
 */
export function doneEarlier(recipe: Recipe, ids: ReadonlySet<string>): Recipe {
  const known = made.get(recipe) ?? new Map<string, Recipe>();
  made.set(recipe, known);
  const key = JSON.stringify([...ids].sort());
  const found = known.get(key) ?? relinked(recipe, ids);
  known.set(key, found);
  return found;
}

function relinked(recipe: Recipe, ids: ReadonlySet<string>): Recipe {
  const item = (each: LineItem): LineItem => {
    if (each.kind !== 'recipe') return each;
    const part = doneEarlier(each.recipe, ids);
    return part === each.recipe ? each : { kind: 'recipe', recipe: part };
  };
  const lines = recipe.lines.map((line) => {
    const now = item(line.item);
    return now === line.item ? line : { ...line, item: now };
  });
  const changes = recipe.changes?.map((change) => {
    const now = change.instead && item(change.instead);
    return now === change.instead ? change : { ...change, instead: now };
  });
  const steps = ids.has(recipe.id) ? recipe.steps.map(dayBefore) : recipe.steps;
  const same =
    lines.every((line, at) => line === recipe.lines[at]) &&
    (changes ?? []).every((change, at) => change === recipe.changes?.[at]) &&
    steps === recipe.steps;
  return same ? recipe : { ...recipe, lines, steps, ...(changes && { changes }) };
}

function dayBefore(step: RecipeStep): RecipeStep {
  const { when } = step;
  if (when.daysBefore !== 0 || when.atServing) return step;
  return { ...step, when: { daysBefore: 1, atServing: false, early: true } };
}
