import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import { parsePerGuest } from '../engine/measure/per-guest.ts';
import { dishesOf } from '../engine/menu/dishes-of.ts';
import type { Dish, ServiceStyle } from '../engine/menu/package.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import type { EventDish } from '../engine/plan/event-input.ts';
import type { Choice } from '../engine/quote/choice.ts';
import type { CourseTerms, DishTerms, PackageTerms } from '../engine/quote/terms.ts';
import type { SubstitutionFact } from '../schema/event-fact.ts';
import { type ServedRecipe, servedRecipe } from './event-recipes.ts';

/**
 * The dishes an event serves: those of the accepted terms that the choice takes, with their frozen amounts, joined
 * to the recipes as they are now, and the food of the add-ons taken; each as substituted for this event. Overage is
 * the kitchen's own and never in an offer: the package's as it is now, else the kitchen's for the style.
 * Fails where a recipe is gone or held back, or an add-on held back, naming it.
 */
export function eventDishes(
  book: Book,
  accepted: PackageTerms,
  choice: Choice,
  substitutions: readonly SubstitutionFact[],
): Parsed<EventDish[]> {
  const dishes: EventDish[] = [];
  for (const { course, terms } of servedTerms(accepted, choice)) {
    const served = servedRecipe(book, terms.recipe, terms.name, substitutions);
    if (!served.ok) return served;
    dishes.push(joined(book, accepted, course, terms, served.value, choice));
  }
  for (const [id, quantity] of Object.entries(choice.addOns)) {
    const addOn = book.kitchen.addOns.get(id);
    const reason = book.held.get(`add-on/${id}`);
    // Its food cannot be known now, and a plan without it would leave guests without it.
    if (quantity > 0 && reason) {
      return notParsed(`the accepted add-on ${id} is held back: ${reason}`, 'mend what `check` says of it');
    }
    if (!addOn || quantity === 0) continue;
    for (const dish of addOn.dishes) {
      const served = servedRecipe(book, dish.recipe.id, dish.recipe.name, substitutions);
      if (!served.ok) return served;
      dishes.push(ofAddOn(addOn.name, dish, served.value, accepted.style, book));
    }
  }
  return parsed(dishes);
}

/** The accepted dishes that are served at all, course by course. */
export function servedTerms(
  accepted: PackageTerms,
  choice: Choice,
): { readonly course: CourseTerms; readonly terms: DishTerms }[] {
  return accepted.courses.flatMap((course) => servedOf(course, choice).map((terms) => ({ course, terms })));
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

function joined(
  book: Book,
  accepted: PackageTerms,
  course: CourseTerms,
  terms: DishTerms,
  { recipe, replacedBy }: ServedRecipe,
  choice: Choice,
): EventDish {
  const live = book.packages.get(accepted.id);
  const overage = live && dishesOf(live).find((dish) => dish.recipe.id === terms.recipe)?.overage;
  return {
    course: course.name,
    name: replacedBy ? recipe.name : terms.name,
    recipe,
    perGuest: amountOf(replacedBy?.perGuest ?? terms.perGuest),
    counts: terms.counts,
    overage: overage ?? defaultOverage(book, accepted.style),
    chosenBy: course.eachGuest ? choice.mains[course.name]?.[terms.recipe] : undefined,
  };
}

function ofAddOn(
  course: string,
  dish: Dish,
  { recipe, replacedBy }: ServedRecipe,
  style: ServiceStyle,
  book: Book,
): EventDish {
  const perGuest = replacedBy?.perGuest === undefined ? dish.perGuest : amountOf(replacedBy.perGuest);
  const overage = dish.overage ?? defaultOverage(book, style);
  const name = replacedBy ? recipe.name : dish.recipe.name;
  return { course, name, recipe, perGuest, counts: dish.counts, overage, chosenBy: undefined };
}

function amountOf(text: string): EventDish['perGuest'] {
  const amount = parsePerGuest(text);
  if (!amount.ok) throw new Error(`a checked record holds an amount that is none: ${amount.what}`);
  return amount.value;
}

function defaultOverage(book: Book, style: ServiceStyle): Fraction {
  return book.kitchen.overage.get(style) ?? new Fraction(0n);
}
