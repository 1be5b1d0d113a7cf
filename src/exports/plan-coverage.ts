import type { NeedCoverage } from '../engine/menu/coverage.ts';
import type { PlanCoverage } from './plan-event-document.ts';

/** What the menu has for each need, as the document says it. */
export function planCoverage(coverage: readonly NeedCoverage[]): PlanCoverage[] {
  return coverage.map(({ need, whole, courses }) => ({
    need: need.text,
    guests: need.guests,
    said: need.said,
    whole,
    courses: courses.map(({ course, fed, suits, onRequest, notKnown }) => ({
      course,
      fed,
      suits,
      apart: onRequest.map(({ name, changes }) => `${name} (${changes.join(', ')})`),
      notKnown,
    })),
  }));
}
