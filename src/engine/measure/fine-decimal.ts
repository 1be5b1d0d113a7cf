import Fraction from 'fraction.js';
import { grid, onGrid, type PrintRule, withinTolerance } from './printing-grid.ts';

/**
 * A decimal to print for an exact amount above zero that no usual measure is near: the one with the fewest digits,
 * two or more that count, within 2 % of it (`at-least`: and not below it). A scale shows 0.97 oz; nobody can
 * measure 37/38 oz.
 */
export function fineDecimal(amount: Fraction, rule: PrintRule): Fraction {
  let step = new Fraction(1n);
  while (step.mul(10n).gt(amount)) step = step.div(10n);
  for (;;) {
    const shown = onGrid(grid(step), amount, rule);
    if (withinTolerance(shown, amount)) return shown;
    step = step.div(10n);
  }
}
