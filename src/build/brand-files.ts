import { brandIcon, brandIconPath } from '../views/brand/icon.ts';
import { brandStylesheet, brandStylesheetPath } from '../views/brand/stylesheet.ts';
import { type Side, type Site, type SiteFile, sideOf } from '../views/site.ts';

/** The stylesheet and the icon of every accent that a page or document of a side is shown in. */
export function brandFiles({ pages, prints, part }: Pick<Site, 'pages' | 'prints' | 'part'>): SiteFile[] {
  const files = new Map<string, SiteFile>();
  const add = (side: Side, accent: string) => {
    const file = `${side}${brandStylesheetPath(accent)}`;
    files.set(file, { file, content: brandStylesheet(accent) });
    const icon = `${side}${brandIconPath(accent)}`;
    files.set(icon, { file: icon, content: brandIcon(accent) });
  };
  for (const page of [...pages, ...prints]) add(sideOf(page.file), (page.known ?? page.view.brand).accent);
  if (part) add('private', part.accent);
  return [...files.values()];
}
