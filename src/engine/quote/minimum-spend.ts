import { exactMoneyText, money, roundToMinor, subtract } from '../money/money.ts';
import { baseOf } from './base.ts';
import { type PricedLine, sumLine } from './priced-line.ts';
import type { PackageTerms, Terms } from './terms.ts';

/** The line that brings its base up to the minimum spend, before any discount; none where the base reaches it. */
export function minimumSpendLine(
  terms: Terms,
  chosen: PackageTerms,
  lines: readonly PricedLine[],
): PricedLine | null {
  const minimum = chosen.minimumSpend ?? terms.minimumSpend;
  if (!minimum) return null;
  const least = roundToMinor(money(minimum.amount, terms.currency));
  const base = baseOf(lines, minimum.base, terms.currency);
  const missing = subtract(least, base);
  if (!missing.amount.gt(0)) return null;
  return sumLine({
    key: 'minimum-spend',
    name: '',
    class: minimum.class,
    amount: missing,
    why: () => ({
      of: 'minimum spend',
      least: exactMoneyText(least),
      base: minimum.base,
      sum: exactMoneyText(base),
    }),
  });
}
