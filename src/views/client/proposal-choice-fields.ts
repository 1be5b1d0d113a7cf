/*
 * Names of the form's fields: the same in the page, in what a browser keeps of it, and in a shared link. They count
 * places in the terms instead of using names, so that no text of a proposal can ever be taken for a field.
 */

/** The menu chosen. */
export const PACKAGE_FIELD = 'package';
/** The people the client pays for, whom a choice counts. */
export const PEOPLE = ['adults', 'children', 'vendors'] as const;
/** How many needs a client may add in words of their own. */
export const OTHER_NEEDS = 6;
/** Who answers, and that the terms are agreed to; never part of a shared link. */
export const SIGNATURE_FIELDS = ['name', 'email', 'note', 'agreed', 'needs-off'] as const;

/** The count of a group of people. */
export function peopleField(group: (typeof PEOPLE)[number]): string {
  return `guests.${group}`;
}

/** Whether a dish is taken, in a course of which so many are chosen. */
export function courseField(menu: number, course: number, dish: number): string {
  return `course.${menu}.${course}.${dish}`;
}

/** How many guests take a dish, in a course of which each takes one. */
export function mainField(menu: number, course: number, dish: number): string {
  return `main.${menu}.${course}.${dish}`;
}

/** Whether an add-on is taken, or its hours. `side` is empty, or the side of a comparison with a point: `a.`. */
export function addOnField(index: number, side = ''): string {
  return `${side}add-on.${index}`;
}

/** How many guests have a need that the page names. */
export function needField(index: number): string {
  return `need.${index}`;
}

/** A need in the client's own words, or the guests who have it. */
export function otherNeedField(index: number, part: 'name' | 'count'): string {
  return `other-need.${index}.${part}`;
}
