import type Fraction from 'fraction.js';
import { parseShare } from '../measure/parse-share.ts';
import { notParsed, type Parsed } from '../parsed.ts';

/** Reads a share that is left of something or filled: above 0 % and at most 100 %, exact. */
export function parsePart(text: string): Parsed<Fraction> {
  const share = parseShare(text);
  if (!share.ok) return share;
  return share.value.n === 0n || share.value.gt(1n)
    ? notParsed(`“${text.trim()}” is not a part of the whole`, 'write a percentage above 0 % and up to 100 %')
    : share;
}
