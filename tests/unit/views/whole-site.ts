import type { Site, SiteContent } from '../../../src/views/site.ts';
import { siteOf } from '../../../src/views/site-of.ts';

/** A site with its part made. */
export async function whole({ pages, prints, files, part }: Site): Promise<SiteContent> {
  const made = await part?.make();
  return {
    pages: [...pages, ...(made?.pages ?? [])],
    prints: [...prints, ...(made?.prints ?? [])],
    files: [...files, ...(made?.files ?? [])],
  };
}

/** Everything both sites consist of, the kitchen's side planned. */
export function wholeSite(...given: Parameters<typeof siteOf>): Promise<SiteContent> {
  return whole(siteOf(...given));
}
