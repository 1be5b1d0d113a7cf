import type { BrandView } from './brand-view.ts';
import { brandStylesheetPath } from './stylesheet.ts';

/** Where the small picture of an accent colour is served, which browsers show beside a page's title. */
export function brandIconPath(accent: string): string {
  return brandStylesheetPath(accent).replace(/\.css$/, '.svg');
}

/** The small picture of a caterer: its own mark where that is about square, else the covered dish. */
export function iconPath({ mark, accent }: Pick<BrandView, 'mark' | 'accent'>): string {
  const isSquarish = mark && mark.width <= mark.height * 1.5 && mark.height <= mark.width * 1.5;
  return isSquarish ? mark.path : brandIconPath(accent);
}

/** A covered dish in the caterer's colour, drawn for Salver. */
export function brandIcon(accent: string): string {
  const colour = `#${brandStylesheetPath(accent).slice('/brand-'.length, -'.css'.length)}`;
  const dome = 'M4 21a12 12 0 0 1 24 0z';
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><g fill="${colour}"><path d="${dome}"/><path d="M2 23h28v2H2z"/><circle cx="16" cy="7" r="2"/></g></svg>\n`;
}
