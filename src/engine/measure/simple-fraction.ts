import Fraction from 'fraction.js';
import { grid, onGrid, type PrintRule, TOLERANCE, withinTolerance } from './printing-grid.ts';

/**
 * A fraction to print for an exact amount above zero that no usual measure is near: the one with the smallest
 * denominator within 2 % of it (`at-least`: and not below it). Below a fiftieth it is one part in so many.
 */
export function simpleFraction(amount: Fraction, rule: PrintRule): Fraction {
  if (amount.lt(TOLERANCE)) {
    const parts = amount.inverse();
    return (rule === 'at-least' ? parts.floor() : parts.round()).inverse();
  }
  for (let denominator = 2n; ; denominator += 1n) {
    const shown = onGrid(grid(new Fraction(1n, denominator)), amount, rule);
    if (withinTolerance(shown, amount)) return shown;
  }
}
