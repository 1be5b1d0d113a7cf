import type Fraction from 'fraction.js';
import type { PerGuest } from '../measure/per-guest.ts';
import type { Counts } from '../quote/counts.ts';

/** What one adult and one child take of something over the whole event, in one unit; exact, zero or above. */
export interface DrinkPortion {
  readonly unit: string;
  readonly adult: Fraction;
  readonly child: Fraction;
  /** True: other traders and the crew take as much of it as an adult, where they are counted. */
  readonly forWorkers: boolean;
}

/** A portion as menus have it: the amount for one guest, and which guests count as how many of them. */
export interface CountedPortion {
  readonly perGuest: PerGuest;
  readonly counts: Counts;
}

/** Counts take weights with up to four decimals. */
const FINEST = 10_000n;
const MOST_WEIGHT = 2n;
const LONGEST_PART = 99n;

/**
 * A portion as menus have it; a child counts as its share of an adult, or, of what children take more than twice as much of,
 * an adult as its share of a child. Exact where that share is a fraction of up to two digits above and below the line, else
 * up to the next ten-thousandth, so that nobody goes short. Only groups in `counted` are counted. Undefined where nobody
 * takes any.
 */
export function countedPortion(
  { unit, adult, child, forWorkers }: DrinkPortion,
  counted: Counts,
): CountedPortion | undefined {
  const adults = counted.adults !== undefined && adult.n > 0n;
  const children = counted.children !== undefined && child.n > 0n;
  if (!adults && !children) return undefined;
  const byChild = !adults || (children && child.gt(adult.mul(MOST_WEIGHT)));
  const one = byChild ? child : adult;
  const adultWeight = weightText(adult.div(one));
  return {
    perGuest: { amount: { amount: one, unit }, guests: 1n },
    counts: {
      ...(adults && { adults: adultWeight }),
      ...(children && { children: weightText(child.div(one)) }),
      ...(adults && forWorkers && counted.vendors !== undefined && { vendors: adultWeight }),
      ...(adults && forWorkers && counted.staff !== undefined && { staff: adultWeight }),
    },
  };
}

function weightText(weight: Fraction): string {
  if (weight.d <= LONGEST_PART && weight.lt(1n)) return `${weight.n}/${weight.d}`;
  return weight.mul(FINEST).ceil().div(FINEST).toString(4);
}
