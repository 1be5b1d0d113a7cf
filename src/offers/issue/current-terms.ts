import type { Book } from '../../book/book.ts';
import { nearest } from '../../book/findings/nearest.ts';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import type { Terms } from '../../engine/quote/terms.ts';
import type { Offer } from '../../schema/offer.ts';
import { heldOffer, RESTORE_OFFER } from './held-offer.ts';
import { offerContent } from './offer-content.ts';

/** The terms a proposal stands by now: those of its newest offer, else those it would be issued with. */
export interface CurrentTerms {
  readonly terms: Terms;
  /** The offer they are frozen in; null for a draft. */
  readonly offer: Offer | null;
  /** What is proposed of each package, the proposed package first. */
  readonly choices: readonly Choice[];
}

/** The terms of a proposal by id. Fails, with the nearest known id, where there is none or it is held back. */
export function currentTerms(book: Book, id: string): Parsed<CurrentTerms> {
  const held = heldOffer(book, id);
  if (held) return notParsed(held, RESTORE_OFFER);
  const offer = book.offers.get(id)?.at(-1);
  if (offer) return parsed({ terms: offer.terms, offer, choices: proposedChoices(offer) });
  const proposal = book.proposals.get(id);
  if (!proposal) return unknownProposal(book, id);
  const content = offerContent(book, proposal);
  if (!content.ok) return content;
  return parsed({ terms: content.value.terms, offer: null, choices: proposedChoices(content.value) });
}

/** The refusal for a proposal that cannot be found: held back and why, or the nearest known one. */
export function unknownProposal(book: Book, id: string): Parsed<never> {
  const reason = book.held.get(`proposal/${id}`);
  if (reason)
    return notParsed(`the proposal ${id} can’t be used: ${reason}`, 'fix what `check` reports about it');
  const close = nearest(id, [...book.proposals.keys()]);
  return notParsed(`there is no proposal ${id}`, close ? `did you mean ${close}?` : 'write one with `new`');
}

/** Of an offer's samples the first of each package is as proposed; the further ones are other counts of it. */
function proposedChoices({ terms, samples }: Pick<Offer, 'terms' | 'samples'>): Choice[] {
  return terms.packages.flatMap(({ id }) => {
    const sample = samples.find(({ choice }) => choice.package === id);
    return sample ? [sample.choice] : [];
  });
}
