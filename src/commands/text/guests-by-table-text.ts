import type { CourseTerms } from '../../engine/quote/terms.ts';
import { mealsByTable, tablesOf } from '../../offers/guest-list/tables.ts';
import type { ListedGuest } from '../../schema/event-fact.ts';

/** A list by table for a terminal: who takes what of each course, then every need with its guest's seat. */
export function guestsByTableText(guests: readonly ListedGuest[], courses: readonly CourseTerms[]): string[] {
  const meals = courses.flatMap((course) => [
    `\n${course.name}, by table:`,
    ...mealsByTable(guests, course).map(({ table, counts, unsaid }) => {
      const taken = course.dishes.flatMap(({ name }, index) =>
        counts[index] ? [`${counts[index]} × ${name}`] : [],
      );
      const said = unsaid > 0 ? [...taken, `${unsaid} not stated`] : taken;
      return `  ${tableText(table)}: ${said.join(', ')}`;
    }),
  ]);
  const seated = tablesOf(guests).flatMap(([, each]) => each);
  const needs = seated.filter(({ need }) => need !== '');
  const lines = needs.map(({ name, table, need }) => `  ${tableText(table)}: ${name}, ${need}`);
  return [...meals, ...(lines.length > 0 ? ['\nNeeds:', ...lines] : [])];
}

function tableText(table: string): string {
  if (table === '') return 'No table';
  return /^\d/.test(table) ? `Table ${table}` : table;
}
