import { type Choice, entryOf } from '../../engine/quote/choice.ts';
import type { CourseTerms, DishTerms } from '../../engine/quote/terms.ts';
import type { ScriptSay } from '../../words/script-words.ts';
import { coverageWords } from '../coverage-words.ts';
import { packageOf } from './proposal-choice-sides.ts';
import type { ClientTerms } from './terms.ts';

/** Dishes that each of two menus has and the other lacks, and those of both, by name in the order of the menus. */
export interface DishDifference {
  readonly onlyA: readonly string[];
  readonly onlyB: readonly string[];
  readonly both: readonly string[];
}

/** How two choices differ in what is served; a dish that guests may take counts as served. */
export function dishDifference(data: ClientTerms, a: Choice, b: Choice): DishDifference {
  const [ofA, ofB] = [servedDishes(data, a), servedDishes(data, b)];
  const names = (dishes: readonly DishTerms[]) => dishes.map(({ name }) => name);
  const without = (dishes: readonly DishTerms[], others: readonly DishTerms[]) =>
    dishes.filter((dish) => !others.some(({ recipe }) => recipe === dish.recipe));
  return {
    onlyA: names(without(ofA, ofB)),
    onlyB: names(without(ofB, ofA)),
    both: names(ofA.filter((dish) => ofB.some(({ recipe }) => recipe === dish.recipe))),
  };
}

/** How a choice feeds each need that the page names, course by course and role by role, in words. */
export function coverageOf(
  say: ScriptSay,
  data: ClientTerms,
  choice: Choice,
): { label: string; words: string }[] {
  const { style, courses } = packageOf(data, choice.package);
  return data.needs.map(({ label, suits, ask = [] }) => ({
    label,
    words: suits
      ? coverageWords(
          say,
          style,
          courses.map((course) => ({
            name: course.name,
            eachGuest: course.eachGuest,
            dishes: servedIn(course, choice).map(({ recipe, name, role }) => ({
              name,
              role,
              feeds: suits.includes(recipe),
              mayFeed: ask.includes(recipe),
            })),
          })),
        ).words
      : say('fed.unknown'),
  }));
}

function servedDishes(data: ClientTerms, choice: Choice): DishTerms[] {
  const dishes = packageOf(data, choice.package).courses.flatMap((course) => servedIn(course, choice));
  return dishes.filter((dish, index) => dishes.findIndex(({ recipe }) => recipe === dish.recipe) === index);
}

function servedIn(course: CourseTerms, choice: Choice): readonly DishTerms[] {
  if (course.choose === null) return course.dishes;
  const chosen = entryOf(choice.courses, course.name) ?? [];
  return course.dishes.filter(({ recipe }) => chosen.includes(recipe));
}
