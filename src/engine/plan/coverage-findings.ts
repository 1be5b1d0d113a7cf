import { gapsIn, type NeedCoverage, servedCourses } from '../menu/coverage.ts';
import { fillersFor, placeOf } from '../menu/fillers.ts';
import { guestNeedText } from '../menu/guest-needs.ts';
import type { EventInput } from './event-input.ts';
import type { PlanFinding } from './event-plan.ts';

/** Where an event's menu has nothing for guests, with dishes that would fill the gap. */
export function coverageFindings(coverage: readonly NeedCoverage[], input: EventInput): PlanFinding[] {
  const courses = servedCourses(input.dishes);
  return coverage.flatMap((covered): PlanFinding[] => {
    const { need } = covered;
    if (!need.need) {
      const what = `“${need.text}” is neither a diet nor an allergen, so no dish is checked for it`;
      return [{ about: need.text, what, wayOut: 'ask the client, and go through every dish by hand' }];
    }
    return gapsIn(covered).map(({ course, notKnown }) => {
      const index = courses.findIndex(({ name }) => name === course);
      const served = courses[index]?.dishes.map(({ recipe }) => recipe) ?? [];
      const gap = { package: input.packageId ?? '', course, at: placeOf(index, courses.length), served };
      const fill = need.need ? fillersFor(gap, need.need, input.alternatives ?? []) : [];
      return {
        about: need.text,
        what: gapText(guestNeedText(need), course, notKnown),
        wayOut: fillText(fill.map(({ name }) => name)),
      };
    });
  });
}

/** What is wrong: `9 × vegan: Sweet has nothing for them`. */
export function gapText(who: string, course: string, notKnown: readonly string[]): string {
  const unsaid = notKnown.length > 0 ? `; of ${notKnown.join(', ')} nobody can tell` : '';
  return `${who}: ${course} has nothing for them${unsaid}`;
}

/** What would fill it. */
export function fillText(names: readonly string[]): string {
  const change = 'say in a recipe what can be left out or swapped for them';
  return names.length === 0 ? change : `${names.join(', ')} would do; or ${change}`;
}
