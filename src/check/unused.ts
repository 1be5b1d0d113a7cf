import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { usesIn } from '../book/uses.ts';

/**
 * Recipes and the caterer's own ingredients that nothing uses. While something that might use them is held back,
 * nobody can tell, and nothing is reported.
 */
export function checkUnused(book: Book): Finding[] {
  const mayUse = /^(recipe|package|add-on|offer)\//;
  if ([...book.held.keys()].some((key) => mayUse.test(key))) return [];
  const used = usesIn(book);
  const recipes = [...book.recipes.keys()].filter((id) => !used.recipes.has(id));
  const ingredients = [...book.ingredients.keys()].filter(
    (id) => !used.ingredients.has(id) && !recipes.some((recipe) => hasLine(book, recipe, id)),
  );
  return [
    ...recipes.map((id) => {
      const what = `nothing uses the recipe “${id}”`;
      const wayOut = 'add it to a package, or keep it for later';
      return findingAt(book, 'recipe-unused', `recipe/${id}`, [], what, wayOut, 'key');
    }),
    ...ingredients.flatMap((id) => {
      const item = `ingredient/${id}` as const;
      if (book.placeOf(item)?.file.startsWith('ingredients/') !== true) return [];
      const what = `no recipe uses the ingredient “${id}”`;
      return [findingAt(book, 'ingredient-unused', item, [], what, 'use it, or keep it for later', 'key')];
    }),
  ];
}

function hasLine(book: Book, recipe: string, ingredient: string): boolean {
  return (
    book.recipes
      .get(recipe)
      ?.lines.some(({ item }) => item.kind === 'ingredient' && item.ingredient.id === ingredient) === true
  );
}
