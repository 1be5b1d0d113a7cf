import { type Money, sum } from '../money/money.ts';
import { rateOf } from '../money/rate.ts';
import { taxOn } from '../money/tax.ts';
import { LINE_CLASSES, type LineClass } from './line-class.ts';
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

/** The rate of each class of lines that is taxed at the place; classes at 0 % are left out. */
export function taxedClasses({ place }: Pick<Terms, 'place'>): ReadonlyMap<LineClass | null, string> {
  const kept = known.get(place);
  if (kept) return kept;
  const taxed = LINE_CLASSES.filter((name) => !rateOf(place.tax[name]).isZero());
  const rates = new Map<LineClass | null, string>(taxed.map((name) => [name, place.tax[name]]));
  known.set(place, rates);
  return rates;
}

/** The classes taxed at a place of terms, which are priced again at every count. */
const known = new WeakMap<Terms['place'], ReadonlyMap<LineClass | null, string>>();

/**
 * Tax by rate, in the order of the lines: each line's class gives its rate, and `net` is what each line comes to
 * after the discount. Lines of nothing are left out. Whether the client is exempt is not looked at here.
 */
export function taxesOf(
  terms: Terms,
  rates: ReadonlyMap<LineClass | null, string>,
  lines: readonly PricedLine[],
  net: readonly Money[],
): RateTax[] {
  const byRate = new Map<string, Money[]>();
  for (const [index, line] of lines.entries()) {
    const amount = net[index];
    const rate = rates.get(line.class);
    if (rate === undefined || !amount || amount.amount.isZero()) continue;
    const amounts = byRate.get(rate);
    if (amounts) amounts.push(amount);
    else byRate.set(rate, [amount]);
  }
  return [...byRate].map(([rate, amounts]) => ({
    rate,
    base: sum(amounts, terms.currency),
    tax: taxOn(amounts, rateOf(rate), terms.currency, terms.taxBy, terms.place.taxIncluded),
  }));
}
