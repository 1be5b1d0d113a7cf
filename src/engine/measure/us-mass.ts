import type Fraction from 'fraction.js';
import { fineDecimal } from './fine-decimal.ts';
import { printedNumberText } from './mixed-number.ts';
import { CUP_MARKS, grid, type Ladder, type PrintRule, printable } from './printing-grid.ts';

const OUNCES_IN_POUND = 16n;

const LADDER: Ladder = {
  usual: [grid(1n, CUP_MARKS), grid(1n), grid(4n), grid(OUNCES_IN_POUND)],
  spoons: [],
  fine: [grid('1/8'), grid('1/16')],
  beyond: fineDecimal,
};

/**
 * Prints a weight above zero as USDA recipe cards do: pounds whole, ounces with ¼ ⅓ ½ ⅔ ¾ (the cards have
 * both 7½ oz and 5⅓ oz), finer only where the ounces are few. `ounces` is the exact weight.
 */
export function usMassText(ounces: Fraction, rule: PrintRule): string {
  const shown = printable(ounces, LADDER, rule);
  const pounds = shown.div(OUNCES_IN_POUND).floor();
  const left = shown.sub(pounds.mul(OUNCES_IN_POUND));
  const parts = [
    ...(pounds.n === 0n ? [] : [`${pounds.n} lb`]),
    ...(left.n === 0n ? [] : [`${printedNumberText(left)} oz`]),
  ];
  return parts.join(' ');
}
