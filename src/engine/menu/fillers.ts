import { type DishRole, roleOf } from '../course/dish-role.ts';
import { ALL_STATIONS } from '../course/sitting.ts';
import type { Need } from '../food/need.ts';
import type { Recipe } from '../food/recipe.ts';
import { recipeSuits } from '../food/variant.ts';
import { type UnitKind, unitKind } from '../measure/units.ts';
import type { Package } from './package.ts';

/** A dish of a package with where it stands in the menu. */
export interface MenuDish {
  readonly recipe: Recipe;
  readonly package: string;
  readonly course: string;
  /** From 0 for a dish of the first course to 1 for one of the last. */
  readonly at: number;
  /** How it is given out: by the piece, by weight or by volume. */
  readonly given: UnitKind;
  /** What it is in its course; undefined where nothing tells. */
  readonly role?: DishRole | undefined;
}

/** Where a menu has nothing for somebody, and what the course serves. */
export interface MenuGap extends Pick<MenuDish, 'package' | 'course'> {
  readonly served: readonly Recipe[];
  /** From 0 to 1; null where the dish may stand anywhere in the menu. */
  readonly at: number | null;
  /** What is missing of what the course has for others; empty where it has nothing at all for them. */
  readonly roles?: readonly DishRole[];
}

/** The most dishes that are named for a gap. */
export const MOST_FILLERS = 5;

/** Every dish of these packages with its place, in the order of their menus. */
export function menuDishes(packages: Iterable<Package>): MenuDish[] {
  return [...packages].flatMap(({ id, courses }) =>
    courses.flatMap((course, index) =>
      course.dishes.map((dish) => ({
        recipe: dish.recipe,
        package: id,
        course: course.name,
        at: placeOf(index, courses.length),
        given: unitKind(dish.perGuest.amount.unit),
        role: roleOf(dish, course),
      })),
    ),
  );
}

/** The place of a course in its menu, from 0 to 1. */
export function placeOf(index: number, courses: number): number {
  return courses > 1 ? index / (courses - 1) : 0;
}

/** The place in its menu of what is looked for in a course; null for all stations at once. */
export function gapPlace(course: string, index: number, courses: number): number | null {
  return course === ALL_STATIONS ? null : placeOf(index, courses);
}

/**
 * Dishes that would fill a gap, at most {@link MOST_FILLERS}, each once: those that suit the need as they are and
 * that the course does not serve already. First those of the same course, then of courses of the same name, then of
 * courses that stand at about the same place in their menus, where a starter is a starter and a sweet a sweet, those
 * given out as the course's own dishes are before others. A drink is no answer where the course pours nothing, a
 * sauce never is, and where a main is missing only a main is one.
 */
export function fillersFor(gap: MenuGap, need: Need, dishes: readonly MenuDish[]): Recipe[] {
  const served = new Set(gap.served.map(({ id }) => id));
  const given = new Set(dishes.filter(({ recipe }) => served.has(recipe.id)).map((dish) => dish.given));
  const away = ({ at }: MenuDish) => (gap.at === null ? 0 : Math.abs(at - gap.at));
  const rank = (dish: MenuDish): number => {
    if (dish.course === gap.course) return dish.package === gap.package ? 0 : 1;
    return 2 + away(dish) + (given.has(dish.given) ? 0 : 1);
  };
  const near = dishes
    .filter((dish) => dish.course === gap.course || away(dish) <= NEAR)
    .filter((dish) => dish.given !== 'volume' || given.has('volume'))
    .filter(({ role }) =>
      gap.roles?.length ? role !== undefined && gap.roles.includes(role) : role !== 'sauce',
    )
    .toSorted((a, b) => rank(a) - rank(b));
  const found = new Map<string, Recipe>();
  for (const { recipe } of near) {
    if (found.size === MOST_FILLERS) break;
    if (!served.has(recipe.id) && recipeSuits(recipe, need) === 'yes') found.set(recipe.id, recipe);
  }
  return [...found.values()];
}

/** How far apart two courses may stand in their menus for one to take the other's dish. */
const NEAR = 0.34;
