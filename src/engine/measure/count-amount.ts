import type Fraction from 'fraction.js';
import { unitWord } from './find-unit.ts';
import { mixedNumberText } from './mixed-number.ts';
import { CUP_MARKS, grid, type Ladder, type PrintRule, printable } from './printing-grid.ts';
import { simpleFraction } from './simple-fraction.ts';

/** Fractions with a denominator up to this are printed as they are: thirds of a roast, eighths of a cake. */
const LARGEST_DENOMINATOR = 8n;

const LADDER: Ladder = {
  usual: [grid(1n)],
  spoons: [],
  fine: [grid(1n, CUP_MARKS), grid('1/8'), grid('1/16')],
  beyond: simpleFraction,
};

/**
 * Prints a count above zero with its word: `10 loaves`, `2½ bunches`, `16⅔ roasts`. Exact up to eighths,
 * else by the rule on the first of whole ones, quarters and thirds, eighths, … that is within 2 %. Things
 * that cannot be split are made whole before printing, by the step of the plan that knows.
 */
export function countText(amount: Fraction, unit: string, rule: PrintRule): string {
  const shown = amount.d <= LARGEST_DENOMINATOR ? amount : printable(amount, LADDER, rule);
  return `${mixedNumberText(shown)} ${unitWord(unit, shown)}`;
}
