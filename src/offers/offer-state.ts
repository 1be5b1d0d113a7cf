import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import type { Proposal } from '../engine/menu/proposal.ts';

/** Where a proposal stands with its client. */
export type OfferState = 'draft' | 'offered' | 'expired' | 'withdrawn' | 'accepted';

/** The state on a day in the kitchen's time zone: an accepted offer stays accepted, a withdrawn one withdrawn. */
export function offerState(
  book: Pick<Book, 'offers' | 'events'>,
  proposal: Proposal,
  today: Day,
): OfferState {
  if (book.events.has(proposal.id)) return 'accepted';
  if (proposal.withdrawn) return 'withdrawn';
  const newest = book.offers.get(proposal.id)?.at(-1);
  if (!newest) return 'draft';
  return today > newest.validUntil ? 'expired' : 'offered';
}
