import type { NeedCoverage } from '../../engine/plan/servings/coverage.ts';
import type { PlanCoverage } from '../form/event.ts';

/** What the menu has for each need, as the document says it. */
export function planCoverage(coverage: readonly NeedCoverage[]): PlanCoverage[] {
  return coverage.map(({ need, whole, courses }) => ({
    need: need.text,
    guests: need.guests,
    said: need.said,
    whole,
    courses: courses.map(({ course, fed, suits, onRequest, notKnown, roles, missing, asked, short }) => ({
      course,
      fed,
      suits,
      apart: onRequest.map(({ name }) => name),
      notKnown,
      roles: roles.map(({ role, dishes }) => ({ role: role ?? '', dishes })),
      missing,
      asked,
      short,
    })),
  }));
}
