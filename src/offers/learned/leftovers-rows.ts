import { readCsv } from '../../book/files/csv-source.ts';
import { nearest } from '../../book/findings/nearest.ts';
import type { CarriedDish } from '../../engine/learning/carried-dish.ts';
import { DESTINIES, parseDestiny } from '../../engine/learning/destiny.ts';
import type { LeftSaid } from './leftovers.ts';

/** What a list of leftovers says, and what keeps it from being taken, a sentence each without full stop. */
export interface LeftoversRows {
  readonly dishes: readonly LeftSaid[];
  readonly problems: readonly string[];
}

/**
 * Reads leftovers from CSV with the columns dish, came back, ran out, where it went, note, and course where two courses have the same
 * dish. A dish is named as the menu or its recipe names it; a row that says nothing of it is passed over. In `ran out`
 * stands a time, `yes`, or nothing. Rows are told as a spreadsheet numbers them.
 */
export function leftoversRows(csv: string, carried: readonly CarriedDish[]): LeftoversRows {
  const { rows, headers, findings } = readCsv('leftovers', csv);
  const problems = findings.map(({ place, what, wayOut }) => `row ${place.line}: ${what}; ${wayOut}`);
  const called = headers.map((header) => header.toLowerCase());
  for (const column of ['dish', 'came back'])
    if (!called.includes(column) && findings.length === 0)
      problems.push(`there is no column called ${column}; the columns are ${headers.join(', ')}`);
  if (problems.length > 0) return { dishes: [], problems };
  const seen = new Map<CarriedDish, number>();
  const dishes = rows.flatMap((row): LeftSaid[] => {
    const at = `row ${row.line}`;
    const [back, out] = [row.get('came back'), row.get('ran out')];
    const dish = dishCalled(row.get('dish'), row.get('course'), carried);
    if (typeof dish === 'string') problems.push(`${at}: ${dish}`);
    const went = row.get('where it went');
    const destiny = parseDestiny(went);
    if (went !== '' && !destiny)
      problems.push(`${at}: “${went}” is not where it went; write ${DESTINIES.join(', ')} or nothing`);
    const said = saidOf(back, out);
    if (said === undefined) problems.push(`${at}: it ran out, but ${back} came back; keep one of the two`);
    if (typeof dish === 'string' || said === undefined || said === '') return [];
    const before = seen.get(dish);
    if (before !== undefined) problems.push(`${at}: ${dish.name} is already in row ${before}`);
    seen.set(dish, row.line);
    const note = row.get('note');
    return [{ dish, said, ...(destiny && { destiny }), ...(note !== '' && { note }) }];
  });
  if (rows.length === 0) problems.push('the list has no dishes');
  return { dishes, problems };
}

/** The dish that words name, or why none is meant. */
export function dishCalled(
  words: string,
  course: string,
  carried: readonly CarriedDish[],
): CarriedDish | string {
  const said = words.trim().toLowerCase();
  if (said === '') return 'the dish is missing';
  const found = carried.filter(
    (dish) =>
      (dish.recipe === said || dish.name.toLowerCase() === said) &&
      (course === '' || dish.course.toLowerCase() === course.toLowerCase()),
  );
  const [first, ...others] = found;
  if (first && others.length === 0) return first;
  if (first)
    return `“${words}” is in ${found.map((dish) => dish.course).join(' and in ')}; add a column called course`;
  const close = nearest(
    said,
    carried.map(({ recipe }) => recipe),
  );
  const ids = carried.map(({ recipe }) => recipe).join(', ');
  return `“${words}” is not a dish that went out; ${close ? `did you mean ${close}?` : `one of ${ids}`}`;
}

/** The two cells as one answer; undefined where they contradict each other. */
function saidOf(back: string, out: string): string | undefined {
  if (/^(?:|no)$/i.test(out)) return back;
  if (!/^(?:|nothing|none|0)$/i.test(back)) return undefined;
  return /^(?:yes|x)$/i.test(out) ? 'ran out' : `ran out at ${out}`;
}
