import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { PlansAtHand } from './kept-plan.ts';
import type { BannerView } from './view.ts';
import { proposalsOf } from './view-of.ts';

/**
 * A cache key: while it is the same, the last build's kitchen side is taken over without planning an event. So it must
 * hold all that the side is made from: every file by its digest, offers, photos, what is held back, kept plans, the day,
 * the brand, and what stands above the pages. Proposals and offers that no event came from are in it only as the front
 * page lists them: letters of drafts are what a caterer edits most, and no plan depends on them.
 */
export function kitchenCacheKey(
  book: Book,
  brand: BrandView,
  told: BannerView | null,
  today: Day,
  plans: PlansAtHand,
): string {
  const { events, fileDigests, offers, photos, held } = book;
  return JSON.stringify({
    today,
    brand,
    told,
    files: [...fileDigests].filter(([file]) => {
      const proposal = /^proposals\/(.+)\.md$/.exec(file)?.[1];
      return proposal === undefined || events.has(proposal);
    }),
    offers: [...events.keys()].map((id) => (offers.get(id) ?? []).map(({ digest }) => digest)),
    photos: [...photos].map(([path, { name }]) => [path, name]),
    held: [...held],
    plans: [...plans].map(([event, { digest }]) => [event, digest]),
    proposals: proposalsOf(book, today),
  });
}
