import type { Recipe } from '../food/recipe.ts';
import { recipeSuits, variantFor } from '../food/variant.ts';
import type { GuestNeed } from './guest-needs.ts';

/** A course as it is served: what everybody may have, or one of which every guest takes. */
export interface ServedCourse {
  readonly name: string;
  readonly dishes: readonly { readonly name: string; readonly recipe: Recipe }[];
}

/** What a course has for guests with a need, by the names of its dishes. */
export interface CourseCoverage {
  readonly course: string;
  readonly suits: readonly string[];
  /** Dishes that are made apart for them, with what is changed. */
  readonly onRequest: readonly { readonly name: string; readonly changes: readonly string[] }[];
  /** Dishes of which something is unsaid, so that nobody can tell; never to be counted as fed. */
  readonly notKnown: readonly string[];
  readonly fed: boolean;
}

/** How a menu feeds guests with a need. */
export interface NeedCoverage {
  readonly need: GuestNeed;
  /** Empty where the need is not known: then nobody can say. */
  readonly courses: readonly CourseCoverage[];
  /** Whether every course has something, only some have, or none has; null where the need is not known. */
  readonly whole: 'every course' | 'some courses' | 'nothing' | null;
}

/** For each need, alone or combined as it was stated, what each course and the whole meal have for it. */
export function coverageOf(courses: readonly ServedCourse[], needs: readonly GuestNeed[]): NeedCoverage[] {
  return needs.map((need) => {
    if (!need.need) return { need, courses: [], whole: null };
    const covered = courses.map((course) => courseCoverage(course, need));
    const fed = covered.filter((each) => each.fed).length;
    const whole = fed === covered.length ? 'every course' : fed > 0 ? 'some courses' : 'nothing';
    return { need, courses: covered, whole };
  });
}

/** The courses that have nothing for a need. */
export function gapsIn({ courses }: NeedCoverage): CourseCoverage[] {
  return courses.filter(({ fed }) => !fed);
}

/** Dishes by course, in order; what comes with an add-on is left out, since nobody counts on it to be fed. */
export function servedCourses(
  dishes: readonly (ServedCourse['dishes'][number] & { readonly course: string; readonly extra?: true })[],
): ServedCourse[] {
  const meal = Map.groupBy(
    dishes.filter(({ extra }) => !extra),
    ({ course }) => course,
  );
  return [...meal].map(([name, served]) => ({ name, dishes: served }));
}

function courseCoverage({ name, dishes }: ServedCourse, { need }: GuestNeed): CourseCoverage {
  const suits: string[] = [];
  const onRequest: { name: string; changes: readonly string[] }[] = [];
  const notKnown: string[] = [];
  for (const dish of need ? dishes : []) {
    const known = need && recipeSuits(dish.recipe, need);
    const apart = need && known !== 'yes' ? variantFor(dish.recipe, need) : undefined;
    if (known === 'yes') suits.push(dish.name);
    else if (apart) onRequest.push({ name: dish.name, changes: apart.changes });
    else if (known === 'unknown') notKnown.push(dish.name);
  }
  return { course: name, suits, onRequest, notKnown, fed: suits.length + onRequest.length > 0 };
}
