import type Fraction from 'fraction.js';
import { parseQuantity } from '../measure/parse-quantity.ts';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';
import { notParsed, type Parsed, parsed } from '../parsed.ts';

/** A recipe's words with amounts for one batch among them: `fold {40} papers`. A bare number is a count in `each`. */
export type StepText = readonly (string | Quantity)[];

const BRACES = /\{([^{}]*)\}/;
const WAY_OUT =
  'write a number for one batch in the braces, such as “fold {40} papers” or “add {2 cups} of water”';

/**
 * Reads the words of a step or of how to finish a dish. A number in braces, with or without a unit, is for one batch.
 * Refuses a brace that is not closed or not opened, and braces with anything else in them.
 */
export function parseStepText(text: string): Parsed<StepText> {
  const parts: (string | Quantity)[] = [];
  let rest = text;
  for (let found = BRACES.exec(rest); found; found = BRACES.exec(rest)) {
    const [whole, inside = ''] = found;
    const before = rest.slice(0, found.index);
    if (/[{}]/.test(before)) break;
    const amount = parseQuantity(inside);
    if (!amount.ok)
      return notParsed(
        `“${whole.slice(0, 40)}” has no number for one batch in it`,
        `${WAY_OUT}, or leave the braces out`,
      );
    parts.push(before, amount.value);
    rest = rest.slice(found.index + whole.length);
  }
  if (rest.includes('{')) return notParsed(`the brace in “${around(rest, '{')}” is not closed`, WAY_OUT);
  if (rest.includes('}')) return notParsed(`the brace in “${around(rest, '}')}” is not opened`, WAY_OUT);
  return parsed([...parts, rest].filter((part) => part !== ''));
}

function around(text: string, brace: string): string {
  const at = text.indexOf(brace);
  return text.slice(Math.max(0, at - 12), at + 20).trim();
}

/**
 * The words for so many batches: each amount times the batches, exact, and a bare count then up to the next whole one.
 * `printed` writes an amount with a unit. What cannot be read stands as it is written; `check` names it.
 */
export function stepTextFor(text: string, batches: Fraction, printed: (amount: Quantity) => string): string {
  const read = parseStepText(text);
  if (!read.ok) return text;
  return read.value
    .map((part) => {
      if (typeof part === 'string') return part;
      const scaled = timesQuantity(part, batches);
      return part.unit === 'each' ? `${scaled.amount.ceil().n}` : printed(scaled);
    })
    .join('');
}
