import type { LineItem, Recipe } from '../engine/food/recipe.ts';
import { partsFirst } from '../engine/food/walk.ts';
import type { CrewMeal } from '../engine/menu/crew-meal.ts';
import { dishesOf } from '../engine/menu/dishes-of.ts';
import type { Book } from './book.ts';

/** The recipes that some package, add-on, offer or other recipe in use has, and the ingredients in them. */
export interface Uses {
  /** The recipes that guests are served as they are. */
  readonly served: ReadonlySet<string>;
  readonly recipes: ReadonlySet<string>;
  readonly ingredients: ReadonlySet<string>;
}

/** What of the Book's recipes is served somewhere. */
export function usesIn(book: Book): Uses {
  const served = new Map<string, Recipe>();
  for (const chosen of book.packages.values())
    for (const { recipe } of dishesOf(chosen)) served.set(recipe.id, recipe);
  for (const addOn of book.kitchen.addOns.values())
    for (const { recipe } of addOn.dishes) served.set(recipe.id, recipe);
  for (const { recipe } of crewDishes(book)) served.set(recipe.id, recipe);
  for (const id of recipesOffered(book)) {
    const recipe = book.recipes.get(id);
    if (recipe) served.set(id, recipe);
  }
  const used = withSwaps(partsFirst(served.values()));
  const ingredients = ingredientsIn(used);
  for (const id of recipesOffered(book)) if (book.ingredients.has(id)) ingredients.add(id);
  const { ice, water } = book.kitchen.drinks ?? {};
  for (const id of [ice, water]) if (id !== undefined) ingredients.add(id);
  return { served: new Set(served.keys()), recipes: new Set(used.map(({ id }) => id)), ingredients };
}

/** Ids of the ingredients that any of these recipes has in a line of its own, or takes for a need. */
export function ingredientsIn(recipes: Iterable<Recipe>): Set<string> {
  const found = new Set<string>();
  for (const recipe of recipes)
    for (const item of itemsOf(recipe)) if (item.kind === 'ingredient') found.add(item.ingredient.id);
  return found;
}

/** What the lines of a recipe call for, and what is taken instead for a need. */
export function itemsOf({ lines, changes = [] }: Recipe): LineItem[] {
  return [...lines.map(({ item }) => item), ...changes.flatMap(({ instead }) => instead ?? [])];
}

/** The recipes and those that they take for a need, down to the bottom. */
function withSwaps(recipes: readonly Recipe[]): Recipe[] {
  const found = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  for (const recipe of found.values())
    for (const item of itemsOf(recipe)) if (item.kind === 'recipe') found.set(item.recipe.id, item.recipe);
  return [...found.values()];
}

/** What crews eat that is a dish of their own. */
function crewDishes({ kitchen, proposals }: Book): Extract<CrewMeal, { kind: 'dishes' }>['dishes'] {
  return [kitchen, ...proposals.values()].flatMap(({ crewMeal }) =>
    crewMeal?.kind === 'dishes' ? crewMeal.dishes : [],
  );
}

/** Recipes of offers, and those that an event takes instead of one. */
function* recipesOffered(book: Book): Generator<string> {
  for (const { facts } of book.events.values())
    for (const fact of facts) if (fact.kind === 'substitution') yield fact.to;
  for (const revisions of book.offers.values())
    for (const { terms } of revisions)
      for (const { courses } of terms.packages)
        for (const { dishes } of courses) for (const { recipe } of dishes) yield recipe;
}
