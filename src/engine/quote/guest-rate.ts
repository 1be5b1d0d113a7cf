import { Decimal } from '../money/decimal.ts';
import { exactMoneyText, type Money, roundToMinor, times } from '../money/money.ts';
import { parseMoney } from '../money/parse-money.ts';
import { parseRate, rateOf, rateText } from '../money/rate.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** A meal's price as a share of the adult's or a sum, as text; neither: the adult's price. */
export interface GuestRate {
  /** `50 %` */
  readonly rate?: string;
  /** Money text, `18.00`. */
  readonly price?: string;
}

/** Reads what a child's or a vendor's meal costs: `50 %` of the adult's price, or a sum, `18.00`. */
export function parseGuestRate(text: string, currency: string): Parsed<GuestRate> {
  if (text.includes('%')) {
    const rate = parseRate(text);
    return rate.ok ? parsed({ rate: rateText(rate.value) }) : rate;
  }
  const price = parseMoney(text, currency);
  if (price.ok) return parsed({ price: exactMoneyText(price.value) });
  return notParsed(price.what, `${price.wayOut}, or a percentage of the adult price such as "50 %"`);
}

/** The price of one such meal: its own sum, or the share of the adult's price half-up to the minor unit. */
export function mealPrice(rate: GuestRate, adult: Money): Money {
  if (rate.price !== undefined) return { amount: new Decimal(rate.price), currency: adult.currency };
  if (rate.rate !== undefined) return roundToMinor(times(adult, rateOf(rate.rate)));
  return adult;
}
