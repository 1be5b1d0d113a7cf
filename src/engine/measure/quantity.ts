import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { findUnit, unitWord } from './find-unit.ts';
import { mixedNumberText } from './mixed-number.ts';
import { MOST_DIGITS } from './number-slips.ts';

/** So much of something: an exact amount of one unit. */
export interface Quantity {
  readonly amount: Fraction;
  /** A canonical unit id (`lb`, `fl oz`, `each`) or a count word in the singular (`can`, `loaf`). */
  readonly unit: string;
}

const EXACT_FORM = /^(-?\d{1,1000})(?:\/(\d{1,1000}))? (\D+)$/;

/**
 * Makes a quantity in code. A text amount is a whole number, a fraction or a decimal (`'2'`, `'1/3'`,
 * `'2.5'`), read exactly. Throws on a unit that is not written as its canonical id: a programmer's error.
 */
export function quantity(amount: Fraction | bigint | string, unit: string): Quantity {
  const found = findUnit(unit);
  if (!found.ok || found.value !== unit) throw new Error(`"${unit}" is not the canonical name of a unit`);
  return { amount: new Fraction(amount), unit };
}

/** The quantity times an exact factor; nothing is rounded. */
export function timesQuantity(q: Quantity, factor: Fraction): Quantity {
  return { amount: q.amount.mul(factor), unit: q.unit };
}

/** The exact sum. Throws where the units differ: convert first, so that the way is known. */
export function addQuantities(a: Quantity, b: Quantity): Quantity {
  mustShareUnit(a, b);
  return { amount: a.amount.add(b.amount), unit: a.unit };
}

/** -1, 0 or 1 as `a` is less than, equal to or more than `b`. Throws where the units differ. */
export function compare(a: Quantity, b: Quantity): -1 | 0 | 1 {
  mustShareUnit(a, b);
  const order = a.amount.compare(b.amount);
  return order < 0 ? -1 : order > 0 ? 1 : 0;
}

/** True for nothing of whatever unit. */
export function isZero(q: Quantity): boolean {
  return q.amount.n === 0n;
}

function mustShareUnit(a: Quantity, b: Quantity): void {
  if (a.unit !== b.unit) throw new Error(`can’t add ${exactText(a)} and ${exactText(b)}: different units`);
}

/**
 * The exact value for JSON: `2 lb`, `25/16 gal`, `0 each`. In lowest terms, unit as its canonical id, so
 * equal quantities have equal texts. `parseExactText` reads every such text back; `parseQuantity` reads
 * those above zero. A whole number too long to be handwritten is given its denominator, `…/1`.
 */
export function exactText(q: Quantity): string {
  const { s, n, d } = q.amount;
  const fraction = d !== 1n || `${n}`.length > MOST_DIGITS ? `/${d}` : '';
  return `${s < 0n ? '-' : ''}${n}${fraction} ${q.unit}`;
}

/** Reads what `exactText` wrote, zero and negative values included. Bounded at a thousand digits. */
export function parseExactText(text: string): Parsed<Quantity> {
  const match = EXACT_FORM.exec(text);
  const [, n = '', d = '1', words = ''] = match ?? [];
  if (!match || /^0+$/.test(d)) {
    return notParsed(`"${text.slice(0, 60)}" is not an exact amount`, 'write it as 2 lb or 25/16 gal');
  }
  const unit = findUnit(words);
  return unit.ok ? parsed({ amount: new Fraction(BigInt(n), BigInt(d)), unit: unit.value }) : unit;
}

/**
 * The exact value as a cook writes it: `1½ cups`, `10 loaves`, `2 3/16 lb`, without carrying into other
 * units. `parseQuantity` reads it back to the same value. For amounts above zero.
 */
export function writtenText(q: Quantity): string {
  const text = `${mixedNumberText(q.amount)} ${unitWord(q.unit, q.amount)}`;
  return (text.match(/\d+/g) ?? []).some((digits) => digits.length > MOST_DIGITS) ? exactText(q) : text;
}
