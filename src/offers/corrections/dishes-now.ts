import type { Book } from '../../book/book.ts';
import { needParts, parseNeed } from '../../engine/food/need.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import type { DishTerms, Terms } from '../../engine/quote/terms.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { replacementOf, type ServedSources, servedRecipe } from '../event/recipes.ts';
import { type FoodFacts, offeredFood, recipeFacts } from '../issue/dish-terms.ts';
import {
  type CorrectedOffer,
  type CorrectionSources,
  canEat,
  correctedDish,
  type DishCorrection,
} from './corrections.ts';
import { asPublished, type Counted, onRecord, onServed, withStatements } from './statements.ts';

/** A dish of an offer as an event gets it since its substitutions. */
export interface DishNow {
  /** The recipe it was offered by: it keeps its place in courses, choices and forms. */
  readonly recipe: string;
  /** The recipe served instead; missing where only what goes into the dish was swapped. */
  readonly instead?: string;
  readonly name: string;
  /** The amount given with the dish served instead; missing where the offered one stands. */
  readonly perGuest?: string;
  readonly food: FoodFacts;
  /** True while what is in it cannot be read at all. */
  readonly unreadable?: true;
}

/** What is known of the dishes of an offer besides the offer itself. */
export interface KnownSince {
  readonly corrections: readonly DishCorrection[];
  readonly dishesNow: readonly DishNow[];
}

/**
 * The dishes of an offer that an event's substitutions touch, as they stand. What the offer says of the food, with
 * everything harmful found out since (`corrections`), stays except for what a swap itself takes out or brings in; a
 * dish replaced says what its own recipe says, and whatever the page has shown of it before (`counted`). A dish that
 * cannot be read now claims nothing, and keeps what the swaps were recorded to bring.
 */
export function dishesNow(
  offer: CorrectedOffer,
  book: CorrectionSources & ServedSources,
  substitutions: readonly SubstitutionFact[],
  corrections: readonly DishCorrection[],
  counted: Counted = asPublished,
): DishNow[] {
  if (substitutions.length === 0) return [];
  const record = onRecord(offer, book);
  return [...offeredFood(offer.terms).values()].flatMap((offered): DishNow[] => {
    const dish = correctedDish(offered, corrections);
    const { recipe: id } = dish;
    const replacedBy = replacementOf(id, substitutions);
    const known = { recipe: id, ...(replacedBy ? insteadOf(replacedBy) : {}) };
    const served = servedRecipe(book, id, dish.name, substitutions);
    const before = book.recipes.get(id);
    if (served.ok && !replacedBy && before === served.value.recipe) return [];
    const isReadable = served.ok && !record.isLost;
    const stated = onServed(record, counted, { ...known, isReadable }, substitutions);
    if (!isReadable) {
      const name = replacedBy ? nameOf(replacedBy, book) : dish.name;
      const food = withStatements(unknownFood(dish, substitutions, replacedBy), stated);
      return [{ ...known, name, food, unreadable: true }];
    }
    const { recipe } = served.value;
    const name = replacedBy ? recipe.name : dish.name;
    const food = replacedBy || !before ? recipeFacts(recipe) : swappedFood(dish, before, recipe);
    return [{ ...known, name, food: withStatements(food, stated) }];
  });
}

/** A dish of an offer with everything known of it now: corrections, and what the event gets instead. */
export function dishAsItStands(dish: DishTerms, { corrections, dishesNow: touched }: KnownSince): DishTerms {
  const found = touched.find(({ recipe }) => recipe === dish.recipe);
  if (!found) return correctedDish(dish, corrections);
  const { onRequest: _, unsaid: __, ...rest } = dish;
  return { ...rest, name: found.name, perGuest: found.perGuest ?? dish.perGuest, ...found.food };
}

/** Terms with every dish as it stands: what a page says of food is read from these, never from the frozen ones. */
export function termsAsTheyStand<T extends Pick<Terms, 'packages' | 'addOns'>>(
  terms: T,
  known: KnownSince,
): T {
  const stands = (dishes: readonly DishTerms[]) => dishes.map((dish) => dishAsItStands(dish, known));
  return {
    ...terms,
    packages: terms.packages.map((each) => ({
      ...each,
      courses: each.courses.map((course) => ({ ...course, dishes: stands(course.dishes) })),
    })),
    addOns: terms.addOns.map((each) => (each.dishes ? { ...each, dishes: stands(each.dishes) } : each)),
  };
}

function insteadOf({ to, perGuest }: SubstitutionFact): Pick<DishNow, 'instead' | 'perGuest'> {
  return { instead: to, ...(perGuest === undefined ? {} : { perGuest }) };
}

/** The offered facts with the difference that swapping an ingredient makes to the recipe as it is now. */
function swappedFood(offered: DishTerms, before: Recipe, after: Recipe): FoodFacts {
  const [was, is] = [recipeFacts(before), recipeFacts(after)];
  const known = [...was.contains, ...was.mayContain];
  // What the recipe had and has no longer is gone by the swap; what the offer alone says stays.
  const kept = (offer: readonly string[], now: readonly string[]) =>
    distinct([...offer.filter((each) => !known.includes(each) || now.includes(each)), ...now]);
  const contains = kept(offered.contains, is.contains);
  const mayContain = kept(offered.mayContain, is.mayContain).filter((each) => !contains.includes(each));
  const ofRecipe = [...is.contains, ...is.mayContain];
  // Beside an allergen that only the offer says, nothing new is claimed.
  const mayClaim = [...contains, ...mayContain].every((each) => ofRecipe.includes(each));
  const gained = (now: readonly string[], then: readonly string[]) =>
    mayClaim ? now.filter((each) => !then.includes(each)) : [];
  const marks = distinct([
    ...offered.marks.filter((each) => is.marks.includes(each)),
    ...gained(is.marks, was.marks),
  ]);
  const onRequest = distinct([
    ...(offered.onRequest ?? []).filter((need) => canEat(after, need)),
    ...gained(is.onRequest ?? [], was.onRequest ?? []),
  ]).filter((need) => !isMet(need, marks));
  const unsaid = offered.unsaid === true || is.unsaid === true;
  return {
    marks,
    contains,
    mayContain,
    ...(onRequest.length > 0 ? { onRequest } : {}),
    ...(unsaid ? { unsaid } : {}),
  };
}

/** A diet that the dish now suits as it is needs no request. */
function isMet(text: string, marks: readonly string[]): boolean {
  const need = parseNeed(text);
  return need.ok && needParts(need.value).every((part) => part.kind === 'diet' && marks.includes(part.diet));
}

/** Nobody can say now what is in it: no claim is left, and what the swaps brought counts as a warning at least. */
function unknownFood(
  dish: DishTerms,
  substitutions: readonly SubstitutionFact[],
  replacedBy: SubstitutionFact | undefined,
): FoodFacts {
  const brought = substitutions.flatMap((each) => [...each.contains, ...each.mayContain]);
  const contains = distinct([...dish.contains, ...(replacedBy?.contains ?? [])]);
  const mayContain = distinct([...dish.mayContain, ...brought]).filter((each) => !contains.includes(each));
  return { marks: [], contains, mayContain, unsaid: true };
}

/** What is served instead is called by its recipe, else as it was called when it was decided, else by its id. */
function nameOf({ to, name }: SubstitutionFact, book: Pick<Book, 'recipes'>): string {
  const words = to.replaceAll('-', ' ');
  return book.recipes.get(to)?.name ?? name ?? `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
