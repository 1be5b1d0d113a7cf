import type { Choice } from './choice.ts';
import { choosers, entryOf } from './choice.ts';
import type { Guests } from './counts.ts';
import type { PackageTerms } from './terms.ts';

/**
 * The same choice for another number of guests at the table: children, vendors and staff stay, adults take the
 * difference (at least one), and mains that each guest takes one of keep their proportions.
 * For showing what a menu costs at several counts; nobody is bound by it.
 */
export function choiceAtCount(chosen: PackageTerms, choice: Choice, atTable: number): Choice {
  const adults = Math.max(1, atTable - choice.guests.children);
  const guests = { ...choice.guests, adults };
  return { ...choice, package: chosen.id, guests, mains: mainsFor(chosen, choice.mains, guests) };
}

/** The mains of a menu for other guests: as many as must choose, in the proportions given; evenly where none are. */
export function mainsFor(
  chosen: PackageTerms,
  asked: Choice['mains'],
  guests: Guests,
): Record<string, Record<string, number>> {
  const mains: Record<string, Record<string, number>> = {};
  for (const course of chosen.courses.filter((each) => each.eachGuest)) {
    const given = entryOf(asked, course.name);
    const weights = course.dishes.map((dish) => given?.[dish.recipe] ?? 0);
    const shares = shareOut(choosers(course, guests), weights);
    mains[course.name] = Object.fromEntries(
      course.dishes.map((dish, index) => [dish.recipe, shares[index] ?? 0]),
    );
  }
  return mains;
}

/**
 * Whole numbers that sum to `whole` in proportion to the weights, by largest remainder, the earlier first at a
 * tie; without any weight, as evenly as can be.
 */
export function shareOut(whole: number, weights: readonly number[]): number[] {
  if (weights.length === 0) return [];
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const used = total === 0 ? weights.map(() => 1) : weights;
  const sum = total === 0 ? weights.length : total;
  const shares = used.map((weight) => Math.floor((whole * weight) / sum));
  const rest = used.map((weight, index) => ({ index, left: (whole * weight) % sum }));
  // What is left over equally stays in the order of the dishes.
  rest.sort((a, b) => b.left - a.left);
  const missing = whole - shares.reduce((all, share) => all + share, 0);
  for (const { index } of rest.slice(0, missing)) shares[index] = (shares[index] ?? 0) + 1;
  return shares;
}

/**
 * Five guest counts worth comparing around a proposal's: itself, and about half, three quarters, five quarters
 * and half as many again, to the nearest five, all different and none below one.
 */
export function comparisonCounts(atTable: number): number[] {
  const near = [50, 75, 125, 150].map((percent) => Math.max(1, Math.round((atTable * percent) / 500) * 5));
  const counts = new Set([atTable, ...near].filter((count) => count > 0));
  for (let extra = 1; counts.size < 5; extra += 1) counts.add(atTable + extra * 5);
  return [...counts].sort((a, b) => a - b);
}
