import Fraction from 'fraction.js';
import { readNumber, tidy } from '../measure/mixed-number.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** Meters in a mile, 5,280 feet of 0.3048 m by definition, and in a kilometer. */
const METERS: Readonly<Record<string, Fraction>> = {
  mi: new Fraction(1_609_344n, 1000n),
  mile: new Fraction(1_609_344n, 1000n),
  miles: new Fraction(1_609_344n, 1000n),
  km: new Fraction(1000n),
};

/** Reads a distance by road, `14 mi`, `22.5 km`, as exact meters, 0 or more. */
export function parseDistance(text: string): Parsed<Fraction> {
  const wayOut = 'write it as “14 mi” or “22 km”';
  const number = readNumber(tidy(text.slice(0, 40)));
  if (!number.ok) return notParsed(number.what, wayOut);
  const { value, rest } = number.value;
  const word = rest.trim().toLowerCase();
  const unit = Object.hasOwn(METERS, word) ? METERS[word] : undefined;
  return unit ? parsed(value.mul(unit)) : notParsed(`“${text.slice(0, 40)}” is not a distance`, wayOut);
}
