import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** Cans of a trade number, which fixes neither what they weigh nor what they hold: the food says that. */
export interface NumberedCan {
  /** `10`, `2½`. */
  readonly number: string;
}

/** `#10`, `No. 10`, `#2.5`, `#300`, with or without the word can, and what the cans come in. */
const NUMBERED = /^(?:#|no\.? ?|#? ?no\.? ?)(\d{1,3}(?:\.5|½|[ -]1\/2)?)(?: ?(?:cans?|cns?|tins?))?(.*)$/iu;
/** `10 CN` after a count and a slash. */
const BARE = /^(\d{1,3}(?:\.5|½)?) ?(?:cans?|cns?|tins?)\b(.*)$/iu;
const PACKAGING = /^(?: \p{L}[\p{L}'’-]*){0,2}$/u;

/**
 * Reads the cans of a price list: `#10`, `No. 10 can`; after a count and a slash also `10 CN`, which price lists write
 * for No. 10 cans (common practice, no source), and `1 CN`, one can. Another bare number there may be a can's number
 * as well as a count, and is refused. undefined: the text is not of numbered cans.
 */
export function readNumberedCan(text: string, afterSlash: boolean): Parsed<NumberedCan> | undefined {
  const numbered = NUMBERED.exec(text);
  if (numbered) {
    const number = (numbered[1] as string).replace(/\.5|[ -]1\/2/, '½');
    if (PACKAGING.test(numbered[2] ?? '')) return parsed({ number });
    return notParsed(`“${text}” has more in it than a can and its number`, 'write it as 6/#10');
  }
  const bare = afterSlash ? BARE.exec(text) : null;
  if (!bare || bare[1] === '1' || !PACKAGING.test(bare[2] ?? '')) return undefined;
  if (bare[1] === '10') return parsed({ number: '10' });
  return notParsed(
    `“${text}” could mean No. ${bare[1]} cans or ${bare[1]} cans`,
    `write #${bare[1]} for the can number, or the count as 6 x ${bare[1]} can`,
  );
}
