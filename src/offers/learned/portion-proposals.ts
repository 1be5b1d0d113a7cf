import type { Book } from '../../book/book.ts';
import { finishedFoodConversions } from '../../engine/food/finished-food.ts';
import type { EatenEstimate } from '../../engine/learning/eaten.ts';
import { type ProposedAmount, proposedAmount } from '../../engine/learning/proposed-amount.ts';
import { eachOf, sensibleAmount } from '../../engine/learning/sensible-amount.ts';
import { convert } from '../../engine/measure/conversions.ts';
import type { PerGuest } from '../../engine/measure/per-guest.ts';
import type { Dish } from '../../engine/menu/package.ts';
import type { EatenDish } from './eaten-so-far.ts';

/** What events so far speak for where a package states a per-guest amount. */
export interface PortionProposal {
  readonly packageId: string;
  readonly course: string;
  readonly present: PerGuest;
  /** What to write instead; undefined where the present amount stays. */
  readonly proposed: PerGuest | undefined;
  /** How much of the way to what was eaten it goes, from 0 to 1. */
  readonly weight: number;
}

/**
 * What a dish's events speak for in the package that it was served from; undefined where the package no longer has it
 * in that course. Where the amount would fall, only events at which some was left count, so that one at which it ran
 * out never lowers it, but where it would lie beyond what was learned.
 */
export function portionProposal(book: Book, eaten: EatenDish): PortionProposal | undefined {
  const menu = book.packages.get(eaten.packageId);
  const course =
    menu?.style === eaten.style ? menu.courses.find(({ name }) => name === eaten.course) : undefined;
  const dish = course?.dishes.find(({ recipe }) => recipe.id === eaten.recipe);
  return course && dish && { packageId: eaten.packageId, course: course.name, ...proposalFor(dish, eaten) };
}

function proposalFor(
  { perGuest, recipe }: Dish,
  { unit, estimate }: EatenDish,
): Pick<PortionProposal, 'present' | 'proposed' | 'weight'> {
  const { amount } = perGuest;
  const one = convert({ amount: eachOf(perGuest), unit: amount.unit }, unit, finishedFoodConversions(recipe));
  if (!one) return { present: perGuest, proposed: undefined, weight: 0 };
  const present = one.amount.valueOf();
  const moved = movedAmount(present, estimate);
  if (!moved) return { present: perGuest, proposed: undefined, weight: 0 };
  const inItsUnit = (each: number) => (each / present) * eachOf(perGuest).valueOf();
  const most = estimate.to === undefined ? undefined : inItsUnit(estimate.to);
  const proposed = sensibleAmount(perGuest, inItsUnit(moved.perGuest), most);
  return { present: perGuest, proposed, weight: moved.weight };
}

function movedAmount(present: number, estimate: EatenEstimate): ProposedAmount | undefined {
  const { mean, events, ranOut } = estimate;
  const falls = mean !== undefined && mean < present;
  return proposedAmount(present, falls ? { ...estimate, events: events - ranOut } : estimate);
}
