import { type Choice, entryOf } from '../engine/quote/choice.ts';
import type { CourseTerms, DishTerms } from '../engine/quote/terms.ts';
import type { ClientTerms } from './client-terms.ts';
import { packageOf } from './proposal-choice-sides.ts';

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

/** How a choice feeds a need: the courses without a dish for it, or null where nobody can say yet. */
export interface Coverage {
  readonly label: string;
  readonly missing: readonly string[] | null;
  /** The courses where no dish suits for certain and some dish may. */
  readonly ask: readonly string[];
}

/** For each need that the page names, which courses of a choice have no dish that suits it. */
export function coverageOf(data: ClientTerms, choice: Choice): Coverage[] {
  const { courses } = packageOf(data, choice.package);
  return data.needs.map(({ label, suits, ask = [] }) => {
    const has = (course: CourseTerms, some: readonly string[]) =>
      servedIn(course, choice).some(({ recipe }) => some.includes(recipe));
    const without = suits && courses.filter((course) => !has(course, suits));
    const named = (some: readonly CourseTerms[]) => some.map(({ name }) => name);
    return {
      label,
      missing: without && named(without.filter((course) => !has(course, ask))),
      ask: named((without ?? []).filter((course) => has(course, ask))),
    };
  });
}

/** What a coverage says: `a dish in every course`, `nothing in First, Pudding`. */
export function coverageWords({ missing, ask }: Coverage): string {
  if (missing === null) return 'please ask us';
  const words = [
    missing.length > 0 ? `nothing in ${missing.join(', ')}` : '',
    ask.length > 0 ? `please ask us about ${ask.join(', ')}` : '',
  ].filter((each) => each !== '');
  return words.length === 0 ? 'a dish in every course' : words.join('; ');
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
