import type { DishRole } from '../../course/dish-role.ts';
import { hasAll, type RoleGaps, roleGaps } from '../../course/role-gaps.ts';
import type { ServiceStyle } from '../../course/service-style.ts';
import { type Sitting, sittingsOf } from '../../course/sitting.ts';
import { recipeSuits } from '../../food/variant.ts';
import type { GuestNeed } from '../../menu/guest-needs.ts';
import type { Statement } from '../../text/statement.ts';
import type { EventDish } from '../event-input.ts';

/** A course as it is planned, or all stations of a menu: its dishes, split by need. */
export type PlannedCourse = Sitting<EventDish>;

/** What a course has for guests with a need, by the names of its dishes. */
export interface CourseCoverage extends RoleGaps {
  readonly course: string;
  /** Planned dishes that they can eat as they are, also where no portion of them is counted for these guests. */
  readonly suits: readonly string[];
  /** Dishes that are made separately for them, with what is changed. */
  readonly onRequest: readonly { readonly name: string; readonly changes: readonly Statement[] }[];
  /** Dishes of which something is not stated, so that nobody can tell; never to be counted as fed. */
  readonly notKnown: readonly string[];
  /** What is planned for them by what it is in the course; undefined where that is not known. */
  readonly roles: readonly { readonly role: DishRole | undefined; readonly dishes: readonly string[] }[];
  /** Guests with the need who get no portion by the counts chosen. */
  readonly short: number;
  readonly fed: boolean;
}

/** How a menu feeds guests with a need. */
export interface NeedCoverage {
  readonly need: GuestNeed;
  /** Empty where the need is not known: then nobody can say. */
  readonly courses: readonly CourseCoverage[];
  /** Whether every course has all that it has for others, only some have anything, or none has; null where the need is not known. */
  readonly whole: 'every course' | 'some courses' | 'nothing' | null;
}

/**
 * For each need, alone or combined as it was stated, what each course and the whole meal have for it. Only portions
 * that are planned for guests with the need count: what no dish of the plan holds, or what is not planned to be cooked
 * (`isPlanned`), feeds nobody.
 */
export function coverageOf(
  courses: readonly PlannedCourse[],
  needs: readonly GuestNeed[],
  isPlanned: (dish: EventDish) => boolean = () => true,
): NeedCoverage[] {
  return needs.map((need) => {
    if (!need.need) return { need, courses: [], whole: null };
    const covered = courses.map((course) => courseCoverage(course, need, isPlanned));
    const some = covered.some(({ roles }) => roles.length > 0);
    const whole = covered.every(({ fed }) => fed) ? 'every course' : some ? 'some courses' : 'nothing';
    return { need, courses: covered, whole };
  });
}

/** The courses that lack something for a need. */
export function gapsIn({ courses }: NeedCoverage): CourseCoverage[] {
  return courses.filter(({ fed }) => !fed);
}

/**
 * Dishes by course, in order, stations as one; what comes with an add-on is left out, since nobody counts on it to be
 * fed.
 */
export function servedCourses(style: ServiceStyle, dishes: readonly EventDish[]): readonly PlannedCourse[] {
  const meal = Map.groupBy(
    dishes.filter(({ extra }) => !extra),
    ({ course }) => course,
  );
  return sittingsOf(
    style,
    [...meal].map(([name, served]) => ({ name, dishes: served })),
  );
}

function courseCoverage(
  { name, dishes }: PlannedCourse,
  need: GuestNeed,
  isPlanned: (dish: EventDish) => boolean,
): CourseCoverage {
  const isFor = (dish: EventDish) =>
    isPlanned(dish) && (dish.portions?.needs.some((each) => each.need === need.text) ?? false);
  const theirs = dishes.filter(isFor);
  const suits = (dish: EventDish) =>
    need.need !== null &&
    isPlanned(dish) &&
    !dish.portions?.apart &&
    recipeSuits(dish.recipe, need.need) === 'yes';
  const madeFor = new Set(theirs.flatMap(({ portions }) => [portions?.apart?.recipe, portions?.insteadOf]));
  // What is held back for others, or made separately for them, is in the course for nobody else.
  const others = dishes.filter(
    (dish) =>
      !isFor(dish) && !dish.portions?.apart && dish.others === undefined && !madeFor.has(dish.recipe.id),
  );
  const oneEach = dishes.every(({ chosenBy }) => chosenBy !== undefined);
  const gaps = roleGaps(
    [...theirs, ...others].map((dish) => ({ name: dish.name, role: dish.role, feeds: isFor(dish) })),
    oneEach,
  );
  const short = oneEach && need.said ? need.guests - guestsOf(theirs, need.text) : 0;
  return {
    course: name,
    suits: dishes.flatMap((dish) => (suits(dish) ? [dish.name] : [])),
    onRequest: theirs.flatMap(({ name: dish, portions }) =>
      portions?.apart ? [{ name: dish, changes: portions.apart.changes }] : [],
    ),
    notKnown: others.flatMap((dish) =>
      need.need && recipeSuits(dish.recipe, need.need) === 'unknown' ? [dish.name] : [],
    ),
    roles: [...Map.groupBy(theirs, ({ role }) => role)].map(([role, each]) => ({
      role,
      dishes: each.map((dish) => dish.name),
    })),
    short,
    ...gaps,
    fed: hasAll(gaps) && short <= 0,
  };
}

function guestsOf(dishes: readonly EventDish[], text: string): number {
  const each = dishes.flatMap(({ portions }) => portions?.needs.filter(({ need }) => need === text) ?? []);
  return each.reduce((sum, { guests }) => sum + guests, 0);
}
