import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { plural, singular } from './count-words.ts';
import { definedUnit, UNITS } from './units.ts';

const WORDS =
  /^\p{L}[\p{L}\p{M}]*(?:['’-]\p{L}[\p{L}\p{M}]*)*(?: \p{L}[\p{L}\p{M}]*(?:['’-]\p{L}[\p{L}\p{M}]*)*){0,2}$/u;
const LONGEST_WORDS = 40;

/** Words that join other words, so that a unit with one of them is a sentence gone astray. */
const JOINING: ReadonlySet<string> = new Set(['about', 'and', 'for', 'no', 'of', 'or', 'per', 'plus', 'to']);

/** What price lists shorten a count word to (common practice, no source); CT, EA and DZ are units of their own. */
const CODES: ReadonlyMap<string, string> = new Map([
  ['bg', 'bag'],
  ['bx', 'box'],
  ['cn', 'can'],
  ['cs', 'case'],
  ['pk', 'pack'],
]);

/**
 * The canonical unit that words name: `pounds` → `lb`, `fl. oz.` → `fl oz`, `Tbsp` → `tbsp`; `oz` is mass.
 * Any other one to three words are a count, in the singular: `loaves` → `loaf`, `CS` → `case`. Upper and lower case
 * are the same, so a lone `T` or `t` (tablespoon or teaspoon) is refused, as is what is not words.
 */
export function findUnit(words: string): Parsed<string> {
  const plain = words.replaceAll('.', ' ').replace(/\s+/gu, ' ').trim().toLowerCase();
  const defined = definedUnit(plain);
  if (defined !== undefined) return parsed(defined);
  const code = CODES.get(plain);
  if (code !== undefined) return parsed(code);
  const parts = plain.split(' ');
  const joining = parts.find((part) => JOINING.has(part));
  if (joining !== undefined) {
    return notParsed(
      `"${words}" is not a unit: "${joining}" does not belong in it`,
      'write only a number and a unit',
    );
  }
  if (!WORDS.test(plain) || plain.length > LONGEST_WORDS) {
    return notParsed(
      `"${words.slice(0, LONGEST_WORDS)}" is not a unit`,
      'write a unit such as lb, cups, each or cans',
    );
  }
  if ([...plain].length === 1) {
    return notParsed(
      `"${words}" could mean several units`,
      'write the unit in full, such as tbsp, tsp or cup',
    );
  }
  const within = parts.map((part) => definedUnit(part)).find((unit) => unit !== undefined);
  if (within !== undefined) {
    return notParsed(
      `"${words}" has more in it than the unit ${within}`,
      `write only ${within} here, and put the prep next to the food’s name`,
    );
  }
  return parsed(singular(plain));
}

/** A canonical unit's word for this many of it: `cup` up to one, `cups` above; `lb` always `lb`. */
export function unitWord(unit: string, amount: Fraction): string {
  if (amount.lte(1n)) return unit;
  const defined = UNITS.get(unit);
  return defined ? (defined.many ?? unit) : plural(unit);
}

/** The same after a number as it is written: `½ cup`, `1 loaf`; in English a decimal is many, and so is none: `0.48 loaves`, `0 bowls`. */
export function unitAfter(number: string, unit: string, amount: Fraction): string {
  if (number === '1') return unit;
  return unitWord(unit, number === '0' || number.includes('.') ? MANY : amount);
}

const MANY = new Fraction(2n);
