import type { Book } from '../book/book.ts';
import { findingAt } from '../book/finding-at.ts';
import type { FindingCode } from '../book/findings/catalogue.ts';
import { type Finding, finding } from '../book/findings/finding.ts';
import { placeOfOffer } from '../offers/offer-in-use.ts';
import type { Offer } from '../schema/offer.ts';

/** A finding at the fact of the proposal’s venue where it is written, else at what there is of it. */
export function atVenue(
  book: Book,
  offer: Offer,
  code: FindingCode,
  fact: string | undefined,
  what: string,
  wayOut: string,
): Finding {
  const proposal = book.proposals.get(offer.proposal);
  if (!proposal) return finding(code, placeOfOffer(offer), what, wayOut);
  const { siteSheet: sheet } = proposal;
  const key = [...proposal.venue.keys()].find((each) => each.trim().toLowerCase() === fact);
  // What the sheet states is put right there.
  if (sheet && key === undefined)
    return fact !== undefined && sheet.facts.has(fact)
      ? findingAt(book, code, `site-sheet/${sheet.id}`, [fact], what, wayOut, 'key')
      : findingAt(book, code, `proposal/${offer.proposal}`, ['site sheet'], what, wayOut, 'key');
  const path = proposal.venue.size === 0 ? [] : key === undefined ? ['venue'] : ['venue', key];
  return findingAt(book, code, `proposal/${offer.proposal}`, path, what, wayOut, 'key');
}
