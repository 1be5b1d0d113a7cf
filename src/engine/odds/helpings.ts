import Fraction from 'fraction.js';
import { type Quantity, timesQuantity } from '../measure/quantity.ts';

/** So many helpings as an amount, exact. */
export function amountOfHelpings(helping: Quantity, helpings: number): Quantity {
  return timesQuantity(helping, new Fraction(BigInt(helpings)));
}

/** Whole helpings in an amount of the helping's unit. */
export function helpingsIn(amount: Quantity, helping: Quantity): number {
  return Number(amount.amount.div(helping.amount).floor().n);
}
