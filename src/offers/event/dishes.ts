import Fraction from 'fraction.js';
import type { Book } from '../../book/book.ts';
import { dishesOf } from '../../engine/menu/dishes-of.ts';
import type { Dish } from '../../engine/menu/package.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { EventDish } from '../../engine/plan/event-input.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { CourseTerms, DishTerms, PackageTerms } from '../../engine/quote/terms.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { amountOf } from '../issue/offered-amount.ts';
import { offeredRole } from './offered-roles.ts';
import { replacementOf, servedRecipe } from './recipes.ts';

/** A dish as it was accepted, before it is joined to a recipe: all that its terms, or its add-on, say. */
export interface TakenDish extends Omit<EventDish, 'recipe'> {
  readonly recipeId: string;
  /** What the client was told of the food; undefined for the food of an add-on. */
  readonly offered: Pick<DishTerms, 'marks' | 'contains' | 'mayContain'> | undefined;
}

/**
 * The dishes an event serves: those of the accepted terms that the choice takes, with their frozen amounts, joined
 * to the recipes as they are now, and the food of the add-ons taken; each as substituted for this event.
 * Fails where a recipe is gone or held back, or an add-on held back, naming it.
 */
export function eventDishes(
  book: Book,
  accepted: PackageTerms,
  choice: Choice,
  substitutions: readonly SubstitutionFact[],
): Parsed<EventDish[]> {
  const held = heldAddOn(book, choice);
  if (held) return held;
  const dishes: EventDish[] = [];
  for (const { recipeId, offered: _, ...taken } of takenDishes(book, accepted, choice)) {
    const served = servedRecipe(book, recipeId, taken.name, substitutions);
    if (!served.ok) return served;
    const { recipe, replacedBy } = served.value;
    const name = replacedBy ? recipe.name : taken.name;
    const perGuest = replacedBy?.perGuest === undefined ? taken.perGuest : amountOf(replacedBy.perGuest);
    // How guests take a dish says nothing of what replaces it.
    const { takeRate, ...rest } = taken;
    const known = replacedBy || takeRate === undefined ? rest : taken;
    // What replaces a dish takes its place in the course, unless its own recipe states what it is.
    const role = (replacedBy && recipe.role) ?? taken.role;
    dishes.push({ ...known, name, recipe, perGuest, role, ...insteadOfNow(taken, substitutions) });
  }
  return parsed(dishes);
}

/**
 * Every dish of the accepted terms that is served at all, course by course, and the food of the add-ons taken.
 * Overage is the kitchen's own and never in an offer: the package's as it is now, else the kitchen's for the style.
 */
export function takenDishes(book: Book, accepted: PackageTerms, choice: Choice): TakenDish[] {
  const usual = book.kitchen.overage.get(accepted.style) ?? new Fraction(0n);
  const live = book.packages.get(accepted.id);
  const own = new Map(live && dishesOf(live).map((dish) => [dish.recipe.id, dish]));
  const ofMenu = accepted.courses.flatMap((course) =>
    servedOf(course, choice).map((terms) => ({
      course: course.name,
      name: terms.name,
      recipeId: terms.recipe,
      perGuest: amountOf(terms.perGuest),
      counts: terms.counts,
      overage: own.get(terms.recipe)?.overage ?? usual,
      role: offeredRole(book, terms, course, accepted.id),
      ...placeOf(terms, own.get(terms.recipe)),
      onlyForEaters:
        own.get(terms.recipe)?.onlyForEaters ?? live?.onlyForEaters ?? book.kitchen.onlyForEaters ?? false,
      ...takeRateOf(own.get(terms.recipe)),
      ...drinkOf(own.get(terms.recipe)),
      chosenBy: course.eachGuest ? choice.mains[course.name]?.[terms.recipe] : undefined,
      offered: terms,
    })),
  );
  const taken = Object.entries(choice.addOns).filter(([, quantity]) => quantity > 0);
  const ofAddOns = taken.flatMap(([id]) => {
    const addOn = book.kitchen.addOns.get(id);
    return (addOn?.dishes ?? []).map(({ recipe, perGuest, counts, overage, takeRate, drink }) => ({
      course: addOn?.name ?? id,
      name: recipe.name,
      recipeId: recipe.id,
      perGuest,
      counts,
      overage: overage ?? usual,
      chosenBy: undefined,
      extra: true as const,
      ...(takeRate === undefined ? {} : { takeRate }),
      ...(drink && { drink, role: 'drink' as const }),
      offered: undefined,
    }));
  });
  return [...ofMenu, ...ofAddOns];
}

/** The dish it takes the place of, as that is served now. */
function insteadOfNow(
  { insteadOf }: Pick<TakenDish, 'insteadOf'>,
  substitutions: readonly SubstitutionFact[],
): Pick<EventDish, 'insteadOf'> {
  if (!insteadOf) return {};
  const recipe = replacementOf(insteadOf.recipe, substitutions)?.to ?? insteadOf.recipe;
  return { insteadOf: { ...insteadOf, recipe } };
}

/** Its food cannot be known now, and a plan without it would leave guests without it. */
function heldAddOn(book: Book, choice: Choice): Parsed<never> | undefined {
  for (const [id, quantity] of Object.entries(choice.addOns)) {
    if (quantity === 0) continue;
    const reason = book.held.get(`add-on/${id}`);
    if (reason)
      return notParsed(
        `the accepted add-on ${id} can’t be used: ${reason}`,
        'fix what `check` reports about it',
      );
    if (!book.kitchen.addOns.has(id))
      return notParsed(
        `the accepted add-on ${id} no longer exists`,
        'put it back in kitchen.yaml until the event is over',
      );
  }
  return undefined;
}

/** The dish it is offered in place of; who else takes it is the kitchen's own count, as overage is. */
function placeOf(
  { insteadOf }: Pick<DishTerms, 'insteadOf'>,
  live: Dish | undefined,
): Pick<EventDish, 'others' | 'insteadOf'> {
  const others = live?.others ?? (insteadOf && new Fraction(0n));
  return { ...(others === undefined ? {} : { others }), ...(insteadOf && { insteadOf }) };
}

/** So is how guests take a dish. */
function takeRateOf(live: Dish | undefined): Pick<EventDish, 'takeRate'> {
  return live?.takeRate === undefined ? {} : { takeRate: live.takeRate };
}

/** So is how a drink is served. */
function drinkOf(live: Dish | undefined): Pick<EventDish, 'drink'> {
  return live?.drink ? { drink: live.drink } : {};
}

/** The dishes of a course that are served: all, those chosen, or those with guests who take them. */
function servedOf(course: CourseTerms, choice: Choice): readonly DishTerms[] {
  if (course.choose !== null) {
    const chosen = choice.courses[course.name] ?? [];
    return course.dishes.filter((dish) => chosen.includes(dish.recipe));
  }
  if (!course.eachGuest) return course.dishes;
  const counts = choice.mains[course.name] ?? {};
  return course.dishes.filter((dish) => (counts[dish.recipe] ?? 0) > 0);
}
