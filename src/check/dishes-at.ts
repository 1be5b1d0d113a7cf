import type { Path } from '../book/files/place-of.ts';
import type { Package } from '../engine/menu/package.ts';

/** Where a package's file writes the dishes of its course with this number, from 0: the drinks have a field of their own. */
export function dishesAt({ courses, drinks }: Pick<Package, 'courses' | 'drinks'>, course: number): Path {
  const own = drinks !== undefined && courses[course]?.name === drinks.course;
  return own ? ['drinks', 'kinds'] : ['courses', course, 'dishes'];
}
