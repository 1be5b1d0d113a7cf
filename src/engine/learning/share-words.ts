import Fraction from 'fraction.js';
import { readNumber } from '../measure/mixed-number.ts';

const ONES = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

const PARTS: ReadonlyMap<string, bigint> = new Map([
  ['half', 2n],
  ['halves', 2n],
  ['third', 3n],
  ['thirds', 3n],
  ['quarter', 4n],
  ['quarters', 4n],
  ['fifth', 5n],
  ['fifths', 5n],
  ['eighth', 8n],
  ['eighths', 8n],
]);

/** A number at the start of a text in digits or in words, and what is left after it without `of a`. */
export interface ShareRead {
  readonly value: Fraction;
  readonly rest: string;
}

/**
 * Reads how many of something, as a cook says it of what is left: `2`, `1½`, `two`, `a third`, `two thirds of a pan`,
 * `half a tub`. Exact. Undefined where the text begins with no number; English only.
 */
export function readShare(text: string): ShareRead | undefined {
  const number = readNumber(text);
  if (number.ok) return { value: number.value.value, rest: withoutArticle(number.value.rest) };
  const [first = '', second = '', ...more] = text.toLowerCase().split(' ');
  const rest = (words: readonly string[]) => withoutArticle(words.join(' '));
  const part = PARTS.get(first);
  if (part !== undefined)
    return { value: new Fraction(1n, part), rest: rest([second, ...more].filter(Boolean)) };
  const ones = first === 'a' || first === 'an' ? 1 : ONES.indexOf(first) + 1;
  if (ones === 0) return undefined;
  const parts = PARTS.get(second);
  if (parts !== undefined) return { value: new Fraction(BigInt(ones), parts), rest: rest(more) };
  return { value: new Fraction(BigInt(ones)), rest: rest([second, ...more].filter(Boolean)) };
}

function withoutArticle(text: string): string {
  return text.replace(/^(?:of )?(?:(?:a|an|one|the) )?/, '');
}
