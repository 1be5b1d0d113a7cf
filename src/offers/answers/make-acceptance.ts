import type { Day } from '../../engine/calendar/day.ts';
import type { Choice } from '../../engine/quote/choice.ts';
import { quote } from '../../engine/quote/quote.ts';
import type { Acceptance } from '../../schema/acceptance.ts';
import type { Offer } from '../../schema/offer.ts';
import { digestOfRecord } from '../digest.ts';

/** Who accepts, when, and what they add. */
export interface Signature {
  readonly name: string;
  readonly email: string;
  readonly note: string;
  readonly accepted: Day;
}

/** What of an offer an acceptance is made from. */
export type AcceptedTerms = Pick<Offer, 'proposal' | 'revision' | 'digest' | 'terms'>;

/**
 * The acceptance of an offer with a choice, total and own digest filled in: by the client's page, and by the kitchen
 * for what was signed on paper.
 */
export function makeAcceptance(offer: AcceptedTerms, choice: Choice, signature: Signature): Acceptance {
  const record = {
    version: 1 as const,
    kind: 'acceptance' as const,
    proposal: offer.proposal,
    revision: offer.revision,
    offer: offer.digest,
    choice,
    total: quote(offer.terms, choice).total,
    ...signature,
    agreed: true as const,
  };
  return { ...record, digest: digestOfRecord(record) };
}
