import { counted } from '../text/counted.ts';
import { textProblem } from '../text/visible-text.ts';
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

/** Why a choice cannot be accepted, as a sentence, and where: `guests.adults`, `courses.Salads`. */
export interface ChoiceProblem {
  readonly path: string;
  readonly what: string;
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
    const known = terms.packages.map((each) => each.name).join(', ');
    return [
      { path: 'package', what: `This offer doesn’t have that menu. Choose one of: ${known}.` },
      ...guestProblems,
    ];
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
  const problems = GUEST_GROUPS.flatMap((group) =>
    isCount(guests[group])
      ? []
      : [
          {
            path: `guests.${group}`,
            what: `The number of ${group} must be a whole number from 0 to 100000.`,
          },
        ],
  );
  if (problems.length === 0 && guests.adults + guests.children === 0) {
    problems.push({
      path: 'guests.adults',
      what: 'Enter the number of guests: at least one adult or child.',
    });
  }
  return problems;
}

function checkTierReach(chosen: PackageTerms, guests: Guests): ChoiceProblem[] {
  const most = chosen.tiers.at(-1)?.to ?? null;
  const reached = countedForTier(chosen, guests);
  if (most === null || reached <= most) return [];
  return [
    {
      path: 'guests.adults',
      what: `${chosen.name} is priced for up to ${counted(most, 'guest')}, and this comes to ${reached}. Please ask us for a price.`,
    },
  ];
}

function checkCourses(chosen: PackageTerms, choice: Choice): ChoiceProblem[] {
  const open = chosen.courses.filter((course) => course.choose !== null);
  const problems = unknownNames(
    choice.courses,
    open,
    'courses',
    `${chosen.name} doesn’t have that course to choose from.`,
  );
  for (const course of open) {
    const path = `courses.${course.name}`;
    const dishes = entryOf(choice.courses, course.name) ?? [];
    if (new Set(dishes).size !== dishes.length) {
      problems.push({ path, what: `A dish is chosen twice for ${course.name}. Choose different dishes.` });
    } else if (dishes.some((id) => !course.dishes.some((dish) => dish.recipe === id))) {
      problems.push({ path, what: `A dish you chose isn’t offered for ${course.name}. Choose again.` });
    } else if (dishes.length !== course.choose) {
      problems.push({
        path,
        what: `Choose ${counted(course.choose ?? 0, 'dish', 'dishes')} for ${course.name}; you chose ${dishes.length}.`,
      });
    }
  }
  return problems;
}

function checkMains(chosen: PackageTerms, choice: Choice): ChoiceProblem[] {
  const open = chosen.courses.filter((course) => course.eachGuest);
  const problems = unknownNames(
    choice.mains,
    open,
    'mains',
    `${chosen.name} doesn’t have that course for each guest to choose from.`,
  );
  for (const course of open) {
    const path = `mains.${course.name}`;
    const taken = Object.entries(entryOf(choice.mains, course.name) ?? {});
    const stray = taken.find(([id]) => !course.dishes.some((dish) => dish.recipe === id));
    const odd = taken.find(([, count]) => !isCount(count));
    if (stray) {
      problems.push({ path: `${path}.${stray[0]}`, what: `This dish isn’t offered for ${course.name}.` });
    } else if (odd) {
      problems.push({
        path: `${path}.${odd[0]}`,
        what: 'Enter a whole number for each dish, 0 or more.',
      });
    } else {
      const sum = taken.reduce((total, [, count]) => total + count, 0);
      const due = choosers(course, choice.guests);
      if (sum !== due) {
        const gap = sum < due ? `${due - sum} too few` : `${sum - due} too many`;
        problems.push({
          path,
          what: `The counts for ${course.name} must add up to ${due}, one for each guest: ${gap}.`,
        });
      }
    }
  }
  return problems;
}

function checkAddOns(offered: readonly AddOnTerms[], taken: Choice['addOns']): ChoiceProblem[] {
  return Object.entries(taken).flatMap(([id, quantity]) => {
    const path = `addOns.${id}`;
    const addOn = offered.find((candidate) => candidate.id === id);
    if (!addOn) return [{ path, what: 'This add-on isn’t available with this menu.' }];
    if (addOn.per === 'hour') {
      const inQuarters = Number.isInteger(quantity * 4) && quantity >= 0 && quantity <= MOST_HOURS;
      return inQuarters
        ? []
        : [
            {
              path,
              what: `Enter from 0 to ${MOST_HOURS} hours for ${addOn.name}, in quarter hours.`,
            },
          ];
    }
    return quantity === 0 || quantity === 1
      ? []
      : [{ path, what: `${addOn.name} is either taken (1) or not (0); its price goes by the guest count.` }];
  });
}

function checkNeeds(choice: Choice): ChoiceProblem[] {
  const people = GUEST_GROUPS.reduce((sum, group) => sum + choice.guests[group], 0);
  return Object.entries(choice.needs).flatMap(([name, count]) => {
    const path = `needs.${name}`;
    if (!isCount(count)) return [{ path, what: `Enter a whole number of guests for “${name}”.` }];
    const wrong = textProblem(name);
    if (wrong !== undefined) return [{ path, what: `The name of a need ${wrong}.` }];
    if (count > people)
      return [
        {
          path,
          what: `“${name}” is down for ${counted(count, 'guest')}, but only ${people} ${people === 1 ? 'is' : 'are'} coming.`,
        },
      ];
    return [];
  });
}

function unknownNames(
  record: Readonly<Record<string, unknown>>,
  courses: readonly CourseTerms[],
  field: string,
  what: string,
): ChoiceProblem[] {
  return Object.keys(record)
    .filter((name) => !courses.some((course) => course.name === name))
    .map((name) => ({ path: `${field}.${name}`, what }));
}

function isCount(count: unknown): boolean {
  return typeof count === 'number' && Number.isInteger(count) && count >= 0 && count <= MOST_GUESTS;
}
