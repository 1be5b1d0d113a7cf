import { minorUnits } from './currency.ts';
import { Decimal } from './decimal.ts';
import { type Money, noMoney, sum } from './money.ts';

/** Whether tax is rounded once for all lines of a rate, or for each line. */
export type TaxBy = 'invoice' | 'line';

/**
 * The tax on amounts that share a rate, rounded once for the invoice or once for each line.
 *
 * Added on top, it is amount × rate; included in the price, it is what of the amount is tax,
 * amount × rate ÷ (1 + rate), and the price stays. Each rounding follows the Streamlined Sales and Use Tax
 * Agreement, sec. 324: the tax is carried to the third decimal place and rounded up to a whole cent when that
 * digit is greater than four; here to one digit past the currency's minor unit. The Agreement lets the seller
 * choose invoice or line.
 */
export function taxOn(
  amounts: readonly Money[],
  rate: Decimal,
  currency: string,
  by: TaxBy,
  included: boolean,
): Money {
  const share = (amount: Money) => roundTax(included ? taxWithin(amount, rate) : taxOnTop(amount, rate));
  if (by === 'line') return sum(amounts.map(share), currency);
  return amounts.length === 0 ? noMoney(currency) : share(sum(amounts, currency));
}

function taxOnTop(m: Money, rate: Decimal): Money {
  return { amount: m.amount.times(rate), currency: m.currency };
}

function taxWithin(m: Money, rate: Decimal): Money {
  return { amount: m.amount.times(rate).div(rate.plus(1)), currency: m.currency };
}

function roundTax(m: Money): Money {
  const digits = minorUnits(m.currency);
  const carried = m.amount.toDecimalPlaces(digits + 1, Decimal.ROUND_DOWN);
  return { amount: carried.toDecimalPlaces(digits, Decimal.ROUND_HALF_UP), currency: m.currency };
}
