import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { leftOutAllergens } from '../engine/food/allergens-known.ts';
import { parseNeed } from '../engine/food/need.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { changedFor, recipeSuits, rulingOut } from '../engine/food/variant.ts';

/** What foods are stated to contain that does not match where they come from, and changes of recipes that do not help. */
export function checkAllergens(book: Book): Finding[] {
  return [...unnamedAllergens(book), ...idleChanges(book)];
}

function unnamedAllergens(book: Book): Finding[] {
  return [...book.ingredients.values()].flatMap((ingredient) =>
    leftOutAllergens(ingredient).map((origin) => {
      const { id } = ingredient;
      const what = `“${id}” comes from ${origin}, but its “contains” does not list it, so its allergens count as unknown and no offer with it can be issued`;
      const wayOut = `read its label and add ${origin} to “contains”, or remove it from “from” if there is no ${origin} in it`;
      return findingAt(book, 'allergen-not-named', `ingredient/${id}`, ['contains'], what, wayOut);
    }),
  );
}

/** What recipes leave out or swap for a need although the dish does not suit it even then: nobody is offered it. */
function idleChanges(book: Book): Finding[] {
  return [...book.recipes.values()].flatMap((recipe) =>
    (recipe.changes ?? []).flatMap(({ item, instead, needs }) =>
      needs.flatMap((text) => {
        const against = stillAgainst(recipe, text);
        if (against.length === 0) return [];
        const names = against.map((id) => `“${id}”`).join(', ');
        const done = instead ? `swapping “${item}” for ${text}` : `leaving out “${item}” for ${text}`;
        const what = `${done} is not enough: ${names} still ${against.length === 1 ? 'rules' : 'rule'} it out, or not enough is known about ${against.length === 1 ? 'it' : 'them'}`;
        const wayOut = `leave out or swap ${names} too, fill in the missing facts, or remove this`;
        const path = [instead ? 'swap' : 'without', item];
        return [findingAt(book, 'change-no-help', `recipe/${recipe.id}`, path, what, wayOut)];
      }),
    ),
  );
}

/** The ingredients that stand against a need after all changes; none where it is met. */
function stillAgainst(recipe: Recipe, text: string): string[] {
  const need = parseNeed(text);
  if (!need.ok || recipeSuits(recipe, need.value) === 'yes') return [];
  const changed = changedFor(recipe, need.value)?.recipe ?? recipe;
  return recipeSuits(changed, need.value) === 'yes' ? [] : rulingOut(changed, need.value);
}
