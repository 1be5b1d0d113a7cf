import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import { parseNeed } from '../../engine/food/need.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import { recipeSuits, variantFor } from '../../engine/food/variant.ts';
import type { DishTerms } from '../../engine/quote/terms.ts';
import type { Offer } from '../../schema/offer.ts';
import { offeredFood, recipeFacts } from '../issue/dish-terms.ts';
import {
  asNow,
  asPublished,
  type Counted,
  markOnRequest,
  onOffered,
  onRecord,
  type Statement,
} from './statements.ts';

/** What is known now of a dish that was offered differently. */
export interface DishCorrection {
  readonly recipe: string;
  /** The recipe that an event gets instead of it, which all this is about; missing where none is. */
  readonly instead?: string;
  readonly dish: string;
  /** Allergens it contains that the offer did not say, in the words of content files. */
  readonly contains: readonly string[];
  readonly mayContain: readonly string[];
  /** Diets the offer claimed that it no longer supports; `vegan on request` for what it could be made for. */
  readonly lostMarks: readonly string[];
  /** True where the allergens of some ingredient are no longer stated: anything may be in it. */
  readonly unsaid?: true;
  /** True while what is in the dish cannot be read at all: nothing that was offered of it may be relied on. */
  readonly unreadable?: true;
  /** The day on which the client was told of all of it; missing before. */
  readonly toldOn?: Day;
}

/** What corrections are found from. */
export type CorrectionSources = Pick<Book, 'recipes' | 'corrections' | 'told' | 'held'>;

/** What is looked for corrections: an issued offer, or a part of its terms. */
export type CorrectedOffer = Pick<Offer, 'terms' | 'proposal' | 'revision'>;

/**
 * Where the food facts of an issued offer have become unsafe to rely on: allergens added since, diets no longer
 * supported, needs for which a dish can no longer be made, allergens that are no longer stated. Nothing else of an
 * offer ever changes; less harmful facts, such as an allergen taken out, stay frozen. So does a correction once it was
 * published: a later slip must not take it off the page. A dish whose recipe cannot be read now, for whatever reason,
 * is unreadable, and keeps what was published and told of it.
 */
export function correctionsTo(offer: CorrectedOffer, book: CorrectionSources): DishCorrection[] {
  return offeredCorrections(offer, book, asPublished);
}

/**
 * The same without what was published and is no longer so by a recipe that can be read: what a client is to be told
 * now.
 */
export function correctionsNow(offer: CorrectedOffer, book: CorrectionSources): DishCorrection[] {
  return offeredCorrections(offer, book, asNow);
}

/** Corrections of the dishes as they were offered, with the records that count. */
export function offeredCorrections(
  offer: CorrectedOffer,
  book: CorrectionSources,
  counted: Counted,
): DishCorrection[] {
  const record = onRecord(offer, book);
  return [...offeredFood(offer.terms).values()].flatMap((dish) => {
    const recipe = book.recipes.get(dish.recipe);
    const isReadable = recipe !== undefined && !record.isLost;
    const known = onOffered(counted(record, isReadable), dish.recipe);
    const now = recipe && changeSince(dish, recipe);
    return joined(dish, now ? [now, ...known] : known, now?.unsaid, isReadable) ?? [];
  });
}

/** What a recipe makes less safe than the dish was offered; with nothing in it where it does not. */
function changeSince(dish: DishTerms, recipe: Recipe): Statement & Pick<DishCorrection, 'unsaid'> {
  const now = recipeFacts(recipe);
  const lostMarks = [
    ...dish.marks.filter((mark) => !now.marks.includes(mark)),
    ...(dish.onRequest ?? []).filter((need) => !canEat(recipe, need)).map(markOnRequest),
  ];
  const unsaid = now.unsaid === true && dish.unsaid !== true ? ({ unsaid: true } as const) : {};
  return { recipe: recipe.id, contains: now.contains, mayContain: now.mayContain, lostMarks, ...unsaid };
}

/** Everything harmful that is stated of a dish and was not offered; undefined for nothing. */
function joined(
  dish: DishTerms,
  statements: readonly Statement[],
  unsaid: true | undefined,
  isReadable: boolean,
): DishCorrection | undefined {
  const all = (field: 'contains' | 'mayContain' | 'lostMarks') => [
    ...new Set(statements.flatMap((each) => each[field])),
  ];
  const contains = all('contains').filter((each) => !dish.contains.includes(each));
  const known = [...dish.contains, ...dish.mayContain, ...contains];
  const mayContain = all('mayContain').filter((each) => !known.includes(each));
  const claimed = [...dish.marks, ...(dish.onRequest ?? []).map(markOnRequest)];
  const lost = all('lostMarks');
  const lostMarks = claimed.filter((mark) => lost.includes(mark));
  if (contains.length + mayContain.length + lostMarks.length === 0 && !unsaid && isReadable) return undefined;
  return {
    recipe: dish.recipe,
    dish: dish.name,
    contains,
    mayContain,
    lostMarks,
    ...(unsaid ? { unsaid } : {}),
    ...(isReadable ? {} : { unreadable: true as const }),
  };
}

/** Whether a recipe suits a need, as it is or made separately. */
export function canEat(recipe: Recipe, text: string): boolean {
  const need = parseNeed(text);
  if (!need.ok) return false;
  return recipeSuits(recipe, need.value) === 'yes' || variantFor(recipe, need.value) !== undefined;
}

/** A dish of an offer with everything harmful that is known of it now. Of one that cannot be read nothing is claimed. */
export function correctedDish(dish: DishTerms, corrections: readonly DishCorrection[]): DishTerms {
  const found = corrections.find((each) => each.recipe === dish.recipe);
  if (!found) return dish;
  const contains = [...dish.contains, ...found.contains];
  const stays = (mark: string) => !found.unreadable && !found.lostMarks.includes(mark);
  const onRequest = dish.onRequest?.filter((need) => stays(markOnRequest(need)));
  return {
    ...dish,
    marks: dish.marks.filter(stays),
    contains,
    mayContain: [...dish.mayContain, ...found.mayContain].filter((each) => !contains.includes(each)),
    ...(onRequest ? { onRequest } : {}),
    ...(found.unsaid || found.unreadable ? { unsaid: true as const } : {}),
  };
}
