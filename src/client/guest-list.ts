import { dishNamed } from '../engine/quote/dish-named.ts';
import type { CourseTerms } from '../engine/quote/terms.ts';
import { textProblem, tidyLine } from '../engine/text/visible-text.ts';
import { say } from './words.ts';

/** One guest of a list; a dish by its recipe id for each course that guests choose in, empty where none is stated. */
export interface ListedGuest {
  readonly name: string;
  readonly table: string;
  readonly dishes: readonly string[];
  readonly need: string;
}

/** A guest list as it was read, and what could not be, a sentence each with its line. */
export interface ReadGuestList {
  readonly guests: readonly ListedGuest[];
  readonly problems: readonly string[];
}

/** The most guests of one list. */
const MOST_GUESTS = 1000;

/**
 * Reads a list as people write it or paste it from a spreadsheet: one guest a line, parts between tabs or semicolons,
 * name, table, a dish for each course that guests choose in, and a need. A dish may be written by the beginning of
 * its name as long as only one begins so. Lines without anything are passed over.
 */
export function readGuestList(text: string, courses: readonly CourseTerms[]): ReadGuestList {
  const guests: ListedGuest[] = [];
  const problems: string[] = [];
  const lines = text.split(/\r?\n/).slice(0, MOST_GUESTS + 1);
  if (lines.length > MOST_GUESTS) problems.push(say('list.too-long', { most: MOST_GUESTS }));
  for (const [index, line] of lines.slice(0, MOST_GUESTS).entries()) {
    if (line.trim() === '') continue;
    const parts = line.split(/[\t;]/).map(tidyLine);
    const [name = '', table = ''] = parts;
    const place = index + 1;
    if (name === '') problems.push(say('list.no-name', { line: place }));
    const [problem] = parts.flatMap((part) => textProblem(part) ?? []);
    if (problem) problems.push(say('list.hidden', { line: place, ...problem }));
    const dishes = courses.map((course, column) => {
      const written = parts[column + 2] ?? '';
      const dish = dishNamed(written, course);
      if (dish === undefined)
        problems.push(say('list.dish-unknown', { line: place, dish: written, course: course.name }));
      return dish ?? '';
    });
    const need = parts
      .slice(2 + courses.length)
      .filter((part) => part !== '')
      .join(', ');
    guests.push({ name, table, dishes, need });
  }
  return { guests, problems };
}

/** How the list stands against the counts by dish, a sentence for each course. */
export function listSums(
  { guests }: ReadGuestList,
  courses: readonly CourseTerms[],
  mains: Readonly<Record<string, Readonly<Record<string, number>>>>,
): string[] {
  return courses.map((course, place) => {
    const counts = course.dishes.map(({ recipe, name }) => {
      const listed = guests.filter(({ dishes }) => dishes[place] === recipe).length;
      return say('list.dish', { dish: name, listed, due: mains[course.name]?.[recipe] ?? 0 });
    });
    return say('list.course', { course: course.name, dishes: counts.join(', ') });
  });
}

/**
 * The list as CSV (RFC 4180): name, table, main, need, and between the last two a column for each further course.
 * A cell that a spreadsheet would take for a formula gets an apostrophe in front.
 */
export function guestListCsv({ guests }: ReadGuestList, courses: readonly CourseTerms[]): string {
  const head = ['name', 'table', ...courses.map(({ name }, place) => (place === 0 ? 'main' : name)), 'need'];
  const rows = guests.map(({ name, table, dishes, need }) => [
    name,
    table,
    ...dishes.map((id, place) => courses[place]?.dishes.find(({ recipe }) => recipe === id)?.name ?? ''),
    need,
  ]);
  return [head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

function cell(text: string): string {
  const plain = /^[=+\-@]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
