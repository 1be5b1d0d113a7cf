import { type Money, sum } from '../money/money.ts';
import { rateOf } from '../money/rate.ts';
import { taxOn } from '../money/tax.ts';
import type { PricedLine } from './priced-line.ts';
import type { Terms } from './terms.ts';

/** The tax of all lines at one rate. */
export interface RateTax {
  /** `8.25 %` */
  readonly rate: string;
  /** What is taxed at it: the lines after discount, with the tax in them where prices include it. */
  readonly base: Money;
  readonly tax: Money;
}

/**
 * Tax by rate, in the order of the lines: each line's class gives its rate at the place, and
 * `net` is what each line comes to after the discount. Lines at 0 % and lines of nothing are left out. Whether
 * the client is exempt is not looked at here.
 */
export function taxesOf(terms: Terms, lines: readonly PricedLine[], net: readonly Money[]): RateTax[] {
  const byRate = new Map<string, Money[]>();
  for (const [index, line] of lines.entries()) {
    const amount = net[index];
    const rate = rateAt(terms, line);
    if (rate === null || !amount || amount.amount.isZero()) continue;
    byRate.set(rate, [...(byRate.get(rate) ?? []), amount]);
  }
  return [...byRate].map(([rate, amounts]) => ({
    rate,
    base: sum(amounts, terms.currency),
    tax: taxOn(amounts, rateOf(rate), terms.currency, terms.taxBy, terms.place.taxIncluded),
  }));
}

/** The rate at which a line is taxed at the place, null where it is not. */
export function rateAt(terms: Terms, line: PricedLine): string | null {
  const rate = line.class === null ? null : terms.place.tax[line.class];
  return rate === null || rateOf(rate).isZero() ? null : rate;
}
