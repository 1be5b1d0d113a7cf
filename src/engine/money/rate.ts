import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { Decimal } from './decimal.ts';

const RATE_FORM = /^(\d{1,4}(?:\.\d{1,8})?) ?%$/;
const WAY_OUT = 'write a percentage such as "18 %" or "8.25 %"';

/** Reads a percentage, `18 %` or `8.25%`, as the exact share it is: 0.18, 0.0825. From 0 % to 1000 %. */
export function parseRate(text: string): Parsed<Decimal> {
  const match = RATE_FORM.exec(text.slice(0, 40).trim());
  if (!match?.[1]) return notParsed(`"${text.slice(0, 40)}" is not a percentage`, WAY_OUT);
  const percent = new Decimal(match[1]);
  if (percent.gt(1000)) return notParsed(`${match[0]} is more than 1000 %`, WAY_OUT);
  return parsed(percent.div(100));
}

/** The share that a rate kept in terms means. Throws on a text that `parseRate` refuses. */
export function rateOf(text: string): Decimal {
  const rate = parseRate(text);
  if (!rate.ok) throw new RangeError(`${rate.what}; ${rate.wayOut}`);
  return rate.value;
}

/** The canonical text of a share, `0.0825` → `8.25 %`; `parseRate` reads it back. */
export function rateText(rate: Decimal): string {
  return `${rate.times(100).toFixed()} %`;
}
