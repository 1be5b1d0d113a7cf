import type { Book } from '../../book/book.ts';
import { type DishRole, usualRole } from '../../engine/course/dish-role.ts';
import type { CourseTerms, DishTerms, Terms } from '../../engine/quote/terms.ts';
import type { SubstitutionFact } from '../../schema/event-fact.ts';
import { amountOf } from '../issue/offered-amount.ts';
import { replacementOf } from './recipes.ts';

/**
 * What an offered dish is in its course: as the offer states it. An offer that does not, as those of before do not,
 * takes what the package states now, else the recipe, else what the course tells, else what a dish has that it takes
 * the place of; undefined where nothing does.
 */
export function offeredRole(
  book: Pick<Book, 'packages' | 'recipes'>,
  dish: Pick<DishTerms, 'recipe' | 'perGuest' | 'role' | 'insteadOf'>,
  course: Pick<CourseTerms, 'name' | 'choose' | 'eachGuest' | 'dishes'>,
  packageId: string,
): DishRole | undefined {
  const live = book.packages
    .get(packageId)
    ?.courses.find(({ name }) => name === course.name)
    ?.dishes.find(({ recipe }) => recipe.id === dish.recipe);
  const stated = dish.role ?? live?.role ?? book.recipes.get(dish.recipe)?.role;
  const own = stated ?? usualRole(amountOf(dish.perGuest), course);
  const original = course.dishes.find(({ recipe }) => recipe === dish.insteadOf?.recipe);
  if (own !== undefined || !original) return own;
  const { insteadOf: _, ...other } = original;
  return offeredRole(book, other, course, packageId);
}

/** The role of each dish of each course of the menus offered, in their order; null where nothing tells it. */
export type OfferedRoles = readonly (readonly (readonly (DishRole | null)[])[])[];

/** The roles of all that terms offer; what replaces a dish takes its place, unless its own recipe states what it is. */
export function offeredRoles(
  book: Pick<Book, 'packages' | 'recipes'>,
  terms: Pick<Terms, 'packages'>,
  substitutions: readonly SubstitutionFact[],
): OfferedRoles {
  const replaced = (recipe: string) => {
    const to = replacementOf(recipe, substitutions)?.to;
    return to === undefined ? undefined : book.recipes.get(to)?.role;
  };
  return terms.packages.map(({ id, courses }) =>
    courses.map((course) =>
      course.dishes.map((dish) => replaced(dish.recipe) ?? offeredRole(book, dish, course, id) ?? null),
    ),
  );
}
