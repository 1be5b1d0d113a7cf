import { tidy } from '../measure/mixed-number.ts';
import { glyphOfFraction, isEverydayFraction } from '../measure/vulgar-fractions.ts';

/** What `1/2 LB` means on a supplier's list: half a pound, or one pack of 2 lb. */
export type SlashMeaning = 'fraction' | 'count/size';

/** All of them. */
export const SLASH_MEANINGS = ['fraction', 'count/size'] as const satisfies readonly SlashMeaning[];

/** A pack whose slash could be read in two ways: both, as they can be written beyond doubt. */
export interface SlashChoice {
  /** What it was read as: `½ LB`. */
  readonly taken: string;
  /** The other reading: `1 x 2 LB`. */
  readonly other: string;
}

/** What a slash at the start of a text comes to. */
export type SlashRead =
  | { readonly kind: 'count'; readonly count: bigint; readonly rest: string }
  | { readonly kind: 'fraction'; readonly choice: SlashChoice | undefined }
  | undefined;

/** `2/10 LB`, `4/1 GAL`, `6/#10`, `12/.5 GAL`: a count, a slash, and the size of one. */
const COUNT_AND_SIZE = /^(\d{1,4}) ?\/ ?(?=[\d.½⅓⅔¼¾⅛⅜⅝⅞#]|no\b)/iu;
/** Two whole numbers that may be a fraction, with no third number at the second. */
const TWO_NUMBERS = /^(\d{1,4}) ?\/ ?(\d{1,4})(?![\d.]| ?\/| \d| ?-\d|[½⅓⅔¼¾⅛⅜⅝⅞])/u;

/**
 * Reads a slash at the start of a tidy pack as price lists write it (common practice, no source): `2/10 LB` is two
 * of 10 lb. Only halves, thirds, quarters and eighths in lowest terms can be fractions. Where such a one opens the
 * pack, `meaning` decides; where the supplier states none it is a fraction, as kitchens write it, and both readings
 * are handed back. `counted`: a count stands before it already (`9/1/2 GAL`, `6 x 1/2 gal`), which leaves
 * 1/2 no other sense than a half.
 */
export function readSlash(text: string, meaning: SlashMeaning | undefined, counted: boolean): SlashRead {
  const two = TWO_NUMBERS.exec(text);
  const [top, bottom] = two ? [BigInt(two[1] as string), BigInt(two[2] as string)] : [0n, 0n];
  if (two && isEverydayFraction(top, bottom)) {
    if (counted && (top === 1n || meaning !== 'count/size')) return { kind: 'fraction', choice: undefined };
    if (meaning === 'fraction') return { kind: 'fraction', choice: undefined };
    if (meaning === undefined) {
      const after = tidy(text.slice(two[0].length));
      const choice = {
        taken: `${glyphOfFraction(top, bottom)} ${after}`.trim(),
        other: `${top} x ${bottom} ${after}`.trim(),
      };
      return { kind: 'fraction', choice };
    }
  }
  const counts = COUNT_AND_SIZE.exec(text);
  if (!counts || BigInt(counts[1] as string) === 0n) return undefined;
  return { kind: 'count', count: BigInt(counts[1] as string), rest: text.slice(counts[0].length).trim() };
}
