import type { Book } from '../../book/book.ts';
import type { Day } from '../../engine/calendar/day.ts';
import type { BrandView } from '../brand/brand-view.ts';
import type { PlansAtHand } from './kept-plan.ts';
import type { BannerView } from './view.ts';
import { proposalsOf } from './view-of.ts';

/**
 * All that the kitchen's side is made from, as text: every file but the proposals and offers that no event came from,
 * of which the front page says only where they stand; the kept plans it shows, the day, the brand, and what is told above the pages.
 */
export function kitchenMadeFrom(
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
