import { displayMoney } from '../engine/money/display-money.ts';
import { money } from '../engine/money/money.ts';
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
    const { is, shown } = totalOf(offer, sample.choice);
    if (is !== sample.total) {
      return {
        what: `offer ${offer.proposal} revision ${offer.revision} was issued with a total of ${asRead(sample.total, offer)}, but ${shown}`,
        wayOut:
          'this version of Salver calculates it differently: use the version that issued it, and report this to its developers',
      };
    }
  }
  return undefined;
}

/** The total that a choice comes to now, null where it cannot be priced, and what is told of it in a clause. */
function totalOf(offer: Offer, choice: Offer['proposed']): { is: string | null; shown: string } {
  try {
    const { total } = quote(offer.terms, choice);
    return { is: total, shown: `it now comes to ${asRead(total, offer)}` };
  } catch (error) {
    return { is: null, shown: `it can’t be priced now: ${error instanceof Error ? error.message : error}` };
  }
}

function asRead(sum: string, { terms }: Offer): string {
  return displayMoney(money(sum, terms.currency), terms.locale);
}
