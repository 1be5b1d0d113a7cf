import Fraction from 'fraction.js';
import type { PerGuest } from '../measure/per-guest.ts';
import { unitKind } from '../measure/units.ts';
import { fractionAbove } from './near-fraction.ts';

/** Steps that a cook writes amounts in, from the coarsest. */
const STEPS = ['100', '50', '25', '10', '5', '1', '1/2', '1/4', '1/8'].map((step) => new Fraction(step));

/** So many guests share a counted amount that a cook writes: the first are plainest. */
const TABLES = [10n, 20n, 25n, 50n, 100n];

const TENTH = new Fraction(1n, 10n);

/**
 * A per-guest amount that a cook would write for so much per guest, in the unit of the one that stands: never less, and
 * up by no more than a step. What is counted goes by so many for 10 guests (`9 pieces per 10 guests`), what is shared by
 * the guests that share one (`1 bowl per 22 guests`), what is weighed or measured by a step of at most a tenth (`4½ oz
 * per guest`), for 10 or 100 guests where a guest's share is too small for one. `most` is where what was learned ends:
 * where rounding would pass it, a finer step is taken, 20 to 100 guests for what is counted. Undefined where that is the
 * amount that stands, where rounding would turn a smaller amount into a larger one, and where no step stays below `most`.
 */
export function sensibleAmount(present: PerGuest, target: number, most?: number): PerGuest | undefined {
  const least = fractionAbove(target);
  if (least.n === 0n) return undefined;
  const ways = unitKind(present.amount.unit) === 'count' ? counted(present, least) : measured(present, least);
  // A target beyond that end is on its way there from the amount that stands, which bounds it below.
  const end = most === undefined || most < target ? undefined : fractionAbove(most);
  const written = ways.find((way) => end === undefined || eachOf(way).lte(end));
  if (!written) return undefined;
  const before = eachOf(present);
  const after = eachOf(written);
  if (after.equals(before) || (least.lte(before) && after.gt(before))) return undefined;
  return written;
}

/** The exact share of one guest. */
export function eachOf({ amount, guests }: PerGuest): Fraction {
  return amount.amount.div(guests);
}

/** So many for 10 guests, or one for so many guests where that is less; then for 20 guests and more. */
function counted({ amount: { unit } }: PerGuest, least: Fraction): PerGuest[] {
  const forTables = TABLES.map((guests): PerGuest => {
    const pieces = least.mul(guests).ceil().n;
    return pieces % guests === 0n
      ? { amount: { amount: new Fraction(pieces / guests), unit }, guests: 1n }
      : { amount: { amount: new Fraction(pieces), unit }, guests };
  });
  const [forTen] = forTables;
  if (!forTen || least.gt(1n)) return forTables;
  const shared = { amount: { amount: new Fraction(1n), unit }, guests: least.inverse().floor().n };
  return eachOf(shared).lt(eachOf(forTen)) ? [shared, ...forTables] : [forTen, shared, ...forTables];
}

/** By the coarsest step of at most a tenth, then by finer ones, for the fewest guests that have one. */
function measured({ amount }: PerGuest, least: Fraction): PerGuest[] {
  const ways = [1n, 10n, 100n].flatMap((guests): PerGuest[] => {
    const all = least.mul(guests);
    return STEPS.filter((each) => each.lte(all.mul(TENTH))).map((step) => ({
      amount: { amount: all.div(step).ceil().mul(step), unit: amount.unit },
      guests,
    }));
  });
  return ways.length > 0 ? ways : [{ amount: { amount: least, unit: amount.unit }, guests: 1n }];
}
