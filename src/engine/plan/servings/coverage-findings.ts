import { fillersFor, gapPlace } from '../../menu/fillers.ts';
import { guestNeedSaid } from '../../menu/guest-needs.ts';
import { type Said, type Statement, several, statement } from '../../text/statement.ts';
import type { EventInput } from '../event-input.ts';
import type { PlanFinding } from '../event-plan.ts';
import { type CourseCoverage, gapsIn, type NeedCoverage, servedCourses } from './coverage.ts';

/** Where an event's menu lacks something for guests, with dishes that would fill the gap. */
export function coverageFindings(coverage: readonly NeedCoverage[], input: EventInput): PlanFinding[] {
  const courses = servedCourses(input.style, input.dishes);
  return coverage.flatMap((covered): PlanFinding[] => {
    const { need } = covered;
    if (!need.need) {
      const what = statement('found.need-unknown', { need: need.text });
      return [{ about: need.text, what, wayOut: statement('found.need-unknown.way') }];
    }
    return gapsIn(covered).flatMap((gap): PlanFinding[] => {
      const what = lackSaid(guestNeedSaid(need), gap.course, gap);
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
      const wayOut = gap.asked.length > 0 ? ROLE_WAY_OUT : fillSaid(fill.map(({ name }) => name));
      return [{ about: need.text, what, wayOut }];
    });
  });
}

/** What a course lacks for guests, where the counts chosen alone do not tell it. */
function lackSaid(who: Statement, course: string, gap: CourseCoverage): Said | undefined {
  if (gap.asked.length > 0) return askedSaid(who, course, gap.asked);
  return gap.nothing || gap.missing.length > 0 ? gapSaid(who, course, gap) : undefined;
}

/** What is wrong: `9 × vegan: Sweet has nothing for them`, `9 × vegan: Table has no main for them`. */
export function gapSaid(
  who: Said,
  course: string,
  { notKnown, missing }: Pick<CourseCoverage, 'notKnown' | 'missing'>,
): Statement {
  const unknown = notKnown.length > 0;
  const values = { who, course, ...(unknown && { dishes: several('comma', notKnown) }) };
  return missing.length === 0
    ? statement(unknown ? 'found.course-nothing-unknown' : 'found.course-nothing', values)
    : statement(unknown ? 'found.course-lacks-unknown' : 'found.course-lacks', {
        ...values,
        roles: several('or', missing),
      });
}

/** Which dishes decide it by a role nobody has stated: `9 × vegan: Table may have no main for them; …`. */
export function askedSaid(who: Said, course: string, dishes: readonly string[]): Statement {
  return statement('found.main-asked', { who, course, dishes: several('comma', dishes) });
}

/** How to state it. */
export const ROLE_WAY_OUT = statement('found.role-way');

/** What would fill it. */
export function fillSaid(names: readonly string[]): Statement {
  return names.length === 0
    ? statement('found.fill-none')
    : statement('found.fill', { dishes: several('comma', names) });
}
