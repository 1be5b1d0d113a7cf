import type { Course, Package } from '../../engine/menu/package.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { type Guests, peopleCounted } from '../../engine/quote/counts.ts';
import { shareOut } from '../../engine/quote/scaled-choice.ts';

/**
 * What a proposal proposes of one of its packages: the dishes its author chose, and where nothing is chosen the
 * first so many, so that a price can be shown; mains that each guest takes one of are spread evenly.
 */
export function proposedChoice(proposal: Proposal, chosen: Package): Choice {
  const asked = proposal.choices.get(chosen.id);
  const courses: Record<string, readonly string[]> = {};
  const mains: Record<string, Readonly<Record<string, number>>> = {};
  for (const course of chosen.courses) {
    if (course.choose !== null) {
      const first = course.dishes.slice(0, course.choose).map((dish) => dish.recipe.id);
      courses[course.name] = asked?.chosen.get(course.name) ?? first;
    } else if (course.eachGuest) {
      const counts = asked?.counts.get(course.name);
      mains[course.name] = counts ? Object.fromEntries(counts) : evenly(course, proposal.guests);
    }
  }
  const suits = (addOn: string) => chosen.addOns === null || chosen.addOns.includes(addOn);
  return {
    package: chosen.id,
    guests: proposal.guests,
    courses,
    mains,
    addOns: Object.fromEntries([...proposal.included].filter(([addOn]) => suits(addOn))),
    needs: Object.fromEntries(proposal.needs),
  };
}

function evenly(course: Course, guests: Guests): Record<string, number> {
  const served = Object.assign({}, ...course.dishes.map((dish) => dish.counts));
  const shares = shareOut(
    peopleCounted(guests, served),
    course.dishes.map(() => 1),
  );
  return Object.fromEntries(course.dishes.map((dish, index) => [dish.recipe.id, shares[index] ?? 0]));
}
