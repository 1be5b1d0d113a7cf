import type Fraction from 'fraction.js';
import { parseQuantity } from '../measure/parse-quantity.ts';
import { definedFactor } from '../measure/units.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** Reads a weight, `42 lb`, `900 kg`, as exact grams above 0. */
export function parseGrams(text: string): Parsed<Fraction> {
  const read = parseQuantity(text);
  if (!read.ok) return read;
  const factor = definedFactor(read.value.unit, 'g');
  return factor
    ? parsed(read.value.amount.mul(factor))
    : notParsed(`“${text.slice(0, 40)}” is not a weight`, 'write it in lb, oz, kg or g, such as 42 lb');
}
