import Fraction from 'fraction.js';
import { tidy } from '../measure/mixed-number.ts';
import { parseQuantity } from '../measure/parse-quantity.ts';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import { unitKind } from '../measure/units.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** What one pack holds, as the text of a price list says. */
export interface Pack {
  readonly contents: Quantity;
  /** True for pieces of about a weight, which are priced by weight and bought by the piece. */
  readonly aboutWeight: boolean;
}

const TIMES = /^(\d{1,4}) ?[x×*] ?(?=[\d.½⅓⅔¼¾⅛]|about )/iu;
const ABOUT = /^about /i;
/** What the food comes in, up to three words: `sack`, `gallon jug`, `vacuum bag`. */
const PACKAGING = /^\p{L}[\p{L}'’-]*(?: \p{L}[\p{L}'’-]*){0,2}$/u;
const WAY_OUT = 'write it as 50 lb sack, 6 x 1 can, 4 x 1 gal jug or about 12 lb piece';

/**
 * Reads a pack: how many times (`6 x`), how much, and what it comes in (`sack`, ignored): `50 lb sack`,
 * `6 × 1 can`, `4 x 1 gal jug`, `12 x 32 fl oz bottle`, `about 12 lb piece`, `2 x about 6 lb piece`. Contents
 * are exact. `about` goes with weights only. A bare number counts pieces.
 */
export function parsePack(text: string): Parsed<Pack> {
  if (text.length > 80) return notParsed('the pack is too long', WAY_OUT);
  let rest = tidy(text);
  let times = new Fraction(1n);
  let aboutWeight = false;
  for (;;) {
    const about = ABOUT.exec(rest);
    const factor = TIMES.exec(rest);
    if (about && !aboutWeight) aboutWeight = true;
    else if (factor && BigInt(factor[1] as string) > 0n) times = times.mul(BigInt(factor[1] as string));
    else break;
    rest = rest.slice((about ?? factor)?.[0].length).trim();
  }
  const one = readContents(rest);
  if (!one.ok) return one;
  if (aboutWeight && unitKind(one.value.unit) !== 'mass') {
    return notParsed(
      `“${tidy(text)}” is about something that is not a weight`,
      'write it as about 12 lb piece',
    );
  }
  return parsed({ contents: timesQuantity(one.value, times), aboutWeight });
}

/* The longest start that is a weight or volume wins, since `10 lb 8 oz bag` goes on where `10 lb` ends. */
function readContents(text: string): Parsed<Quantity> {
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
  if (counted) return parsed(counted);
  const whole = parseQuantity(text);
  return whole.ok ? notParsed(`“${text}” is no pack`, WAY_OUT) : notParsed(whole.what, WAY_OUT);
}
