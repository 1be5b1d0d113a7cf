import { brandIcon, brandIconPath } from './brand-icon.ts';
import { brandStylesheet, brandStylesheetPath } from './brand-stylesheet.ts';
import { type Site, type SiteFile, sideOf } from './site.ts';

/** The stylesheet and the icon of every accent that a page or document of a side is shown in. */
export function brandFiles({ pages, prints }: Pick<Site, 'pages' | 'prints'>): SiteFile[] {
  const files = new Map<string, SiteFile>();
  for (const page of [...pages, ...prints]) {
    const { accent } = page.known ?? page.view.brand;
    const side = sideOf(page.file);
    const file = `${side}${brandStylesheetPath(accent)}`;
    files.set(file, { file, content: brandStylesheet(accent) });
    const icon = `${side}${brandIconPath(accent)}`;
    files.set(icon, { file: icon, content: brandIcon(accent) });
  }
  return [...files.values()];
}
