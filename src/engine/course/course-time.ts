import type { Minutes } from '../measure/duration.ts';
import { minutes } from '../measure/duration.ts';
import type { ServiceStyle } from './service-style.ts';

/** When a course is served. */
export interface CourseTime {
  /** From the time of serving to its first plate. */
  readonly after: Minutes;
  /** From its first plate to its last; at a buffet, how long it stands there. */
  readonly lasts: Minutes;
}

/** How long the plates of one course take to carry out: common practice, no source. */
const PLATED_COURSE = minutes(30);

/**
 * When the courses of a menu are served, in their order. Plated courses follow one another; in every other style all
 * stand ready from the beginning, for as long as is served. What a package states of a course wins; a plated course
 * after it follows from there.
 */
export function courseTimes(
  courses: readonly { readonly name: string; readonly time?: Partial<CourseTime> }[],
  style: ServiceStyle,
  service: Minutes | undefined,
): Map<string, CourseTime> {
  let next = 0;
  return new Map(
    courses.map(({ name, time }) => {
      const plated = style === 'plated';
      const after = time?.after ?? minutes(plated ? next : 0);
      const lasts = time?.lasts ?? (plated ? PLATED_COURSE : minutes(Math.max(0, (service ?? 0) - after)));
      next = after + lasts;
      return [name, { after, lasts }];
    }),
  );
}
