import { allocate } from '../money/allocate.ts';
import { ZERO } from '../money/decimal.ts';
import {
  compare,
  exactMoneyText,
  type Money,
  money,
  negate,
  noMoney,
  roundToMinor,
  subtract,
  times,
} from '../money/money.ts';
import { rateOf } from '../money/rate.ts';
import { baseOf, isIn } from './base.ts';
import { type PricedLine, sumLine } from './priced-line.ts';
import type { DiscountTerms, Terms } from './terms.ts';

/** A discount's line, and what each line comes to after its share of it, in the order of the lines. */
export interface Discounted {
  readonly line: PricedLine | null;
  readonly net: readonly Money[];
}

/**
 * Takes the discount off the lines of its base: a share of it, half-up, or a sum, never more than the base. Each
 * line bears its part in proportion, to the minor unit, so that tax is reduced where the price was.
 */
export function discounted(terms: Terms, lines: readonly PricedLine[]): Discounted {
  const { discount, currency } = terms;
  const base = discount ? baseOf(lines, discount.base, currency) : noMoney(currency);
  const off = discount ? lesser(discountOf(discount, base), base) : base;
  if (!discount || off.amount.isZero()) return { line: null, net: lines.map((line) => line.amount) };
  const weights = lines.map((line) => (isIn(line, discount.base) ? line.amount.amount : ZERO));
  const shares = allocate(off, weights);
  return {
    line: sumLine({
      key: 'discount',
      name: discount.label,
      class: null,
      amount: negate(off),
      why: () => ({
        of: 'discount',
        rate: discount.rate ?? null,
        base: discount.base,
        sum: exactMoneyText(base),
      }),
    }),
    net: lines.map((line, index) => subtract(line.amount, shares[index] ?? noMoney(currency))),
  };
}

function discountOf(discount: DiscountTerms, base: Money): Money {
  if (discount.rate !== undefined) return roundToMinor(times(base, rateOf(discount.rate)));
  return roundToMinor(money(discount.amount ?? '0', base.currency));
}

function lesser(a: Money, b: Money): Money {
  return compare(a, b) < 0 ? a : b;
}
