import { fillersFor, gapPlace } from '../../menu/fillers.ts';
import { guestNeedText } from '../../menu/guest-needs.ts';
import type { EventInput } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';
import { type CourseCoverage, gapsIn, type NeedCoverage, servedCourses } from './coverage.ts';

/** Where an event's menu lacks something for guests, with dishes that would fill the gap. */
export function coverageFindings(coverage: readonly NeedCoverage[], input: EventInput): PlanFinding[] {
  const courses = servedCourses(input.style, input.dishes);
  return coverage.flatMap((covered): PlanFinding[] => {
    const { need } = covered;
    if (!need.need) {
      const what = `“${need.text}” is not a diet or an allergen that Salver knows, so no dish is checked for it`;
      return [{ about: need.text, what, wayOut: 'ask the client, and check every dish by hand' }];
    }
    return gapsIn(covered).flatMap((gap): PlanFinding[] => {
      const who = guestNeedText(need);
      const what = lackText(who, gap.course, gap);
      if (what === undefined) return [];
      const index = courses.findIndex(({ name }) => name === gap.course);
      const served = courses[index]?.dishes.map(({ recipe }) => recipe) ?? [];
      const place = {
        package: input.packageId ?? '',
        course: gap.course,
        at: gapPlace(gap.course, index, courses.length),
        served,
        roles: gap.missing,
      };
      const fill = need.need ? fillersFor(place, need.need, input.alternatives ?? []) : [];
      const wayOut = gap.asked.length > 0 ? ROLE_WAY_OUT : fillText(fill.map(({ name }) => name));
      return [{ about: need.text, what, wayOut }];
    });
  });
}

/** What a course lacks for guests, where the counts chosen alone do not tell it. */
export function lackText(who: string, course: string, gap: CourseCoverage): string | undefined {
  if (gap.asked.length > 0) return askedText(who, course, gap.asked);
  return gap.nothing || gap.missing.length > 0 ? gapText(who, course, gap) : undefined;
}

/** What is wrong: `9 × vegan: Sweet has nothing for them`, `9 × vegan: Table has no main for them`. */
export function gapText(
  who: string,
  course: string,
  { notKnown, missing }: Pick<CourseCoverage, 'notKnown' | 'missing'>,
): string {
  const unknown = notKnown.length > 0 ? `; not known for ${notKnown.join(', ')}` : '';
  const what = missing.length > 0 ? `no ${missing.join(' and no ')}` : 'nothing';
  return `${who}: ${course} has ${what} for them${unknown}`;
}

/** Which dishes decide it by a role nobody has stated: `9 × vegan: Table may have no main for them; …`. */
export function askedText(who: string, course: string, dishes: readonly string[]): string {
  return `${who}: ${course} may have no main for them; no role is stated for ${dishes.join(', ')}`;
}

/** How to state it. */
export const ROLE_WAY_OUT =
  'state it in the package or the recipe, such as “role: main”: main, side, bread, sauce, drink or sweet';

/** What would fill it. */
export function fillText(names: readonly string[]): string {
  const change = 'state in a recipe what can be left out or swapped for them';
  return names.length === 0 ? change : `${names.join(', ')} would work; or ${change}`;
}
