import Fraction from 'fraction.js';
import { grid, type Ladder, onGrid, type PrintRule, printable, withinTolerance } from './printing-grid.ts';

/** From this many of the small unit on, the large one is printed. */
const THOUSAND = 1000n;

const SMALL: Ladder = { usual: [grid(1n)], spoons: [], fine: [], beyond: decimals };
/** Two decimals of the large unit; a step of ten is at most 1 % of it. */
const LARGE: Ladder = { usual: [grid(10n)], spoons: [], fine: [], beyond: decimals };

/** The amount with the fewest decimals that bring it within the tolerance. */
function decimals(amount: Fraction, rule: PrintRule): Fraction {
  for (let power = 10n; ; power *= 10n) {
    const shown = onGrid(grid(new Fraction(1n, power)), amount, rule);
    if (withinTolerance(shown, amount)) return shown;
  }
}

/**
 * Prints a metric weight or volume above zero: below a thousand in whole grams or millilitres, with decimals
 * only where a whole one would be off by more than 2 %; from a thousand on in kilograms or litres with up to
 * two decimals. `amount` is exact, in grams or millilitres.
 */
export function metricText(amount: Fraction, kind: 'mass' | 'volume', rule: PrintRule): string {
  const shown = printable(amount, amount.lt(THOUSAND) ? SMALL : LARGE, rule);
  const [small, large] = kind === 'mass' ? ['g', 'kg'] : ['ml', 'l'];
  return shown.lt(THOUSAND)
    ? `${decimalText(shown)} ${small}`
    : `${decimalText(shown.div(THOUSAND))} ${large}`;
}

/** A fraction that ends in decimals, with as many as it has. */
function decimalText(value: Fraction): string {
  let digits = 0;
  let power = 1n;
  for (; power % value.d !== 0n; digits += 1) power *= 10n;
  const text = `${(value.n * power) / value.d}`.padStart(digits + 1, '0');
  return digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`;
}
