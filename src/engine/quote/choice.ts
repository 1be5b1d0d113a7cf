import { textProblem } from '../text/visible-text.ts';
import { type ChoiceProblem, problemAt } from './choice-problem.ts';
import { GUEST_GROUPS, type Guests, peopleCounted } from './counts.ts';
import type { AddOnTerms, CourseTerms, PackageTerms, Terms } from './terms.ts';
import { countedForTier } from './tiers.ts';

/** What a client chooses from the terms. Plain JSON; the lists and counts are checked by `checkChoice`. */
export interface Choice {
  /** The package's id. */
  readonly package: string;
  readonly guests: Guests;
  /** For each course with a choice, by its name: the recipe ids of the dishes chosen. */
  readonly courses: Readonly<Record<string, readonly string[]>>;
  /** For each course of which every guest takes one dish, by its name: how many guests take each recipe id. */
  readonly mains: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Add-ons taken, by id: the hours (in quarters) of one priced by the hour, 1 of any other. */
  readonly addOns: Readonly<Record<string, number>>;
  /** Guests with each dietary need or allergy, by its name. */
  readonly needs: Readonly<Record<string, number>>;
}

/** The most people of one group that a choice may name. */
export const MOST_GUESTS = 100_000;

/** The most hours of an add-on that a choice may name. */
export const MOST_HOURS = 72;

/**
 * Everything that keeps a choice from being accepted under these terms; empty when it may be. A party under the
 * package's minimum is no problem: it is billed at the minimum, and the quote says so.
 */
export function checkChoice(terms: Terms, choice: Choice): ChoiceProblem[] {
  const guestProblems = checkGuests(choice.guests);
  const chosen = terms.packages.find((candidate) => candidate.id === choice.package);
  if (!chosen) {
    const menus = terms.packages.map((each) => each.name);
    return [problemAt('package', 'problem.no-menu', { menus: menus.join(', ') }), ...guestProblems];
  }
  if (guestProblems.length > 0) return guestProblems;
  return [
    ...checkTierReach(chosen, choice.guests),
    ...checkCourses(chosen, choice),
    ...checkMains(chosen, choice),
    ...checkAddOns(addOnsOf(terms, chosen), choice.addOns),
    ...checkNeeds(choice),
  ];
}

/** The add-ons that a client may take with a package. */
export function addOnsOf(terms: Terms, chosen: PackageTerms): readonly AddOnTerms[] {
  const suited = chosen.addOns;
  return suited ? terms.addOns.filter((addOn) => suited.includes(addOn.id)) : terms.addOns;
}

/** How many guests choose a dish in a course of which each takes one: the people of every group it serves. */
export function choosers(course: CourseTerms, guests: Guests): number {
  const served: Record<string, string> = {};
  for (const dish of course.dishes) Object.assign(served, dish.counts);
  return peopleCounted(guests, served);
}

/** The entry of a client's record under a name, never one that every object inherits. */
export function entryOf<T>(record: Readonly<Record<string, T>>, name: string): T | undefined {
  return Object.hasOwn(record, name) ? record[name] : undefined;
}

function checkGuests(guests: Guests): ChoiceProblem[] {
  const problems = GUEST_GROUPS.filter((group) => !isCount(guests[group])).map((group) =>
    problemAt(`guests.${group}`, 'problem.people', { most: MOST_GUESTS }),
  );
  if (problems.length === 0 && guests.adults + guests.children === 0)
    problems.push(problemAt('guests.adults', 'problem.nobody'));
  return problems;
}

function checkTierReach(chosen: PackageTerms, guests: Guests): ChoiceProblem[] {
  const most = chosen.tiers.at(-1)?.to ?? null;
  const reached = countedForTier(chosen, guests);
  if (most === null || reached <= most) return [];
  return [problemAt('guests.adults', 'problem.prices', { menu: chosen.name, most, guests: reached })];
}

function checkCourses(chosen: PackageTerms, choice: Choice): ChoiceProblem[] {
  const open = chosen.courses.filter((course) => course.choose !== null);
  const problems = unknownNames(choice.courses, open, 'courses', chosen);
  for (const course of open) {
    const path = `courses.${course.name}`;
    const dishes = entryOf(choice.courses, course.name) ?? [];
    if (new Set(dishes).size !== dishes.length) {
      problems.push(problemAt(path, 'problem.twice', { course: course.name }));
    } else if (dishes.some((id) => !course.dishes.some((dish) => dish.recipe === id))) {
      problems.push(problemAt(path, 'problem.no-dish', { course: course.name }));
    } else if (dishes.length !== course.choose) {
      const due = course.choose ?? 0;
      problems.push(problemAt(path, 'problem.choose', { course: course.name, due, chosen: dishes.length }));
    }
  }
  return problems;
}

function checkMains(chosen: PackageTerms, choice: Choice): ChoiceProblem[] {
  const open = chosen.courses.filter((course) => course.eachGuest);
  const problems = unknownNames(choice.mains, open, 'mains', chosen);
  for (const course of open) {
    const path = `mains.${course.name}`;
    const taken = Object.entries(entryOf(choice.mains, course.name) ?? {});
    const stray = taken.find(([id]) => !course.dishes.some((dish) => dish.recipe === id));
    const odd = taken.find(([, count]) => !isCount(count));
    if (stray) {
      problems.push(problemAt(`${path}.${stray[0]}`, 'problem.no-dish', { course: course.name }));
    } else if (odd) {
      problems.push(problemAt(`${path}.${odd[0]}`, 'ask.number'));
    } else {
      const sum = taken.reduce((total, [, count]) => total + count, 0);
      const due = choosers(course, choice.guests);
      const values = { course: course.name, due, gap: Math.abs(due - sum) };
      if (sum < due) problems.push(problemAt(path, 'problem.too-few', values));
      if (sum > due) problems.push(problemAt(path, 'problem.too-many', values));
    }
  }
  return problems;
}

function checkAddOns(offered: readonly AddOnTerms[], taken: Choice['addOns']): ChoiceProblem[] {
  return Object.entries(taken).flatMap(([id, quantity]) => {
    const path = `addOns.${id}`;
    const addOn = offered.find((candidate) => candidate.id === id);
    if (!addOn) return [problemAt(path, 'problem.no-add-on')];
    if (addOn.per === 'hour') {
      const inQuarters = Number.isInteger(quantity * 4) && quantity >= 0 && quantity <= MOST_HOURS;
      return inQuarters ? [] : [problemAt(path, 'problem.hours', { addOn: addOn.name, most: MOST_HOURS })];
    }
    return quantity === 0 || quantity === 1 ? [] : [problemAt(path, 'problem.taken', { addOn: addOn.name })];
  });
}

function checkNeeds(choice: Choice): ChoiceProblem[] {
  const people = GUEST_GROUPS.reduce((sum, group) => sum + choice.guests[group], 0);
  return Object.entries(choice.needs).flatMap(([need, count]) => {
    const path = `needs.${need}`;
    if (!isCount(count)) return [problemAt(path, 'ask.need-count', { need })];
    const wrong = textProblem(need);
    if (wrong !== undefined) return [problemAt(path, 'ask.need-again', wrong)];
    return count > people ? [problemAt(path, 'problem.need-guests', { need, guests: count, people })] : [];
  });
}

function unknownNames(
  record: Readonly<Record<string, unknown>>,
  courses: readonly CourseTerms[],
  field: 'courses' | 'mains',
  { name: menu }: PackageTerms,
): ChoiceProblem[] {
  return Object.keys(record)
    .filter((name) => !courses.some((course) => course.name === name))
    .map((name) => problemAt(`${field}.${name}`, 'problem.no-course', { menu }));
}

function isCount(count: unknown): boolean {
  return typeof count === 'number' && Number.isInteger(count) && count >= 0 && count <= MOST_GUESTS;
}
