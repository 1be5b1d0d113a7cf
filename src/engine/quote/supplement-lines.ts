import { money } from '../money/money.ts';
import { type Choice, entryOf } from './choice.ts';
import { countGuests } from './counts.ts';
import type { LineWhy } from './line-why.ts';
import { type PricedLine, pricedLine } from './priced-line.ts';
import type { Ratio } from './ratio.ts';
import type { CourseTerms, DishTerms, PackageTerms, Terms } from './terms.ts';

/**
 * What chosen dishes cost on top of the menu: for each guest who takes the dish where each takes one, else for
 * each guest the dish counts. A dish of a course without a choice is always served, so its supplement is too.
 */
export function supplementLines(terms: Terms, chosen: PackageTerms, choice: Choice): PricedLine[] {
  return chosen.courses.flatMap((course) =>
    course.dishes.flatMap((dish) => {
      if (dish.supplement === undefined) return [];
      const eaters = eatersOf(course, dish, choice);
      if (eaters.over === 0n) return [];
      const unitPrice = money(dish.supplement, terms.currency);
      const why = (): LineWhy => ({ of: 'supplement' });
      const key = `supplement:${course.name}:${dish.recipe}`;
      return [pricedLine({ key, name: dish.name, class: 'food', unitPrice, why }, eaters)];
    }),
  );
}

function eatersOf(course: CourseTerms, dish: DishTerms, choice: Choice): Ratio {
  if (course.eachGuest) {
    const mains = entryOf(choice.mains, course.name);
    return { over: BigInt((mains && entryOf(mains, dish.recipe)) ?? 0), under: 1n };
  }
  const served = course.choose === null || entryOf(choice.courses, course.name)?.includes(dish.recipe);
  return served ? countGuests(choice.guests, dish.counts) : { over: 0n, under: 1n };
}
