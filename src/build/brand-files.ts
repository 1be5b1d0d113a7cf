import { brandIcon, brandIconPath } from './brand-icon.ts';
import { brandStylesheet, brandStylesheetPath } from './brand-stylesheet.ts';
import { type Site, type SiteFile, sideOf } from './site.ts';

/** The stylesheet and the icon of every accent that a page or document of a side is shown in. */
export function brandFiles({ pages, prints }: Pick<Site, 'pages' | 'prints'>): SiteFile[] {
  const files = new Map<string, SiteFile>();
  for (const { file: page, view } of [...pages, ...prints]) {
    const { accent } = view.brand;
    const file = `${sideOf(page)}${brandStylesheetPath(accent)}`;
    files.set(file, { file, content: brandStylesheet(accent) });
    const icon = `${sideOf(page)}${brandIconPath(accent)}`;
    files.set(icon, { file: icon, content: brandIcon(accent) });
  }
  return [...files.values()];
}
