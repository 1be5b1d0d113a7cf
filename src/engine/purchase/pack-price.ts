import { convert } from '../measure/conversions.ts';
import { tidy } from '../measure/mixed-number.ts';
import { parseQuantity } from '../measure/parse-quantity.ts';
import type { Quantity } from '../measure/quantity.ts';
import type { Decimal } from '../money/decimal.ts';
import { parseMoney } from '../money/parse-money.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import type { Pack } from './parse-pack.ts';
import { decimalOfFraction, fractionOfPrice } from './price-fraction.ts';

/** A price as a list gives it: for the pack, or for so much of what is in it. */
export interface PackPrice {
  readonly price: Decimal;
  /** null: for the whole pack. */
  readonly per: Quantity | null;
}

/**
 * Reads a price of a list: `31.50` for the pack, `8.40 per lb` for a weight (or another unit, or `per 100 g`).
 * A price per unit may be finer than the currency's minor unit.
 */
export function parsePackPrice(text: string, currency: string): Parsed<PackPrice> {
  const [sum = '', unit, ...more] = tidy(text.slice(0, 80)).split(/ per | ?\/ ?(?=\p{L})/u);
  if (more.length > 0) return notParsed(`“${tidy(text)}” is not a price`, 'write it as 31.50 or 8.40 per lb');
  const price = parseMoney(sum, currency, { unitPrice: unit !== undefined });
  if (!price.ok) return price;
  if (unit === undefined) return parsed({ price: price.value.amount, per: null });
  const per = parseQuantity(/^\p{L}/u.test(unit) ? `1 ${unit}` : unit);
  return per.ok ? parsed({ price: price.value.amount, per: per.value }) : per;
}

/**
 * What one pack costs, exact and unrounded: its price, or the unit price times what it holds (for a piece of
 * about a weight, that weight). A piece of about a weight must be priced by weight, since nobody knows before
 * it is on the scale what it comes to; and the unit must be one that measures what the pack holds.
 */
export function priceOfPack(pack: Pack, { price, per }: PackPrice): Parsed<Decimal> {
  if (per === null) {
    return pack.aboutWeight
      ? notParsed('a piece of about some weight needs a price by weight', 'write the price as 8.40 per lb')
      : parsed(price);
  }
  const held = convert(pack.contents, per.unit, []);
  if (!held) {
    return notParsed(
      `a price per ${per.unit} does not fit a pack in ${pack.contents.unit}`,
      'write the price of the whole pack',
    );
  }
  return parsed(decimalOfFraction(fractionOfPrice(price).mul(held.amount.div(per.amount))));
}
