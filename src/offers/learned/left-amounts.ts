import Fraction from 'fraction.js';
import { parseExactText, type Quantity } from '../../engine/measure/quantity.ts';
import type { LeftDish } from '../../schema/event-fact.ts';

/** A dish's leftovers in exact values, all in the unit that it went out in. */
export interface LeftAmounts {
  /** Guests it was planned for, and those who came, counted alike. */
  readonly counted: Fraction;
  readonly came: Fraction;
  readonly planned: Quantity;
  readonly carried: Quantity;
  readonly back: Quantity;
  /** What went out less what came back. */
  readonly eaten: Quantity;
}

/** The amounts of a checked record. */
export function leftAmounts(dish: LeftDish): LeftAmounts {
  const carried = amountIn(dish.carried);
  const back = amountIn(dish.back);
  return {
    counted: new Fraction(dish.counted),
    came: new Fraction(dish.came),
    planned: amountIn(dish.planned),
    carried,
    back,
    eaten: { amount: carried.amount.sub(back.amount), unit: carried.unit },
  };
}

function amountIn(text: string): Quantity {
  const read = parseExactText(text);
  if (!read.ok) throw new Error(`a checked record holds an amount that is none: ${read.what}`);
  return read.value;
}
