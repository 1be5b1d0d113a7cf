import { type Money, roundToMinor } from '../money/money.ts';
import type { LineClass } from './line-class.ts';
import type { LineWhy } from './line-why.ts';
import { type Ratio, ratioText } from './ratio.ts';

/** A line while a quote is being calculated, money still as money. */
export interface PricedLine {
  /** Names the line for good, so that two quotes can be laid side by side. */
  readonly key: string;
  /** What it is named after: a menu, a dish, an add-on, a label of the terms; empty where its key says all. */
  readonly name: string;
  /** null where the line spreads over other lines: the discount, and tax taken out for an exempt client. */
  readonly class: LineClass | null;
  /** Exact, as people write it: `84`, `47 1/2`. */
  readonly quantity: string;
  readonly unitPrice: Money;
  /** At the minor unit. */
  readonly amount: Money;
  /** How the amount came about; made when it is asked for, since most quotes are only summed. */
  readonly why: () => LineWhy;
}

/** A line of so many at a price: the amount is their exact product, rounded half-up to the minor unit. */
export function pricedLine(
  line: Pick<PricedLine, 'key' | 'name' | 'class' | 'unitPrice' | 'why'>,
  quantity: Ratio,
): PricedLine {
  const { amount, currency } = line.unitPrice;
  // Counts and hours stay far below 2^53, so as numbers they are exact.
  const product = amount.times(Number(quantity.over));
  const exact = quantity.under === 1n ? product : product.div(Number(quantity.under));
  return { ...line, quantity: ratioText(quantity), amount: roundToMinor({ amount: exact, currency }) };
}

/** A line that is a sum of its own, taken once. It must be at the minor unit. */
export function sumLine(line: Omit<PricedLine, 'quantity' | 'unitPrice'>): PricedLine {
  return { ...line, quantity: '1', unitPrice: line.amount };
}
