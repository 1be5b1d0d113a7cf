import Fraction from 'fraction.js';
import { tidy } from '../measure/mixed-number.ts';
import { parseQuantity } from '../measure/parse-quantity.ts';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import { unitKind } from '../measure/units.ts';
import { isEverydayFraction } from '../measure/vulgar-fractions.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { readNumberedCan } from './can-pack.ts';
import { readSlash, type SlashChoice, type SlashMeaning } from './pack-slash.ts';

/** What one pack holds, as the text of a price list says. */
export interface Pack {
  readonly contents: Quantity;
  /** True for pieces of about a weight, which are priced by weight and bought by the piece. */
  readonly aboutWeight: boolean;
  /** The number of its cans where it names one: `10`. */
  readonly canNumber?: string;
  /** Set where a slash could be read in two ways and the supplier does not say which it means. */
  readonly slash?: SlashChoice;
}

const TIMES = /^(\d{1,4}) ?[x×*] ?(?=[\d.½⅓⅔¼¾⅛#]|about )/iu;
/** `6-#10`, `6 #10`: only before a can's number, since `6-10 lb` is a range. */
const COUNT_OF_CANS = /^(\d{1,4}) ?[-–]? ?(?=#? ?no\b|#\d)/iu;
const ABOUT = /^about /i;
/** `50#`, `50 # bag`: pounds, where the sign follows the number (common practice, no source). */
const POUNDS = /^([\d./½⅓⅔¼¾⅛⅜⅝⅞ ]*[\d½⅓⅔¼¾⅛⅜⅝⅞]) ?#(?![\d#]) ?/u;
const MIXED = /^\d+[ -](\d+) ?\/ ?(\d+)/;
/** What the food comes in, up to three words: `sack`, `gallon jug`, `vacuum bag`. */
const PACKAGING = /^\p{L}[\p{L}'’-]*(?: \p{L}[\p{L}'’-]*){0,2}$/u;
const WAY_OUT = 'write it as 50 lb sack, 2/10 lb, 6 x 1 can, 6/#10 or about 12 lb piece';

/**
 * Reads a pack: how many times (`6 x`, or `6/` as price lists write it), how much, and what it comes in (`sack`,
 * ignored): `50 lb sack`, `6 × 1 can`, `4/1 GAL`, `2/10 LB`, `12/8.8 OZ`, `1/50#`, `6/#10`, `12 x 32 fl oz bottle`,
 * `about 12 lb piece`, `2 x about 6 lb piece`. Contents are exact; cans of a number are a count of cans. `about`
 * goes with weights only. A bare number counts pieces. `slash` is what the supplier means by `1/2 LB`, if stated.
 */
export function parsePack(text: string, slash?: SlashMeaning): Parsed<Pack> {
  if (text.length > 80) return notParsed('the pack is too long', WAY_OUT);
  const start = readCounts(tidy(text), slash);
  const { times, aboutWeight, rest } = start;
  const can = aboutWeight ? undefined : readNumberedCan(rest, start.afterSlash);
  if (can && !can.ok) return can;
  if (can) {
    const contents = { amount: times, unit: 'can' };
    return parsed({ contents, aboutWeight, canNumber: can.value.number });
  }
  const one = readContents(rest.replace(POUNDS, '$1 lb '), start.afterSlash);
  if (!one.ok) return one;
  if (aboutWeight && unitKind(one.value.unit) !== 'mass') {
    return notParsed(`“${tidy(text)}” has “about” without a weight`, 'write it as about 12 lb piece');
  }
  const contents = timesQuantity(one.value, times);
  return parsed({ contents, aboutWeight, ...(start.choice ? { slash: start.choice } : {}) });
}

interface Counts {
  readonly times: Fraction;
  readonly aboutWeight: boolean;
  /** True where the last count came before a slash. */
  readonly afterSlash: boolean;
  readonly choice: SlashChoice | undefined;
  readonly rest: string;
}

/* All that stands before the size of one: counts, `about`. Stops where a fraction begins. */
function readCounts(text: string, meaning: SlashMeaning | undefined): Counts {
  let rest = text;
  let times = new Fraction(1n);
  let [aboutWeight, counted, afterSlash] = [false, false, false];
  for (;;) {
    const about = aboutWeight ? null : ABOUT.exec(rest);
    const factor = TIMES.exec(rest) ?? COUNT_OF_CANS.exec(rest);
    const slash = readSlash(rest, meaning, counted || aboutWeight);
    if (slash?.kind === 'fraction') return { times, aboutWeight, afterSlash, choice: slash.choice, rest };
    if (slash?.kind === 'count') {
      times = times.mul(slash.count);
      [counted, afterSlash] = [true, true];
      rest = slash.rest;
      continue;
    }
    if (about) aboutWeight = true;
    else if (factor && BigInt(factor[1] as string) > 0n) {
      times = times.mul(BigInt(factor[1] as string));
      [counted, afterSlash] = [true, false];
    } else return { times, aboutWeight, afterSlash, choice: undefined, rest };
    rest = rest.slice((about ?? factor)?.[0].length).trim();
  }
}

/* The longest start that is a weight or volume wins, since `10 lb 8 oz bag` goes on where `10 lb` ends. */
function readContents(written: string, afterSlash: boolean): Parsed<Quantity> {
  const text = written.trim();
  const mixed = MIXED.exec(text);
  if (mixed && !isEverydayFraction(BigInt(mixed[1] as string), BigInt(mixed[2] as string))) {
    return notParsed(`“${text}” is not a clear pack size`, WAY_OUT);
  }
  const words = text.split(' ');
  let counted: Quantity | undefined;
  for (let end = words.length; end > 0; end -= 1) {
    const packaging = words.slice(end).join(' ');
    if (packaging !== '' && !PACKAGING.test(packaging)) break;
    const read = parseQuantity(words.slice(0, end).join(' '));
    if (!read.ok) continue;
    if (unitKind(read.value.unit) !== 'count') return read;
    // `24 each box`: of the counts the one with the shortest words, `24 each`, but never a bare number.
    if (end > 1 || words.length === 1) counted = read.value;
  }
  if (counted && afterSlash && /^[\d.]+$/.test(text)) {
    return notParsed(`“${text}” after the slash has no unit`, 'write what the number counts: 24/12 oz');
  }
  if (counted) return parsed(counted);
  const whole = parseQuantity(text);
  return whole.ok ? notParsed(`“${text}” is not a pack`, WAY_OUT) : notParsed(whole.what, WAY_OUT);
}
