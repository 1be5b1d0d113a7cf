import type { Book } from '../book/book.ts';
import { markFiles } from '../build/brand-mark.ts';
import type { Site } from '../build/site.ts';
import type { Day } from '../engine/calendar/day.ts';
import { brandView } from './brand-view-of.ts';
import { clientSite } from './client-site.ts';
import { kitchenSite } from './kitchen-site.ts';
import type { BannerView } from './kitchen-view.ts';

/** Everything both sites consist of, on a day in the kitchen's time zone. */
export async function siteOf(book: Book, banner: BannerView | null, today: Day): Promise<Site> {
  const client = clientSite(book, today);
  const kitchen = await kitchenSite(book, brandView(book.kitchen, book.kitchen), banner, today);
  return {
    pages: [...client.pages, ...kitchen.pages],
    prints: [...client.prints, ...kitchen.prints],
    files: [
      ...client.files,
      ...kitchen.files,
      ...markFiles(book.kitchen.mark, client.pages.length > 0 ? ['public', 'private'] : ['private']),
    ],
    ...(kitchen.stays && { stays: kitchen.stays }),
  };
}
