import Fraction from 'fraction.js';
import type { Book } from '../book/book.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import { parsePerGuest } from '../engine/measure/per-guest.ts';
import { dishesOf } from '../engine/menu/dishes-of.ts';
import type { Dish, ServiceStyle } from '../engine/menu/package.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import type { EventDish } from '../engine/plan/event-input.ts';
import type { Choice } from '../engine/quote/choice.ts';
import type { CourseTerms, DishTerms, PackageTerms } from '../engine/quote/terms.ts';

/**
 * The dishes an event serves: those of the accepted terms that the choice takes, with their frozen amounts, joined
 * to the recipes as they are now, and the food of the add-ons taken. Overage is the kitchen's own and never in
 * an offer: the package's as it is now, else the kitchen's for the style.
 * Fails where a recipe is gone or held back, naming it.
 */
export function eventDishes(book: Book, accepted: PackageTerms, choice: Choice): Parsed<EventDish[]> {
  const dishes: EventDish[] = [];
  for (const course of accepted.courses) {
    for (const terms of servedOf(course, choice)) {
      const recipe = book.recipes.get(terms.recipe);
      if (!recipe) return missingRecipe(book, terms.recipe, terms.name);
      dishes.push(joined(book, accepted, course, terms, recipe, choice));
    }
  }
  for (const [id, quantity] of Object.entries(choice.addOns)) {
    const addOn = book.kitchen.addOns.get(id);
    if (!addOn || quantity === 0) continue;
    for (const dish of addOn.dishes) dishes.push(withOverage(addOn.name, dish, accepted.style, book));
  }
  return parsed(dishes);
}

/** The dishes of a course that are served at all: all, those chosen, or those with guests who take them. */
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
  recipe: Recipe,
  choice: Choice,
): EventDish {
  const perGuest = parsePerGuest(terms.perGuest);
  if (!perGuest.ok) throw new Error(`a checked offer holds an amount that is none: ${perGuest.what}`);
  const live = book.packages.get(accepted.id);
  const overage = live && dishesOf(live).find((dish) => dish.recipe.id === terms.recipe)?.overage;
  return {
    course: course.name,
    name: terms.name,
    recipe,
    perGuest: perGuest.value,
    counts: terms.counts,
    overage: overage ?? defaultOverage(book, accepted.style),
    chosenBy: course.eachGuest ? choice.mains[course.name]?.[terms.recipe] : undefined,
  };
}

function withOverage(course: string, dish: Dish, style: ServiceStyle, book: Book): EventDish {
  const { recipe, perGuest, counts } = dish;
  const overage = dish.overage ?? defaultOverage(book, style);
  return { course, name: recipe.name, recipe, perGuest, counts, overage, chosenBy: undefined };
}

function defaultOverage(book: Book, style: ServiceStyle): Fraction {
  return book.kitchen.overage.get(style) ?? new Fraction(0n);
}

function missingRecipe(book: Book, recipe: string, dish: string): Parsed<never> {
  const reason = book.held.get(`recipe/${recipe}`);
  return notParsed(
    `the recipe ${recipe} of the accepted dish “${dish}” ${reason ? `is held back: ${reason}` : 'is gone'}`,
    reason ? 'mend what `check` says of it' : `write recipes/${recipe}.mdx again, or substitute the dish`,
  );
}
