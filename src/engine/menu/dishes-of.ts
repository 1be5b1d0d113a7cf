import type { Dish, Package } from './package.ts';

/** Every dish that a package may serve, course by course, whatever the client chooses. */
export function dishesOf(chosen: Package): Dish[] {
  return chosen.courses.flatMap((course) => course.dishes);
}
