import type Fraction from 'fraction.js';
import { type Parsed, parsed } from '../parsed.ts';
import { INCH, notLength, parseLength } from './parse-length.ts';

const DEPTH = { thing: 'the depth of a container', wayOut: 'write it as 2½ in, 65 mm or 10 cm' } as const;

/** Reads how deep a container is inside, `2½ in`, `65 mm`, `10 cm`, as exact inches: above 0, at most 40. */
export function parseDepth(text: string): Parsed<Fraction> {
  const length = parseLength(text, DEPTH);
  if (!length.ok) return length;
  const inches = length.value.div(INCH);
  return inches.n === 0n || inches.gt(40n) ? notLength(text, DEPTH) : parsed(inches);
}
