import Fraction from 'fraction.js';
import { parseRate, rateText } from '../money/rate.ts';
import { type Parsed, parsed } from '../parsed.ts';

/** Reads a percentage as an exact fraction, for shares of food: `8 %` → 2/25. Fails as `parseRate` does. */
export function parseShare(text: string): Parsed<Fraction> {
  const rate = parseRate(text);
  return rate.ok ? parsed(new Fraction(rateText(rate.value).replace(' %', '')).div(100n)) : rate;
}
