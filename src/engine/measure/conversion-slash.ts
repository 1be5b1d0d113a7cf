import Fraction from 'fraction.js';
import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { tidy } from './mixed-number.ts';
import { parseQuantity } from './parse-quantity.ts';
import { type Quantity, timesQuantity, writtenText } from './quantity.ts';
import { unitKind } from './units.ts';
import { isEverydayFraction } from './vulgar-fractions.ts';

/** One side of a conversion whose slash has two readings, each in words that leave no doubt. */
export interface SideReading {
  /** As it is written: `24/12 oz`. */
  readonly written: string;
  /** What it was read as: `24 × 12 oz = 288 oz`. */
  readonly taken: string;
  /** How to write that so that it is read in one way only: `288 oz`. */
  readonly amount: string;
  /** The same for the other reading: `2 oz`. */
  readonly other: string;
}

/** One side of a conversion. */
export interface ConversionSide {
  readonly quantity: Quantity;
  /** Undefined where nobody could read it otherwise. */
  readonly slash: SideReading | undefined;
}

const SLASHED = /^(\d{1,4}) ?\/ ?(\d{1,4}(?:\.\d{1,4})?|\.\d{1,4})(?![\d./]) ?(\S.*)$/u;

/** `6/#10`, `6 x #10 can`, `No. 10 can`: cans by their trade number, with how many there are where it says so. */
const NUMBERED_CANS = /^(?:(\d{1,4}) ?[x×*/–-]? ?)?(?:#|no\.? ?)\d/iu;

/**
 * Reads an amount of a conversion. Cans by their trade number, as packs of a price list name them, are refused: the
 * word can is one size for a food, and a number here would say nothing of which packs it is true of. A slash may stand in a fraction, or between a count and a size as on a price list
 * (`1 case = 24/12 oz`: 24 of 12 oz). It is a fraction only where that is below one and in lowest terms, since nobody
 * writes 24/12 for two. No second reading is handed back for the fractions that kitchens measure by, for `1/20 loaf`
 * (one part of something counted), and where both come to the same amount.
 */
export function readConversionSide(text: string): Parsed<ConversionSide> {
  const cans = NUMBERED_CANS.exec(tidy(text));
  if (cans) {
    return notParsed(
      `“${tidy(text)}” names cans by their trade number, and a conversion is true of any can of the food`,
      `write ${cans[1] ?? '1'} can here; the number goes into the pack in the price list`,
    );
  }
  const found = SLASHED.exec(tidy(text));
  const [, top = '', bottom = '', unit = ''] = found ?? [];
  const one = found ? parseQuantity(`1 ${unit}`) : undefined;
  if (!one?.ok) {
    const whole = parseQuantity(text);
    return whole.ok ? parsed({ quantity: whole.value, slash: undefined }) : whole;
  }
  const [count, size] = [new Fraction(top), new Fraction(bottom)];
  if (size.n === 0n || count.n === 0n) {
    return notParsed(`"${text.trim()}" is not an amount`, 'write both numbers above zero, such as 24/12 oz');
  }
  const fraction = timesQuantity(one.value, count.div(size));
  const counted = timesQuantity(one.value, count.mul(size));
  const isFraction = size.d === 1n && count.n < size.n && fraction.amount.d === size.n;
  const plain =
    isEverydayFraction(count.n, size.n) || (count.n === 1n && unitKind(one.value.unit) === 'count');
  if (isFraction && plain) return parsed({ quantity: fraction, slash: undefined });
  if (fraction.amount.equals(counted.amount)) return parsed({ quantity: counted, slash: undefined });
  const [quantity, other] = isFraction ? [fraction, counted] : [counted, fraction];
  const taken = isFraction
    ? `a fraction of 1 ${unit}`
    : `${top} × ${bottom} ${unit} = ${writtenText(quantity)}`;
  const slash = { written: tidy(text), taken, amount: plainText(quantity), other: plainText(other) };
  return parsed({ quantity, slash });
}

/* Without a slash that would be asked about again: a part of a pound as a decimal, a seventh as what seven of them are. */
function plainText(q: Quantity): string {
  const text = writtenText(q);
  if (!SLASHED.test(text)) return text;
  const decimal = q.amount.toString();
  if (!decimal.includes('(')) return `${decimal} ${q.unit}`;
  return `${writtenText({ ...q, amount: new Fraction(q.amount.n) })}, and ${q.amount.d} times the other side,`;
}
