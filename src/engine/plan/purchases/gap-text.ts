import { minorUnits } from '../../money/currency.ts';
import { Decimal } from '../../money/decimal.ts';
import { displayMoney } from '../../money/display-money.ts';
import { money } from '../../money/money.ts';
import type { BuyingKitchen } from './buying-kitchen.ts';

/**
 * The most that a better choice of packs may save, for people. Rounded up to the minor unit: what is said to be the most
 * must not be less than it is, and a fraction of a cent is not nothing.
 */
export function gapText(gap: Decimal, { currency, locale }: BuyingKitchen): string {
  return displayMoney(money(gap.toDecimalPlaces(minorUnits(currency), Decimal.ROUND_UP), currency), locale);
}
