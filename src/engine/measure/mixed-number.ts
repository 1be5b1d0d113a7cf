import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { MOST_DIGITS, numberSlip } from './number-slips.ts';
import { FRACTION_GLYPHS, fractionOfGlyph, glyphOfFraction } from './vulgar-fractions.ts';

const GLYPH_FORM = new RegExp(`^(\\d*) ?([${FRACTION_GLYPHS}])`, 'u');
const MIXED_FORM = /^(\d+)[ -](\d+) ?\/ ?(\d+)/;
const FRACTION_FORM = /^(\d+) ?\/ ?(\d+)/;
const DECIMAL_FORM = /^(\d*)\.(\d+)/;
const WHOLE_FORM = /^\d+/;
const RUNS_ON = new RegExp(`^[\\d./_${FRACTION_GLYPHS}]`, 'u');

/** A number read from the start of a text, and what of the text is left after it. */
export interface NumberRead {
  readonly value: Fraction;
  readonly rest: string;
}

/**
 * The text with every run of white space as one space, none at the ends, and every kind of fraction slash
 * as `/`. Grammars read this form.
 */
export function tidy(text: string): string {
  return text
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/\s+/gu, ' ')
    .trim();
}

/**
 * Reads a number from the start of a tidy text: `2`, `2.5`, `.5`, `1/2`, `1 1/2`, `1-1/2`, `½`, `1½`, `1 ½`.
 * The value is exact, zero or above. Signs, separators, exponents and other bases are refused, and so are
 * more than twelve digits in a run, a zero denominator and a mixed number whose fraction is not below one.
 */
export function readNumber(text: string): Parsed<NumberRead> {
  const slip = numberSlip<NumberRead>(text);
  if (slip !== undefined) return slip;
  const form = [GLYPH_FORM, MIXED_FORM, FRACTION_FORM, DECIMAL_FORM, WHOLE_FORM].find((f) => f.test(text));
  const match = form?.exec(text);
  if (!form || !match) {
    return notParsed(`"${text}" does not start with a number`, 'write the number first, such as 2 or 1 1/2');
  }
  const found = match[0];
  if ((found.match(/\d+/g) ?? []).some((digits) => digits.length > MOST_DIGITS)) {
    return notParsed(`"${found}" has more than ${MOST_DIGITS} digits`, 'write a number a kitchen would use');
  }
  const rest = text.slice(found.length);
  if (RUNS_ON.test(rest)) {
    return notParsed(`"${text}" does not start with one number`, 'write it as 2, 2.5, 1/2 or 1 1/2');
  }
  const value = numberOf(form, match);
  return value.ok ? parsed({ value: value.value, rest: rest.trim() }) : value;
}

function numberOf(form: RegExp, match: RegExpExecArray): Parsed<Fraction> {
  const [found, first = '', second = '', third = ''] = match;
  if (form === WHOLE_FORM) return parsed(new Fraction(BigInt(found)));
  if (form === DECIMAL_FORM) {
    return parsed(new Fraction(BigInt(first + second), 10n ** BigInt(second.length)));
  }
  if (form === FRACTION_FORM) return ratio(found, 0n, BigInt(first), BigInt(second));
  if (form === MIXED_FORM) return ratio(found, BigInt(first), BigInt(second), BigInt(third));
  const [n, d] = fractionOfGlyph(second)!;
  return ratio(found, BigInt(first || '0'), n, d);
}

function ratio(found: string, whole: bigint, n: bigint, d: bigint): Parsed<Fraction> {
  if (d === 0n) return notParsed(`"${found}" divides by zero`, 'write a fraction such as 1/2');
  if (whole > 0n && n >= d) {
    return notParsed(
      `"${found}" has a fraction that is not less than one`,
      'write a mixed number such as 1 1/2',
    );
  }
  return parsed(new Fraction(whole * d + n, d));
}

/**
 * The exact value as a cook writes it: `3`, `1½`, `5⅓`, and `2 3/16` where the fraction has no glyph.
 * Read back by `readNumber` to the same value while no run is longer than twelve digits. Never negative.
 */
export function mixedNumberText(value: Fraction): string {
  const whole = value.n / value.d;
  const n = value.n % value.d;
  if (n === 0n) return `${whole}`;
  const glyph = glyphOfFraction(n, value.d);
  if (glyph !== undefined) return whole === 0n ? glyph : `${whole}${glyph}`;
  return whole === 0n ? `${n}/${value.d}` : `${whole} ${n}/${value.d}`;
}

/**
 * A number for print: as `mixedNumberText` where the fraction is one that cooks use (up to sixteenths), a decimal
 * where it ends within nine places, else the plain fraction. Read back by `readNumber` to the same value.
 */
export function printedNumberText(value: Fraction): string {
  if (value.d <= 8n || value.d === 16n) return mixedNumberText(value);
  for (let places = 1n, scale = 10n; places <= 9n; places += 1n, scale *= 10n) {
    if (scale % value.d !== 0n) continue;
    const digits = `${value.n * (scale / value.d)}`.padStart(Number(places) + 1, '0');
    return `${digits.slice(0, -Number(places))}.${digits.slice(-Number(places))}`;
  }
  return mixedNumberText(value);
}
