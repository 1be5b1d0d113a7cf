import Fraction from 'fraction.js';
import { parseShare } from '../measure/parse-share.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import type { Chances } from './chances.ts';

/** What guests take of a dish: the share of them who take no helping, one, two and so on. The shares sum to 1. */
export interface Appetite {
  readonly shares: readonly Fraction[];
}

const WORDS = ['none', 'one', 'two', 'three', 'four', 'five', 'six'] as const;

/** The words that an appetite's shares are written with, from none on. */
export const HELPINGS: readonly string[] = WORDS;

const ONE = new Fraction(1n);

/**
 * Reads an appetite: `{ none: 20 %, one: 55 %, two: 25 % }`. What is left over to 100 % takes none; more than
 * 100 % is refused, and so is an appetite by which nobody takes anything.
 */
export function parseAppetite(text: Readonly<Record<string, string>>): Parsed<Appetite> {
  const shares: Fraction[] = [];
  let sum = new Fraction(0n);
  for (const [word, written] of Object.entries(text)) {
    const helpings = WORDS.indexOf(word as (typeof WORDS)[number]);
    if (helpings < 0) return notParsed(`“${word}” is not a number of helpings`, `write ${WORDS.join(', ')}`);
    const share = parseShare(written);
    if (!share.ok) return share;
    shares[helpings] = share.value;
    sum = sum.add(share.value);
  }
  if (sum.compare(ONE) > 0)
    return notParsed(
      `the shares of the appetite add up to ${sum.mul(100n).toString()} %`,
      'make them add up to 100 %',
    );
  const rest = ONE.sub(sum);
  if (rest.n !== 0n && shares[0] !== undefined)
    return notParsed(
      `the shares of the appetite add up to ${sum.mul(100n).toString()} %`,
      'make them add up to 100 %, or leave out “none”, which is then the rest',
    );
  const whole = Array.from({ length: shares.length }, (_, helpings) => shares[helpings] ?? new Fraction(0n));
  if (whole.length === 0) whole.push(new Fraction(0n));
  whole[0] = (whole[0] as Fraction).add(rest);
  if (whole.slice(1).every((share) => share.n === 0n))
    return notParsed(
      'with this appetite nobody takes anything',
      'give the share who take one, two … helpings',
    );
  return parsed({ shares: whole });
}

/** The chances of one guest's helpings. */
export function chancesOf({ shares }: Appetite): Chances {
  return Float64Array.from(shares, (share) => share.valueOf());
}

/** Helpings a guest takes in the mean, exact. */
export function meanHelpings({ shares }: Appetite): Fraction {
  return shares.reduce((sum, share, helpings) => sum.add(share.mul(helpings)), new Fraction(0n));
}
