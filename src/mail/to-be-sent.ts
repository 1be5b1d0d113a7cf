import type { Book } from '../book/book.ts';
import type { Day } from '../engine/calendar/day.ts';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { digestOfRecord } from '../offers/digest.ts';
import { acceptedOffer } from '../offers/event/accepted-offer.ts';
import { unknownProposal } from '../offers/issue/current-terms.ts';
import { type OfferContent, offerContent } from '../offers/issue/offer-content.ts';
import { offerState } from '../offers/offer-state.ts';
import type { LetterKind } from './offer-letter.ts';

/** What goes to the client: its content, the digest of it, and a name for files. */
export interface ToBeSent {
  readonly content: OfferContent;
  readonly digest: string;
  readonly name: string;
  readonly kind: LetterKind;
}

/**
 * What `send` brings to the client of a proposal on a day. Refused for a draft that is not shared, and for an offer
 * that was withdrawn or is past its validity; the newest revision is sent, or the one that was accepted.
 */
export function toBeSent(book: Book, id: string, today: Day): Parsed<ToBeSent> {
  const proposal = book.proposals.get(id);
  if (!proposal) return unknownProposal(book, id);
  const state = offerState(book, proposal, today);
  if (state === 'withdrawn')
    return notParsed(`${id} is withdrawn`, 'delete `withdrawn: yes` to offer it again');
  if (state === 'draft') {
    if (!proposal.shareDraft)
      return notParsed(
        `${id} has not been issued`,
        'run issue first, or write `share: draft` to send it as a draft',
      );
    const content = offerContent(book, proposal);
    if (!content.ok) return content;
    const digest = digestOfRecord(content.value);
    return parsed({ content: content.value, digest, name: `${id}-draft`, kind: 'draft' });
  }
  const accepted = state === 'accepted' ? acceptedOffer(book, id) : undefined;
  if (accepted && !accepted.ok) return accepted;
  const offer = accepted?.value.offer ?? book.offers.get(id)?.at(-1);
  if (!offer) return notParsed(`the offer of ${id} can’t be read`, 'fix what `check` reports about it');
  if (state === 'expired')
    return notParsed(`the offer of ${id} was valid until ${offer.validUntil}`, 'issue a new revision first');
  return parsed({ content: offer, digest: offer.digest, name: `${id}-r${offer.revision}`, kind: state });
}
