import { Decimal } from '../money/decimal.ts';
import { plainChoice } from './plain-choice.ts';
import { quote } from './quote.ts';
import type { PackageTerms, Terms } from './terms.ts';

/** A guest count at which one more guest makes the whole total smaller. */
export interface PriceStep {
  /** Adults, no one else. */
  readonly guests: number;
  readonly total: string;
  /** What one adult more would pay in all. */
  readonly totalOfOneMore: string;
}

/**
 * Where one more adult makes the total smaller, at the ends of a package's price tiers; empty where that never
 * happens. Totals are those of the plainest choice, with staff, delivery, service charge and tax in them.
 */
export function priceSteps(terms: Terms, chosen: PackageTerms): PriceStep[] {
  return chosen.tiers.slice(1).flatMap((tier) => {
    const guests = tier.from - 1;
    const total = totalFor(terms, chosen, guests);
    const totalOfOneMore = totalFor(terms, chosen, guests + 1);
    return new Decimal(totalOfOneMore).lt(total) ? [{ guests, total, totalOfOneMore }] : [];
  });
}

function totalFor(terms: Terms, chosen: PackageTerms, adults: number): string {
  return quote(terms, plainChoice(chosen, { adults, children: 0, vendors: 0, staff: 0 })).total;
}
