import { exactMoneyText } from '../money/money.ts';
import { parseMoney } from '../money/parse-money.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import type { AddOnPer } from './terms.ts';

/** An add-on's price and what it is for. */
export interface AddOnPrice {
  /** Money text, up to six decimals where it is per something. */
  readonly price: string;
  readonly per: AddOnPer;
  /** The size of the group where `per` is `guests`. */
  readonly guests?: number;
}

const WAY_OUT = 'write for example "6.50 per guest", "120.00 per hour", "85.00 per 40 guests" or "350.00"';

/** Reads an add-on's price: `6.50 per guest`, `120.00 per hour`, `85.00 per 40 guests`, `350.00` for all. */
export function parseAddOnPrice(text: string, currency: string): Parsed<AddOnPrice> {
  const words = text.slice(0, 60).trim().replace(/\s+/g, ' ');
  const [sumText = '', unit, ...rest] = words.split(' per ');
  if (rest.length > 0) return notParsed(`"${words}" says "per" twice`, WAY_OUT);
  const price = parseMoney(sumText, currency, { unitPrice: unit !== undefined });
  if (!price.ok) return notParsed(price.what, `${price.wayOut}; an add-on's price can be "6.50 per guest"`);
  const text6 = exactMoneyText(price.value);
  if (unit === undefined) return parsed({ price: text6, per: 'flat' });
  if (unit === 'guest' || unit === 'hour') return parsed({ price: text6, per: unit });
  const guests = /^(\d{1,6}) guests$/.exec(unit)?.[1];
  if (guests === undefined) return notParsed(`nothing is priced per "${unit}"`, WAY_OUT);
  if (Number(guests) < 1 || Number(guests) > 100_000) {
    return notParsed(`a group of ${guests} guests can’t be priced`, 'use a group of 1 to 100,000 guests');
  }
  return parsed({ price: text6, per: 'guests', guests: Number(guests) });
}
