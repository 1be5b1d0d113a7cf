import { Decimal } from '../../money/decimal.ts';
import { type Money, money, negate, noMoney, subtract, sum } from '../../money/money.ts';
import { rateOf } from '../../money/rate.ts';
import type { Quote, QuoteLine } from '../../quote/quote.ts';
import type { Terms } from '../../quote/terms.ts';

/** Tax that the prices hold: at which rate, and the sum that it is in as money text. */
export interface TaxWithin {
  readonly of: 'tax within';
  readonly rate: string;
  readonly base: string;
}

/** A line of what comes in, at the minor unit. */
export interface RevenueLine {
  readonly key: string;
  /** What it is named after, as a line of a quote is; empty where its key says all. */
  readonly name: string;
  readonly amount: Money;
  /** As a line of a quote has it, with what it is multiplied from. */
  readonly why: Pick<QuoteLine, 'why' | 'quantity' | 'unitPrice'> | TaxWithin;
}

/** What is earned, net of tax: the lines of the bill, and the tax that is within them taken out. Sums to `net`. */
export interface Revenue {
  readonly lines: readonly RevenueLine[];
  /** The total billed without any tax. */
  readonly net: Money;
  /** What of it the food and drink lines are, before discount and service charge; unrounded. */
  readonly food: Money;
}

/** The total of a quote without its taxes: tax is collected for others and is never the kitchen's own. */
export function netTotal({ total, taxes, currency }: Quote): Money {
  const taxed = taxes.map(({ amount }) => money(amount, currency));
  return subtract(money(total, currency), sum(taxed, currency));
}

/** What a quote brings in, line by line. */
export function revenueOf(priced: Quote, terms: Terms): Revenue {
  const { currency } = priced;
  const lines = priced.lines.map(
    ({ key, name, amount, why, quantity, unitPrice }): RevenueLine => ({
      key,
      name,
      amount: money(amount, currency),
      why: { why, quantity, unitPrice },
    }),
  );
  const within = priced.taxIncluded ? priced.taxes : [];
  const taxes = within.map(
    ({ rate, base, amount }): RevenueLine => ({
      key: `tax:${rate}`,
      name: '',
      amount: negate(money(amount, currency)),
      why: { of: 'tax within', rate, base },
    }),
  );
  return {
    lines: [...lines, ...taxes],
    net: netTotal(priced),
    food: foodSales(priced.lines, terms),
  };
}

/** Lines of food and drink without the tax that their prices may include. */
function foodSales(lines: readonly QuoteLine[], { currency, place }: Terms): Money {
  const eaten = lines.filter((line) => line.class === 'food' || line.class === 'drink');
  return eaten.reduce((total, line) => {
    const gross = new Decimal(line.amount);
    const rate = place.taxIncluded ? rateOf(place.tax[line.class ?? 'food']) : new Decimal(0);
    return { amount: total.amount.plus(gross.div(rate.plus(1))), currency };
  }, noMoney(currency));
}
