import type { Mark } from '../../engine/kitchen/mark.ts';
import { digestOf } from '../../files/digest.ts';
import type { Side, SiteFile } from '../site.ts';

/** Where a mark is served: named by its digest, so that another drawing is another file. */
export function markPath({ svg }: Pick<Mark, 'svg'>): string {
  return `/mark-${digestOf(svg).slice(0, 12)}.svg`;
}

/** The mark as a file of each side that shows it. Never part of a page: there a browser treats it as a mere picture. */
export function markFiles(mark: Mark | undefined, sides: readonly Side[]): SiteFile[] {
  return mark ? sides.map((side) => ({ file: `${side}${markPath(mark)}`, content: mark.svg })) : [];
}
