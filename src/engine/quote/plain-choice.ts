import type { Choice } from './choice.ts';
import { choosers } from './choice.ts';
import type { Guests } from './counts.ts';
import type { DishTerms, PackageTerms } from './terms.ts';

/**
 * The plainest complete choice of a package for a party, to compare prices with: the first dishes without a
 * supplement wherever there is a choice, no add-ons, no needs.
 */
export function plainChoice(chosen: PackageTerms, guests: Guests): Choice {
  const courses: Record<string, readonly string[]> = {};
  const mains: Record<string, Readonly<Record<string, number>>> = {};
  for (const course of chosen.courses) {
    const dishes = plainFirst(course.dishes).map((dish) => dish.recipe);
    if (course.eachGuest && dishes[0] !== undefined)
      mains[course.name] = { [dishes[0]]: choosers(course, guests) };
    else if (course.choose !== null) courses[course.name] = dishes.slice(0, course.choose);
  }
  return { package: chosen.id, guests, courses, mains, addOns: {}, needs: {} };
}

function plainFirst(dishes: readonly DishTerms[]): DishTerms[] {
  const plain = (dish: DishTerms) => dish.supplement === undefined;
  return [...dishes.filter(plain), ...dishes.filter((dish) => !plain(dish))];
}
