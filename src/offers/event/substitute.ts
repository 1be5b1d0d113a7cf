import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { Recipe } from '../../engine/food/recipe.ts';
import { itemId } from '../../engine/food/swap-item.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { PackageTerms } from '../../engine/quote/terms.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { unknownAllergens } from '../issue/unknown-allergens.ts';
import { type CurrentEvent, changeableEvent, type NextFact, nextFact } from './current-event.ts';
import { type DishDifference, type DishPair, dishDifference, needsMissed } from './dish-difference.ts';
import { eventDishes } from './dishes.ts';
import { servedNow } from './served-dishes.ts';
import { dishSwap } from './swap-dish.ts';
import { ingredientSwap } from './swap-ingredient.ts';

/** A substitution as it would be recorded, with what it makes of each dish it touches. */
export interface Substitution extends NextFact<SubstitutionFact> {
  /** `Leeks`, `Onions`: names of what goes and what comes. */
  readonly names: { readonly from: string; readonly to: string };
  readonly dishes: readonly DishDifference[];
  /** Guests’ needs that a dish met before and no longer does. */
  readonly needs: readonly string[];
}

/**
 * The fact that swaps a dish or an ingredient for one event. A dish keeps its per-guest amount where the new
 * recipe is made in that unit, else takes the one a package states for it, unless `amount` says another. An
 * ingredient (or a recipe that others are made with) keeps the amounts of every line that calls for it.
 * Refused where nothing of the event calls for it, a unit is not reached, a recipe would contain itself, or the
 * allergens of what is taken instead are not known: an unknown is never served.
 */
export function substitution(
  book: Book,
  event: string,
  { from, to, amount }: { readonly from: string; readonly to: string; readonly amount?: string },
  today: Day,
): Parsed<Substitution> {
  const found = changeableEvent(book, event, today);
  if (!found.ok) return found;
  const current = found.value;
  if (from === to) return notParsed(`${from} would stay ${to}`, 'name what replaces it');
  const accepted = acceptedPackage(current);
  const served = servedNow(book, current, accepted);
  const dish = served.find((each) => each.id === from);
  const made = dish
    ? dishSwap(book, dish, to, amount)
    : ingredientSwap(book, current, served, { from, to, amount });
  if (!made.ok) return made;
  const draft: SubstitutionFact = {
    version: 1,
    kind: 'substitution',
    on: today,
    ...made.value.swap,
    name: made.value.names.to,
    contains: [],
    mayContain: [],
    without: [],
    dietsLost: [],
    tell: [],
  };
  const after = eventDishes(book, accepted, current.status.choice, [...current.status.substitutions, draft]);
  if (!after.ok) return after;
  const pairs = served.flatMap(({ id, ...before }, index): (DishPair & { replaced: boolean })[] => {
    const now = after.value[index];
    if (!now || (before.recipe ? !touched(before.recipe, now.recipe) : id !== from)) return [];
    return [{ before, after: now, replaced: dish !== undefined && id === from }];
  });
  const unsaid = unknownAllergens(
    pairs.map(({ after }) => ({ recipe: { ...after.recipe, name: after.name } })),
  );
  if (unsaid) return unsaid;
  const dishes = pairs.map((pair) => dishDifference(pair, pair.replaced, current.offer.terms.locale));
  const fact = nextFact(current.facts, {
    ...draft,
    contains: distinct(dishes.flatMap((each) => each.contains)),
    mayContain: distinct(dishes.flatMap((each) => each.mayContain)),
    without: distinct(dishes.flatMap((each) => each.without)),
    dietsLost: distinct(dishes.flatMap((each) => each.dietsLost)),
    tell: distinct(dishes.map((each) => each.tell).filter((text) => text !== '')),
  });
  if (!fact.ok) return fact;
  const needs = distinct(pairs.flatMap((pair) => needsMissed(pair, current.status.choice.needs)));
  return parsed({ ...fact.value, names: made.value.names, dishes, needs });
}

function acceptedPackage({ offer, status }: CurrentEvent): PackageTerms {
  const accepted = offer.terms.packages.find((each) => each.id === status.choice.package);
  if (!accepted) throw new Error('a checked acceptance chooses a package that is not in its offer');
  return accepted;
}

function touched(before: Recipe, after: Recipe): boolean {
  // A swap makes new objects of the recipes it touches and of no other; an earlier swap made new ones of both.
  return JSON.stringify(ids(before)) !== JSON.stringify(ids(after));
}

function ids(recipe: Recipe): unknown {
  return [
    recipe.id,
    recipe.lines.map(({ item }) => (item.kind === 'recipe' ? ids(item.recipe) : itemId(item))),
  ];
}

function distinct(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
