import { type CsvRow, type CsvSource, readCsv } from '../../book/files/csv-source.ts';
import { parseNeed } from '../../engine/food/need.ts';
import { dishNamed } from '../../engine/quote/dish-named.ts';
import type { CourseTerms } from '../../engine/quote/terms.ts';
import { type Statement, several, statement } from '../../engine/text/statement.ts';
import { textProblem, tidyLine } from '../../engine/text/visible-text.ts';
import type { ListedGuest } from '../../schema/event-fact.ts';
import { textRefusal } from '../text-refusal.ts';
import { needOf } from './need.ts';

/** A list as it was read. Rows are told as a spreadsheet numbers them, the header being row 1. */
export interface GuestRows {
  readonly guests: readonly ListedGuest[];
  /** What keeps the list from being taken, each a sentence without full stop. */
  readonly problems: readonly Statement[];
  /** What is taken all the same and should be looked at. */
  readonly notes: readonly Statement[];
}

const MOST_GUESTS = 1000;
const NAME = ['name', 'guest', 'guest name'];
const TABLE = ['table', 'table number', 'table no'];
const NEED = ['need', 'needs', 'diet', 'dietary need', 'dietary needs', 'allergy', 'allergies'];
const MAIN = ['main', 'mains', 'dish', 'meal'];

/**
 * Reads a guest list's CSV: a column for names, and as far as it has them one each for tables, needs, and the dish of
 * every course of which each guest takes one (`main` for the first, else the course's own name), in any order. Dishes
 * are found as `dishNamed` finds them. Cells are data: an apostrophe that keeps a spreadsheet from computing one is
 * taken off again, and nothing is ever computed.
 */
export function guestRows(csv: string, courses: readonly CourseTerms[]): GuestRows {
  const source = readCsv('guest list', csv);
  const broken = source.findings.map(({ place, what, wayOut }) =>
    statement('guests.broken-row', { row: `${place.line}`, what, way: wayOut }),
  );
  const columns = columnsOf(source, courses);
  if (columns.name === undefined) {
    const unnamed = statement('guests.no-name-column', { columns: several('comma', source.headers) });
    return { guests: [], problems: broken.length > 0 ? broken : [unnamed], notes: [] };
  }
  const problems = [...broken];
  const notes = columns.unused.map((column) => statement('guests.column-unused', { column }));
  if (source.rows.length > MOST_GUESTS)
    problems.push(statement('guests.too-many', { guests: `${source.rows.length}`, most: `${MOST_GUESTS}` }));
  if (source.rows.length === 0 && problems.length === 0) problems.push(statement('guests.none'));
  const guests = source.rows
    .slice(0, MOST_GUESTS)
    .map((row) => guestOf(row, columns, courses, problems, notes));
  return { guests, problems, notes: [...notes, ...sameNames(source.rows, guests)] };
}

interface Columns {
  readonly name: string | undefined;
  readonly table: string | undefined;
  readonly need: string | undefined;
  /** One for each course. */
  readonly mains: readonly (string | undefined)[];
  readonly unused: readonly string[];
}

function columnsOf({ headers }: CsvSource, courses: readonly CourseTerms[]): Columns {
  const called = (names: readonly string[]) => headers.find((header) => names.includes(header.toLowerCase()));
  const mains = courses.map(({ name }, place) => called([name.toLowerCase(), ...(place === 0 ? MAIN : [])]));
  const known = { name: called(NAME), table: called(TABLE), need: called(NEED) };
  const used = [...Object.values(known), ...mains];
  return { ...known, mains, unused: headers.filter((header) => !used.includes(header)) };
}

function guestOf(
  row: CsvRow,
  columns: Columns,
  courses: readonly CourseTerms[],
  problems: Statement[],
  notes: Statement[],
): ListedGuest {
  const cell = (column: string | undefined) => (column === undefined ? '' : plainCell(row.get(column)));
  const at = `${row.line}`;
  const name = cell(columns.name);
  const table = cell(columns.table);
  const need = needOf(cell(columns.need));
  if (name === '') problems.push(statement('guests.no-name', { row: at }));
  const lengths = [
    ['name', name, 80],
    ['table', table, 20],
    ['need', need, 120],
  ] as const;
  for (const [which, text, most] of lengths)
    if (text.length > most)
      problems.push(statement('guests.too-long', { row: at, text: which, most: `${most}` }));
  for (const [which, text] of lengths) {
    const wrong = textProblem(text);
    if (wrong !== undefined)
      problems.push(statement('guests.text', { row: at, problem: textRefusal(which, wrong) }));
  }
  if (name !== '' && table === '') notes.push(statement('guests.no-table', { row: at, name }));
  const known = need === '' ? undefined : parseNeed(need);
  if (known && !known.ok) notes.push(statement('guests.need-unknown', { row: at, need, name }));
  const mains: Record<string, string> = {};
  for (const [place, course] of courses.entries()) {
    const written = cell(columns.mains[place]);
    const dish = dishNamed(written, course);
    if (dish === undefined)
      problems.push(
        statement('guests.no-such-dish', {
          row: at,
          written,
          course: course.name,
          dishes: several(
            'comma',
            course.dishes.map((each) => each.name),
          ),
        }),
      );
    else if (dish !== '') mains[course.name] = dish;
    else if (name !== '') notes.push(statement('guests.no-dish', { row: at, name, course: course.name }));
  }
  return { name, table, mains, need };
}

/** A cell without the apostrophe that keeps a spreadsheet from computing it, in one line. */
function plainCell(text: string): string {
  return tidyLine(text.replace(/^'(?=[=+\-@])/, ''));
}

/** Two guests may bear one name; two rows for one guest would be cooked for twice. */
function sameNames(rows: readonly CsvRow[], guests: readonly ListedGuest[]): Statement[] {
  const byName = Map.groupBy(guests.keys(), (index) => guests[index]?.name.toLowerCase() ?? '');
  return [...byName.values()].flatMap((indexes) => {
    const [first, ...more] = indexes;
    const name = guests[first ?? 0]?.name ?? '';
    if (more.length === 0 || name === '') return [];
    const lines = indexes.map((index) => `${rows[index]?.line}`);
    return [statement('guests.same-name', { name, rows: several('comma', lines) })];
  });
}
