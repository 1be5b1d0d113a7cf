import { quote } from '../engine/quote/quote.ts';
import type { Offer } from '../schema/offer.ts';
import { digestOfRecord } from './digest.ts';

/**
 * Why an offer read from its file cannot be trusted, or undefined: the digest does not fit what it says, or its
 * sample totals no longer come out, so that a newer Salver would price it differently from what was offered.
 */
export function offerProblem(offer: Offer): { readonly what: string; readonly wayOut: string } | undefined {
  if (digestOfRecord(offer) !== offer.digest) {
    return {
      what: `offer ${offer.proposal} revision ${offer.revision} was changed after it was issued`,
      wayOut: 'restore the file as `issue` wrote it; to offer something else, issue a new revision',
    };
  }
  for (const sample of offer.samples) {
    const total = totalOf(offer, sample.choice);
    if (total !== sample.total) {
      return {
        what: `offer ${offer.proposal} revision ${offer.revision} was issued with a total of ${sample.total} that now comes out as ${total}`,
        wayOut:
          'this version of Salver computes it differently: keep to the version that issued it, and tell its makers',
      };
    }
  }
  return undefined;
}

function totalOf(offer: Offer, choice: Offer['proposed']): string {
  try {
    return quote(offer.terms, choice).total;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
