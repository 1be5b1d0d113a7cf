import type { ServiceStyle } from './service-style.ts';

/** How all stations of a menu are named where they are looked at as one. */
export const ALL_STATIONS = 'The stations';

/** Dishes that guests have before them at one time. */
export interface Sitting<D> {
  /** The course's name, or `ALL_STATIONS`. */
  readonly name: string;
  readonly dishes: readonly D[];
}

/**
 * The courses of a menu as guests meet them. Stations are open side by side and guests walk between them, so what one
 * lacks for somebody another may have (common practice, no source); courses of any other style follow one another.
 */
export function sittingsOf<D>(style: ServiceStyle, courses: readonly Sitting<D>[]): readonly Sitting<D>[] {
  if (style !== 'stations' || courses.length < 2) return courses;
  return [{ name: ALL_STATIONS, dishes: courses.flatMap(({ dishes }) => dishes) }];
}
