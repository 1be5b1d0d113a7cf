import type { Book } from '../../book/book.ts';
import type { LineItem, Recipe } from '../../engine/food/recipe.ts';
import { recipeCalled } from '../../engine/food/recipe-called.ts';
import { withItemSwapped } from '../../engine/food/swap-item.ts';
import { partsFirst } from '../../engine/food/walk.ts';
import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { callChangedIn } from './call-changed.ts';

/** Where served recipes are found, and the language that names them. */
export interface ServedSources extends Pick<Book, 'recipes' | 'ingredients' | 'held'> {
  readonly kitchen: Pick<Kitchen, 'locale'>;
}

/** What an event cooks where its accepted terms name a recipe. */
export interface ServedRecipe {
  readonly recipe: Recipe;
  /** The dish that replaced it last; undefined where it is the one accepted. */
  readonly replacedBy: SubstitutionFact | undefined;
}

/**
 * The recipe that an event cooks for a dish accepted as `accepted`: dishes replaced in the order decided, then every
 * ingredient swapped down to the bottom and named by its swaps. Fails where a recipe, or what is taken instead, is gone or held back.
 */
export function servedRecipe(
  book: ServedSources,
  accepted: string,
  dishName: string,
  substitutions: readonly SubstitutionFact[],
): Parsed<ServedRecipe> {
  const replacedBy = replacementOf(accepted, substitutions);
  const id = replacedBy?.to ?? accepted;
  let recipe = book.recipes.get(id);
  if (!recipe) return missing(book, 'recipe', id, `of the accepted dish “${dishName}” `);
  for (const { what, from, to } of substitutions) {
    if (what !== 'ingredient') continue;
    const instead = itemCalled(book, to);
    if (!instead) return missing(book, 'ingredient', to, `taken instead of ${from} `);
    const swapped = soundSwap(recipe, from, instead);
    if (!swapped.ok) return swapped;
    recipe = recipeCalled(swapped.value, callChangedIn(book.kitchen.locale));
  }
  return parsed({ recipe, replacedBy });
}

/** The recipe or ingredient of an id; undefined where the Book has neither. */
export function itemCalled(book: Pick<Book, 'recipes' | 'ingredients'>, id: string): LineItem | undefined {
  const ingredient = book.ingredients.get(id);
  if (ingredient) return { kind: 'ingredient', ingredient };
  const recipe = book.recipes.get(id);
  return recipe && { kind: 'recipe', recipe };
}

/** The recipe with an item swapped. Fails where it would then contain itself. */
export function soundSwap(recipe: Recipe, from: string, instead: LineItem): Parsed<Recipe> {
  try {
    const swapped = withItemSwapped(recipe, from, instead);
    partsFirst([swapped]);
    return parsed(swapped);
  } catch (error) {
    return notParsed(
      `with the swap, a ${error instanceof Error ? error.message : String(error)}`,
      'use something that is not made with it',
    );
  }
}

/** The substitution that replaced an accepted dish last; undefined where none did. */
export function replacementOf(
  accepted: string,
  substitutions: readonly SubstitutionFact[],
): SubstitutionFact | undefined {
  let last: SubstitutionFact | undefined;
  for (const each of substitutions)
    if (each.what === 'dish' && each.from === (last?.to ?? accepted)) last = each;
  return last;
}

function missing(
  book: Pick<Book, 'held'>,
  kind: 'recipe' | 'ingredient',
  id: string,
  use: string,
): Parsed<never> {
  const reason = book.held.get(`${kind}/${id}`);
  const file =
    kind === 'recipe'
      ? `restore recipes/${id}.mdx, or substitute the dish`
      : `restore ${id}, or substitute it again`;
  return notParsed(
    `the ${kind} ${id} ${use}${reason ? `can’t be used: ${reason}` : 'is gone'}`,
    reason ? 'fix what `check` reports about it' : file,
  );
}
