import { exactMoneyText } from '../money/money.ts';
import { parseMoney } from '../money/parse-money.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

const FORM = /^(.+?) (?:per|an) hour$/i;

/** Reads what an hour costs, `38.00 per hour`, as money text. A sum alone is refused: it could be for the day. */
export function parseHourly(text: string, currency: string): Parsed<string> {
  const sum = FORM.exec(text.trim())?.[1];
  if (sum === undefined) {
    return notParsed(`“${text.slice(0, 40)}” is not an hourly rate`, 'write it as "38.00 per hour"');
  }
  const price = parseMoney(sum, currency, { unitPrice: true });
  return price.ok ? parsed(exactMoneyText(price.value)) : price;
}
