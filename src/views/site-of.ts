import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { brandView } from './brand/brand-view-of.ts';
import { markFiles } from './brand/mark-files.ts';
import { clientSite } from './client/site.ts';
import type { PlansAtHand } from './kitchen/kept-plan.ts';
import { kitchenSite } from './kitchen/site.ts';
import type { BannerView } from './kitchen/view.ts';
import type { Site } from './site.ts';

/** Everything both sites consist of, on a day in the kitchen's time zone; the kitchen's side is planned when it is asked for. */
export function siteOf(
  book: Book,
  banner: BannerView | null,
  today: Day,
  plans: PlansAtHand = new Map(),
): Site {
  const client = clientSite(book, today);
  return {
    ...client,
    files: [
      ...client.files,
      ...markFiles(book.kitchen.mark, client.pages.length > 0 ? ['public', 'private'] : ['private']),
    ],
    ...kitchenSite(book, brandView(book.kitchen, book.kitchen), banner, today, plans),
  };
}
