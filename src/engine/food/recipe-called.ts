import type { Statement } from '../text/statement.ts';
import type { LineItem, Recipe } from './recipe.ts';

/** What a recipe that differs from the one of its name is called, in the kitchen's language: `Leek tart (without butter)`. */
export type CallChanged = (name: string, changes: readonly Statement[]) => string;

/** Recipes called already, so that one stays one object. */
const known = new WeakMap<CallChanged, WeakMap<Recipe, Recipe>>();

/**
 * The recipe with the changes in its name, and in those of all it is made of. One in which nothing is changed is the same
 * object. Throws where it contains itself, which the Book refuses.
 */
export function recipeCalled(recipe: Recipe, call: CallChanged): Recipe {
  const made = known.get(call) ?? new WeakMap<Recipe, Recipe>();
  known.set(call, made);
  const called = made.get(recipe) ?? withName(recipe, call);
  made.set(recipe, called);
  return called;
}

function withName(recipe: Recipe, call: CallChanged): Recipe {
  const lines = recipe.lines.map((line) => {
    const item = itemCalled(line.item, call);
    return item === line.item ? line : { ...line, item };
  });
  const { changed, ...rest } = recipe;
  if (!changed) return lines.every((line, at) => line === recipe.lines[at]) ? recipe : { ...recipe, lines };
  return { ...rest, name: call(recipe.name, changed), lines };
}

function itemCalled(item: LineItem, call: CallChanged): LineItem {
  if (item.kind !== 'recipe') return item;
  const recipe = recipeCalled(item.recipe, call);
  return recipe === item.recipe ? item : { kind: 'recipe', recipe };
}
