import { exactMoneyText, type Money, roundToMinor, sum, times } from '../money/money.ts';
import { rateOf } from '../money/rate.ts';
import { isIn } from './base.ts';
import { type PricedLine, sumLine } from './priced-line.ts';
import type { Terms } from './terms.ts';

/**
 * Whether a label calls a mandatory charge what it is not: a gratuity or a tip. Tax and wage law treat the two
 * differently, so such a label is refused.
 */
export function isCalledGratuity(label: string): boolean {
  return /\b(gratuit\w*|tips?|tipping)\b/i.test(label);
}

/** The service charge on its base, half-up, or null where there is none; `net` is each line after the discount. */
export function serviceChargeLine(
  terms: Terms,
  lines: readonly PricedLine[],
  net: readonly Money[],
): PricedLine | null {
  const charge = terms.serviceCharge;
  if (!charge) return null;
  const parts = lines.map((line, index) =>
    charge.afterDiscount ? (net[index] ?? line.amount) : line.amount,
  );
  const base = sum(
    parts.filter((_, index) => isIn(lines[index] as PricedLine, charge.base)),
    terms.currency,
  );
  const amount = roundToMinor(times(base, rateOf(charge.rate)));
  if (amount.amount.isZero()) return null;
  const afterDiscount = charge.afterDiscount && terms.discount !== null;
  return sumLine({
    key: 'service-charge',
    name: charge.label,
    class: 'service charge',
    amount,
    why: () => ({
      of: 'service charge',
      rate: charge.rate,
      base: charge.base,
      sum: exactMoneyText(base),
      afterDiscount,
    }),
  });
}
