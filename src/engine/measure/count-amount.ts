import type Fraction from 'fraction.js';
import { unitAfter } from './find-unit.ts';
import { fineDecimal } from './fine-decimal.ts';
import { printedNumberText } from './mixed-number.ts';
import { CUP_MARKS, grid, type Ladder, type PrintRule, printable } from './printing-grid.ts';

/** Fractions that people cut things into are printed as they are: thirds of a roast, eighths of a cake. */
const CUT_INTO: readonly bigint[] = [1n, 2n, 3n, 4n, 5n, 6n, 8n];

const LADDER: Ladder = {
  usual: [grid(1n)],
  spoons: [],
  fine: [grid(1n, CUP_MARKS), grid('1/8'), grid('1/16')],
  beyond: fineDecimal,
};

/**
 * Prints a count above zero with its word: `10 loaves`, `2½ bunches`, `16⅔ roasts`. Exact up to eighths,
 * else by the rule on the first of whole ones, quarters and thirds, eighths, … that is within 2 %. Things
 * that cannot be split are made whole before printing, by the step of the plan that knows.
 */
export function countText(amount: Fraction, unit: string, rule: PrintRule): string {
  const shown = CUT_INTO.includes(amount.d) ? amount : printable(amount, LADDER, rule);
  const number = printedNumberText(shown);
  return `${number} ${unitAfter(number, unit, shown)}`;
}
