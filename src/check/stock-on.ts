import type { Book } from '../book/book.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import type { Day } from '../engine/calendar/day.ts';

/** Lots in stock whose use-by day is past on a day: no plan counts them. */
export function stockFindingsOn(book: Book, today: Day): Finding[] {
  return [...book.stock.values()].flat().flatMap(({ ingredient, useBy, place }) => {
    if (useBy === undefined || useBy >= today) return [];
    const what = `${ingredient} in stock is past its use-by of ${useBy}, so no plan counts it`;
    return [finding('stock-past', place, what, 'delete the row once you have thrown it out')];
  });
}
