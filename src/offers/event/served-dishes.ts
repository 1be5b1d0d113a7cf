import type { Book } from '../../book/book.ts';
import { nearest } from '../../book/findings/nearest.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import type { PackageTerms } from '../../engine/quote/terms.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { recipeFacts } from '../issue/dish-terms.ts';
import { amountOf } from '../issue/offered-amount.ts';
import type { CurrentEvent } from './current-event.ts';
import type { DishPair } from './dish-difference.ts';
import { takenDishes } from './dishes.ts';
import { replacementOf, servedRecipe } from './recipes.ts';

/** A dish of the event as it is served so far: the id its recipe goes by, and what is known of it. */
export type Served = DishPair['before'] & {
  readonly id: string;
  readonly course: string;
  /** The recipe it was accepted by. */
  readonly accepted: string;
  readonly perGuest: EventDish['perGuest'];
};

/** Every dish in the order of `eventDishes`; one whose recipe is gone, which a substitution may correct, by its offer alone. */
export function servedNow(book: Book, { status }: CurrentEvent, accepted: PackageTerms): Served[] {
  const { choice, substitutions } = status;
  return takenDishes(book, accepted, choice).map(({ course, recipeId, name, perGuest, offered }) => {
    const id = replacementOf(recipeId, substitutions)?.to ?? recipeId;
    const place = { id, course, accepted: recipeId };
    const served = servedRecipe(book, recipeId, name, substitutions);
    if (!served.ok) {
      const { marks, contains, mayContain } = offered ?? { marks: [], contains: [], mayContain: [] };
      return { ...place, name, perGuest, recipe: undefined, marks, contains, mayContain };
    }
    const { recipe, replacedBy } = served.value;
    const shown = replacedBy ? recipe.name : name;
    const amount = replacedBy?.perGuest === undefined ? perGuest : amountOf(replacedBy.perGuest);
    return { ...place, name: shown, perGuest: amount, recipe, ...recipeFacts(recipe) };
  });
}

/** What a swap records of itself, and what its two sides are called. */
export interface Swap {
  readonly swap: Pick<SubstitutionFact, 'what' | 'from' | 'to' | 'perGuest'>;
  readonly names: { readonly from: string; readonly to: string };
}

/** The refusal for what is taken instead: held back and why, or the nearest known. */
export function unknownItem(
  book: Book,
  kind: 'recipe' | 'ingredient',
  id: string,
  known: readonly string[],
): Parsed<never> {
  const reason = book.held.get(`${kind}/${id}`);
  if (reason)
    return notParsed(`the ${kind} ${id} can’t be used: ${reason}`, 'fix what `check` reports about it');
  const close = nearest(id, known);
  return notParsed(`there is no ${kind} ${id}`, close ? `did you mean ${close}?` : `add the ${kind} first`);
}
