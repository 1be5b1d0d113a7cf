import type { CourseTerms } from '../../engine/quote/terms.ts';
import type { ListedGuest } from '../../schema/event-fact.ts';

/** How many at one table take each dish of a course. */
export interface TableMeals {
  /** Empty for guests without a table. */
  readonly table: string;
  /** In the order of the course's dishes. */
  readonly counts: readonly number[];
  /** Guests at the table with no dish on record of this course. */
  readonly unsaid: number;
}

/** The dishes of a course by table, tables in the order in which people number them, guests without one last. */
export function mealsByTable(guests: readonly ListedGuest[], course: CourseTerms): TableMeals[] {
  return tablesOf(guests).map(([table, seated]) => ({
    table,
    counts: course.dishes.map(
      ({ recipe }) => seated.filter(({ mains }) => mains[course.name] === recipe).length,
    ),
    unsaid: seated.filter(({ mains }) => mains[course.name] === undefined).length,
  }));
}

/** Guests by table: 1, 2, 10, then names, those without a table last; within a table in the list's order. */
export function tablesOf(guests: readonly ListedGuest[]): [table: string, guests: ListedGuest[]][] {
  const byTable = Map.groupBy(guests, ({ table }) => table.toLowerCase());
  const tables = [...byTable.values()].map((seated): [string, ListedGuest[]] => [
    seated[0]?.table ?? '',
    seated,
  ]);
  return tables.sort(([a], [b]) => {
    if (a === '' || b === '') return a === '' ? 1 : -1;
    return a.localeCompare(b, 'en', { numeric: true, sensitivity: 'base' });
  });
}

/** How many tables guests sit at; those without a table sit at none. */
export function numberOfTables(guests: readonly ListedGuest[]): number {
  return tablesOf(guests).filter(([table]) => table !== '').length;
}
