import { notParsed, type Parsed, parsed } from '../parsed.ts';
import { findUnit } from './find-unit.ts';
import { readNumber, tidy } from './mixed-number.ts';
import { parseExactText, type Quantity } from './quantity.ts';
import { definedFactor, unitKind } from './units.ts';
import { FRACTION_GLYPHS } from './vulgar-fractions.ts';

/** The longest text read as an amount. */
export const LONGEST_AMOUNT = 80;

/** The longest exact fraction read, which only computing writes. */
const LONGEST_FRACTION = 2100;

const UP_TO_NUMBER = new RegExp(`^[^\\d${FRACTION_GLYPHS}]*`, 'u');
const LONG_FRACTION = /^(?=.*\d{13})\d+\/\d+ \D+$/;
const RANGE = /^(?:[-–—]|to) ?$/u;

/**
 * Reads an amount as a cook writes it: `1 1/2 cups`, `1½ cups`, `½ lb`, `2.5 kg`, `3 each`, `12` (each),
 * `10 loaves`, and several parts of one kind from the larger unit to the smaller, `14 lb 10 oz`, which are
 * summed exactly into the first unit. Also reads `exactText`. Refuses zero, negatives, ranges, separators
 * and anything longer than 80 characters (an exact fraction that Salver wrote may be longer).
 */
export function parseQuantity(text: string): Parsed<Quantity> {
  if (text.length <= LONGEST_FRACTION && LONG_FRACTION.test(text))
    return aboveZero(text, parseExactText(text));
  if (text.length > LONGEST_AMOUNT) {
    return notParsed(
      `"${text.slice(0, 30)}…" is too long for an amount`,
      'write a number and a unit: 2 cups',
    );
  }
  let rest = tidy(text);
  if (rest === '') return notParsed('the amount is empty', 'write a number and a unit, such as 2 cups');
  const parts: Quantity[] = [];
  while (rest !== '') {
    const part = readPart(rest, parts.length === 0);
    if (!part.ok) return part;
    parts.push(part.value.quantity);
    rest = part.value.rest;
  }
  return aboveZero(text, sumOfParts(tidy(text), parts));
}

function readPart(text: string, alone: boolean): Parsed<{ quantity: Quantity; rest: string }> {
  const number = readNumber(text);
  if (!number.ok) return number;
  const words = UP_TO_NUMBER.exec(number.value.rest)![0];
  const rest = number.value.rest.slice(words.length);
  if (RANGE.test(words)) {
    return notParsed(`"${text}" is a range`, 'write one amount, the one to buy and cook');
  }
  if (words === '' && (rest !== '' || !alone)) {
    return notParsed(
      `"${text}" has a number without a unit`,
      'write a unit after each number, such as 2 lb 4 oz',
    );
  }
  const unit = words === '' ? parsed('each') : findUnit(words.trim());
  return unit.ok ? parsed({ quantity: { amount: number.value.value, unit: unit.value }, rest }) : unit;
}

function sumOfParts(text: string, parts: readonly Quantity[]): Parsed<Quantity> {
  const [first, ...others] = parts;
  let { amount } = first!;
  let before = first!.unit;
  for (const part of others) {
    const toFirst = definedFactor(part.unit, first!.unit);
    if (toFirst === undefined) {
      return notParsed(
        `"${text}" adds ${kindOf(part.unit)} to ${kindOf(first!.unit)}`,
        'write it in one kind of unit',
      );
    }
    if (definedFactor(part.unit, before)!.gte(1n)) {
      return notParsed(
        `"${text}" has ${part.unit} after ${before}`,
        'write each unit once, largest first, such as 2 lb 4 oz',
      );
    }
    amount = amount.add(part.amount.mul(toFirst));
    before = part.unit;
  }
  return parsed({ amount, unit: first!.unit });
}

function kindOf(unit: string): string {
  const kind = unitKind(unit);
  return kind === 'count' ? `a count (${unit})` : `a ${kind === 'mass' ? 'weight' : 'volume'} (${unit})`;
}

function aboveZero(text: string, read: Parsed<Quantity>): Parsed<Quantity> {
  if (!read.ok || read.value.amount.n !== 0n) return read;
  return notParsed(`"${text.trim()}" is zero`, 'write an amount above zero, or leave the line out');
}
