import { type Statement, statement } from '../text/statement.ts';
import type { LineItem, Recipe, RecipeChange, RecipeLine } from './recipe.ts';

/** Whether a recipe calls for an item anywhere, down to the bottom: an ingredient or another recipe, by id. */
export function callsFor(recipe: Recipe, id: string): boolean {
  return linesCallingFor(recipe, id).length > 0;
}

/** Every line that calls for an item, with the recipe it is in; each recipe once, parts inside the item not searched. */
export function linesCallingFor(recipe: Recipe, id: string): { recipe: Recipe; line: RecipeLine }[] {
  const found: { recipe: Recipe; line: RecipeLine }[] = [];
  const seen = new Set<string>();
  const visit = (part: Recipe): void => {
    if (seen.has(part.id)) return;
    seen.add(part.id);
    for (const line of part.lines) {
      if (itemId(line.item) === id) found.push({ recipe: part, line });
      else if (line.item.kind === 'recipe') visit(line.item.recipe);
    }
  };
  visit(recipe);
  return found;
}

/**
 * The recipe with an item taken for another in every line down to the bottom, each line's amount and preparation
 * kept and the name of what it replaces; so too in what may be left out or swapped for a need, which then applies to
 * what is taken instead. Recipes that do not call for it are the same objects. What is taken instead
 * is left as it is, even where it calls for the item itself. Throws where the recipe contains itself.
 * `changed` states the swap in the recipes that call for it themselves.
 */
export function withItemSwapped(recipe: Recipe, id: string, instead: LineItem): Recipe {
  const done = new Map<string, Recipe>();
  const swap = (part: Recipe, trail: readonly string[]): Recipe => {
    if (trail.includes(part.id))
      throw new Error(`recipe ${part.id} contains itself: ${[...trail, part.id].join(' → ')}`);
    const known = done.get(part.id);
    if (known) return known;
    const lines = part.lines.map((line): RecipeLine => {
      if (itemId(line.item) === id) return withInsteadOf(line, instead, itemName(line.item));
      if (line.item.kind !== 'recipe') return line;
      const inside = swap(line.item.recipe, [...trail, part.id]);
      return inside === line.item.recipe ? line : { ...line, item: { kind: 'recipe', recipe: inside } };
    });
    const changes = part.changes?.map((change): RecipeChange => {
      const item = change.item === id ? itemId(instead) : change.item;
      const taken = change.instead && itemId(change.instead) === id ? instead : change.instead;
      return item === change.item && taken === change.instead ? change : { ...change, item, instead: taken };
    });
    const same =
      lines.every((line, index) => line === part.lines[index]) &&
      (changes ?? []).every((change, index) => change === part.changes?.[index]);
    const direct = part.lines.find(({ item }) => itemId(item) === id);
    const changed = direct && [...(part.changed ?? []), swapSaid(instead, direct.item)];
    const result = same
      ? part
      : { ...part, lines, ...(changed && { changed }), ...(changes ? { changes } : {}) };
    done.set(part.id, result);
    return result;
  };
  return swap(recipe, []);
}

/** The id of what a line calls for. */
export function itemId(item: LineItem): string {
  return item.kind === 'recipe' ? item.recipe.id : item.ingredient.id;
}

/** Its name. */
export function itemName(item: LineItem): string {
  return item.kind === 'recipe' ? item.recipe.name : item.ingredient.name;
}

/** A line that takes another item, with the name of what it replaces. */
export function withInsteadOf(line: RecipeLine, item: LineItem, name: string): RecipeLine {
  return { ...line, item, insteadOf: [...(line.insteadOf ?? []), name] };
}

function swapSaid(taken: LineItem, item: LineItem): Statement {
  return statement('dishes.differs.instead', { taken: itemName(taken), item: itemName(item) });
}
