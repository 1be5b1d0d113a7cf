import type { Day } from '../engine/calendar/day.ts';
import { coverageOf, gapsIn, type ServedCourse } from '../engine/menu/coverage.ts';
import { fillersFor, type MenuDish, menuDishes, placeOf } from '../engine/menu/fillers.ts';
import { guestNeeds, guestNeedText } from '../engine/menu/guest-needs.ts';
import type { Course, Package } from '../engine/menu/package.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import { fillText, gapText } from '../engine/plan/coverage-findings.ts';
import type { Book } from './book.ts';
import type { Finding } from './finding.ts';
import { findingAt } from './finding-at.ts';

/**
 * Where the menus of proposals that are still to be answered have nothing for guests whose needs they name, with
 * dishes of the kitchen that would fill the gap; and needs that add up to more guests than there are. What the
 * kitchen assumes where nothing is said is told by the plan alone.
 */
export function needsUnfed(book: Book, today: Day): Finding[] {
  const dishes = menuDishes(book.packages.values());
  return [...book.proposals.values()]
    .filter(({ id, date, withdrawn }) => date >= today && !withdrawn && !book.events.has(id))
    .flatMap((proposal) => [
      ...tooMany(book, proposal),
      ...proposal.packages.flatMap((chosen) => unfedBy(book, proposal, chosen, dishes)),
    ]);
}

function unfedBy(book: Book, proposal: Proposal, chosen: Package, dishes: readonly MenuDish[]): Finding[] {
  const courses = proposedCourses(proposal, chosen);
  const needs = guestNeeds(proposal.needs, proposal.guests, undefined);
  return coverageOf(courses, needs).flatMap((covered) =>
    gapsIn(covered).map(({ course, notKnown }) => {
      const { need } = covered;
      const index = courses.findIndex(({ name }) => name === course);
      const served = courses[index]?.dishes.map(({ recipe }) => recipe) ?? [];
      const gap = { package: chosen.id, course, at: placeOf(index, courses.length), served };
      const fill = need.need ? fillersFor(gap, need.need, dishes) : [];
      const what = gapText(guestNeedText(need), `“${course}” of ${chosen.id}`, notKnown);
      const wayOut = fillText(fill.map(({ id }) => id));
      return findingAt(
        book,
        'need-not-fed',
        `proposal/${proposal.id}`,
        ['needs', need.text],
        what,
        wayOut,
        'key',
      );
    }),
  );
}

/** The courses with the dishes proposed: those chosen, the first so many where nothing is, all of any other. */
function proposedCourses({ choices }: Proposal, chosen: Package): ServedCourse[] {
  const asked = choices.get(chosen.id);
  const served = ({ name, choose, eachGuest, dishes }: Course) => {
    const counts = eachGuest ? asked?.counts.get(name) : undefined;
    if (counts) return dishes.filter(({ recipe }) => (counts.get(recipe.id) ?? 0) > 0);
    if (choose === null) return dishes;
    const ids = asked?.chosen.get(name);
    return ids ? dishes.filter(({ recipe }) => ids.includes(recipe.id)) : dishes.slice(0, choose);
  };
  return chosen.courses.map((course) => ({
    name: course.name,
    dishes: served(course).map(({ recipe }) => ({ name: recipe.name, recipe })),
  }));
}

function tooMany(book: Book, { id, needs, guests }: Proposal): Finding[] {
  const named = [...needs.values()].reduce((sum, count) => sum + count, 0);
  const people = guests.adults + guests.children + guests.vendors + guests.staff;
  if (named <= people) return [];
  const what = `the needs add up to ${named} guests, and ${people} are fed`;
  const wayOut = 'name each guest once, with all that he or she needs, such as “vegan + no gluten: 1”';
  return [findingAt(book, 'needs-too-many', `proposal/${id}`, ['needs'], what, wayOut, 'key')];
}
