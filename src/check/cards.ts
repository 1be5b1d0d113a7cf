import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { cardWord } from '../engine/food/card-word.ts';
import type { Recipe } from '../engine/food/recipe.ts';

/** Dishes between which guests choose and that a server could not tell apart by their word on the place cards. */
export function checkCards(book: Book): Finding[] {
  return [...book.packages.values()].flatMap(({ id, courses }) =>
    courses.flatMap((course, index) => {
      if (!course.eachGuest) return [];
      const recipes = course.dishes.map(({ recipe }) => recipe);
      return [...Map.groupBy(recipes, wordOf)].flatMap(([word, same]) => {
        const [first, second] = same;
        if (!first || !second) return [];
        const ids = same.map((recipe) => `“${recipe.id}”`).join(' and ');
        const what = `${ids} of “${course.name}” have the same word on place cards, ${word}, so their full names are printed`;
        const wayOut = `give each its own word in its recipe, such as “card: ${first.id.split('-').at(-1)}”`;
        const at = ['courses', index, 'dishes', second.id];
        return [findingAt(book, 'card-word-twice', `package/${id}`, at, what, wayOut, 'key')];
      });
    }),
  );
}

function wordOf({ name, card }: Recipe): string {
  return cardWord({ name, card });
}
