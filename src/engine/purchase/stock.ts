import Fraction from 'fraction.js';
import type { Day } from '../calendar/day.ts';
import { type Conversion, convert } from '../measure/conversions.ts';
import type { Quantity } from '../measure/quantity.ts';

/** So much of a food in the store-room or cold room. */
export interface StockLot {
  readonly ingredient: string;
  readonly amount: Quantity;
  /** The last day it may be used; undefined where none is written. */
  readonly useBy: Day | undefined;
}

/** What one use needs of a food, and the last day it is used there. */
export interface StockUse {
  readonly amount: Fraction;
  readonly on: Day;
}

/** What was taken from stock, and what is left there. */
export interface Drawn {
  /** In the unit asked for, exact. */
  readonly taken: Fraction;
  readonly rest: readonly StockLot[];
  /** Lots that no conversion measures in that unit; they are among the rest. */
  readonly unmeasured: readonly StockLot[];
  /** What could not be taken since it must be used before the food is, in the unit asked for. */
  readonly tooOld: Fraction;
}

/**
 * Takes lots of one food for its uses, never past a lot's use-by day: a lot serves the uses up to and on that day.
 * The lot that must go first is taken first, for the earliest use; since a lot that keeps longer serves every use
 * that one which keeps shorter does, no other way takes more.
 */
export function drawStock(
  unit: string,
  uses: readonly StockUse[],
  lots: readonly StockLot[],
  conversions: readonly Conversion[],
): Drawn {
  const open = uses.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0)).map((use) => ({ ...use }));
  const rest: StockLot[] = [];
  const unmeasured: StockLot[] = [];
  let taken = new Fraction(0n);
  let spare = new Fraction(0n);
  for (const lot of lots.toSorted(byUseBy)) {
    const held = convert(lot.amount, unit, conversions)?.amount;
    if (!held || held.n === 0n) {
      if (!held) unmeasured.push(lot);
      rest.push(lot);
      continue;
    }
    let left = held;
    for (const use of open) {
      if (lot.useBy !== undefined && use.on > lot.useBy) break;
      const part = left.lt(use.amount) ? left : use.amount;
      use.amount = use.amount.sub(part);
      left = left.sub(part);
      taken = taken.add(part);
    }
    spare = spare.add(left);
    const amount = { amount: lot.amount.amount.mul(left).div(held), unit: lot.amount.unit };
    if (left.n > 0n) rest.push({ ...lot, amount });
  }
  const missing = open.reduce((sum, { amount }) => sum.add(amount), new Fraction(0n));
  return { taken, rest, unmeasured, tooOld: missing.lt(spare) ? missing : spare };
}

function byUseBy(a: StockLot, b: StockLot): number {
  const [one, other] = [a.useBy ?? '9999', b.useBy ?? '9999'];
  return one < other ? -1 : one > other ? 1 : 0;
}
