import Fraction from 'fraction.js';
import type { PerGuest } from '../measure/per-guest.ts';
import { unitKind } from '../measure/units.ts';
import { fractionAbove } from './near-fraction.ts';

/** Steps that a cook writes amounts in; the first that is no more than a tenth of the amount is taken. */
const STEPS = ['100', '50', '25', '10', '5', '1', '1/2', '1/4', '1/8'].map((step) => new Fraction(step));

const TENTH = new Fraction(1n, 10n);

/**
 * A per-guest amount that a cook would write for so much by the head, in the unit of the one that stands: never less,
 * and up by no more than a step. What is counted goes by so many for 10 guests (`9 pieces per 10 guests`), what is
 * shared by the guests that share one (`1 bowl per 22 guests`), what is weighed or measured by a step of at most a
 * tenth (`4½ oz per guest`), for 10 or 100 guests where a guest's share is too small for one. Undefined where that is
 * the amount that stands, or where rounding would turn a smaller amount into a larger one.
 */
export function sensibleAmount(present: PerGuest, target: number): PerGuest | undefined {
  const least = fractionAbove(target);
  if (least.n === 0n) return undefined;
  const written =
    unitKind(present.amount.unit) === 'count' ? counted(present, least) : measured(present, least);
  const before = eachOf(present);
  const after = eachOf(written);
  if (after.equals(before) || (least.lte(before) && after.gt(before))) return undefined;
  return written;
}

/** The exact share of one guest. */
export function eachOf({ amount, guests }: PerGuest): Fraction {
  return amount.amount.div(guests);
}

/** So many for 10 guests, or one for so many guests, whichever is less. */
function counted({ amount: { unit } }: PerGuest, least: Fraction): PerGuest {
  const tens = least.mul(10n).ceil().n;
  const plain = tens % 10n === 0n;
  const forTen = {
    amount: { amount: new Fraction(plain ? tens / 10n : tens), unit },
    guests: plain ? 1n : 10n,
  };
  if (least.gt(1n)) return forTen;
  const shared = { amount: { amount: new Fraction(1n), unit }, guests: least.inverse().floor().n };
  return eachOf(shared).lt(eachOf(forTen)) ? shared : forTen;
}

function measured({ amount }: PerGuest, least: Fraction): PerGuest {
  for (const guests of [1n, 10n, 100n]) {
    const all = least.mul(guests);
    const step = STEPS.find((each) => each.lte(all.mul(TENTH)));
    if (step) return { amount: { amount: all.div(step).ceil().mul(step), unit: amount.unit }, guests };
  }
  return { amount: { amount: least, unit: amount.unit }, guests: 1n };
}
