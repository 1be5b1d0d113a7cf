import Fraction from 'fraction.js';
import { readNumber, tidy } from '../measure/mixed-number.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** Millimetres in an inch, 25.4 by definition, and in the metric units of a pan's depth. */
const MILLIMETRES: Readonly<Record<string, Fraction>> = {
  in: new Fraction(254n, 10n),
  inch: new Fraction(254n, 10n),
  inches: new Fraction(254n, 10n),
  cm: new Fraction(10n),
  mm: new Fraction(1n),
};

const WAY_OUT = 'write it as 2½ in, 65 mm or 10 cm';

/** Reads how deep a container is inside, `2½ in`, `65 mm`, `10 cm`, as exact inches: above 0, at most 40. */
export function parseDepth(text: string): Parsed<Fraction> {
  const number = readNumber(tidy(text.slice(0, 40)));
  if (!number.ok) return notParsed(number.what, WAY_OUT);
  const { value, rest } = number.value;
  const word = rest.trim().toLowerCase();
  const size = Object.hasOwn(MILLIMETRES, word) ? MILLIMETRES[word] : undefined;
  const inches = size && value.mul(size).div(MILLIMETRES.in as Fraction);
  return inches === undefined || inches.n === 0n || inches.gt(40n)
    ? notParsed(`“${text.slice(0, 40)}” is not the depth of a container`, WAY_OUT)
    : parsed(inches);
}
