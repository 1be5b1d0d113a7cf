import type { CourseTerms } from '../../engine/quote/terms.ts';
import { mealsByTable, tablesOf } from '../../offers/guest-list/tables.ts';
import type { ListedGuest } from '../../schema/event-fact.ts';
import type { Say } from '../../words/words-in.ts';

/** A list by table for a terminal: who takes what of each course, then every need with its guest's seat. */
export function guestsByTableText(
  guests: readonly ListedGuest[],
  courses: readonly CourseTerms[],
  say: Say,
): string[] {
  const meals = courses.flatMap((course) => [
    `\n${say('terminal.by-table', { course: course.name })}`,
    ...mealsByTable(guests, course).map(({ table, counts, unsaid }) => {
      const taken = course.dishes.flatMap(({ name }, index) =>
        counts[index] ? [`${counts[index]} × ${name}`] : [],
      );
      const said = unsaid > 0 ? [...taken, say('terminal.not-stated', { n: unsaid })] : taken;
      return `  ${say('terminal.table-line', { table: tableText(table, say), what: said.join(', ') })}`;
    }),
  ]);
  const seated = tablesOf(guests).flatMap(([, each]) => each);
  const needs = seated.filter(({ need }) => need !== '');
  const lines = needs.map(
    ({ name, table, need }) =>
      `  ${say('terminal.needs-line', { table: tableText(table, say), guest: name, need })}`,
  );
  return [...meals, ...(lines.length > 0 ? [`\n${say('terminal.needs')}`, ...lines] : [])];
}

function tableText(table: string, say: Say): string {
  if (table === '') return say('lists.no-table');
  return /^\d/.test(table) ? say('lists.table-number', { number: table }) : table;
}
