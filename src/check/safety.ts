import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { Finding } from '../book/findings/finding.ts';
import { usesIn } from '../book/uses.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { scaleOf } from '../engine/measure/temperature.ts';
import { recipeSafety } from '../engine/safety/recipe-safety.ts';
import { statementsIn } from '../exports/words/statement-text.ts';

/** What the kitchen's food code asks of its recipes, as far as they tell. */
export function checkSafety(book: Book): Finding[] {
  const { kitchen, recipes } = book;
  const { served } = usesIn(book);
  const parts = new Set([...recipes.values()].flatMap(partIds));
  const inWords = statementsIn(kitchen.locale);
  const setting = {
    rules: kitchen.foodSafety,
    scale: scaleOf(kitchen.measures),
    containers: kitchen.containers,
  };
  return [...recipes.values()].flatMap((recipe) => {
    const { id } = recipe;
    // What nothing uses yet is judged as if it were served.
    const findings = recipeSafety(recipe, {
      ...setting,
      called: `“${id}”`,
      served: served.has(id) || !parts.has(id),
    });
    return findings.map(({ code, at, what, wayOut }) =>
      findingAt(book, code, `recipe/${id}`, at, inWords(what), inWords(wayOut)),
    );
  });
}

function partIds({ lines }: Recipe): string[] {
  return lines.flatMap(({ item }) => (item.kind === 'recipe' ? [item.recipe.id] : []));
}
