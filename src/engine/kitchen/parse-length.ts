import Fraction from 'fraction.js';
import { readNumber, tidy } from '../measure/mixed-number.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** Millimetres in an inch, 25.4 by definition, and in the metric units of what a kitchen measures with a rule. */
const MILLIMETRES: Readonly<Record<string, Fraction>> = {
  in: new Fraction(254n, 10n),
  inch: new Fraction(254n, 10n),
  inches: new Fraction(254n, 10n),
  cm: new Fraction(10n),
  mm: new Fraction(1n),
};

/** Millimetres in an inch. */
export const INCH = MILLIMETRES.in as Fraction;

/** What a length measures, as an error calls it, and how one is written. */
export interface LengthAsked {
  /** `the depth of a container` */
  readonly thing: string;
  readonly wayOut: string;
}

/** Reads a length, `2½ in`, `65 mm`, `10 cm`, as exact millimetres, 0 or more. */
export function parseLength(text: string, { thing, wayOut }: LengthAsked): Parsed<Fraction> {
  const number = readNumber(tidy(text.slice(0, 40)));
  if (!number.ok) return notParsed(number.what, wayOut);
  const { value, rest } = number.value;
  const size = lengthUnit(rest);
  return size ? parsed(value.mul(size)) : notLength(text, { thing, wayOut });
}

/** Millimetres in the unit that a word names, exact; undefined for a word that names none. */
export function lengthUnit(text: string): Fraction | undefined {
  const word = text.trim().toLowerCase();
  return Object.hasOwn(MILLIMETRES, word) ? MILLIMETRES[word] : undefined;
}

/** The error of a text that is no such length. */
export function notLength(text: string, { thing, wayOut }: LengthAsked): Parsed<never> {
  return notParsed(`“${text.slice(0, 40)}” is not ${thing}`, wayOut);
}
