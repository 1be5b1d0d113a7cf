import Fraction from 'fraction.js';
import { compareCounts } from './cheapest-cover.ts';
import type { FoodOption } from './food-options.ts';
import type { OrderCounts } from './weigh-order.ts';

/** Part of an order: the covers of some of its foods. */
export interface PartOrder {
  readonly before: PartOrder | undefined;
  readonly option: FoodOption | undefined;
  /** The place of the food that `option` covers. */
  readonly food: number;
  readonly cost: number;
  /** Spent with each watched supplier, at most its minimum. */
  readonly spent: readonly number[];
  readonly packs: number;
  /** What no whole order with this part costs less than, in parts of a step. */
  readonly bound: number;
  /** Worked out when it is asked for, since fractions are slow. */
  left?: Fraction;
}

const NONE = new Fraction(0n);

/** The counts of each food covered so far, at its place. */
export function countsOf(end: PartOrder): OrderCounts {
  const counts: (readonly number[])[] = [];
  for (let part: PartOrder | undefined = end; part?.option; part = part.before)
    counts[part.food] = part.option.counts;
  return counts;
}

/** As orders of the same suppliers are compared, for parts that cover the same foods; fractions only where they decide. */
export function comparePartOrders(a: PartOrder, b: PartOrder): number {
  return (
    a.cost - b.cost ||
    a.packs - b.packs ||
    leftOf(a).compare(leftOf(b)) ||
    compareCounts(countsOf(a).flat(), countsOf(b).flat())
  );
}

/** What is left over as a share of each need, summed. */
function leftOf(part: PartOrder): Fraction {
  part.left ??= part.before && part.option ? leftOf(part.before).add(part.option.left()) : NONE;
  return part.left;
}
