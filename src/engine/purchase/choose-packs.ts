import Fraction from 'fraction.js';
import type { Conversion } from '../measure/conversions.ts';
import type { Quantity } from '../measure/quantity.ts';
import { Decimal } from '../money/decimal.ts';
import { cheapestCover } from './cheapest-cover.ts';
import { decimalOfFraction } from './price-fraction.ts';
import type { PricedPack } from './price-list.ts';
import { commonMeasure, measuredPacks, type PinnedPack } from './usable-packs.ts';

/** Whole packs that cover a need. */
export interface PackChoice {
  /** Empty where nothing is needed, or where no pack on offer can be measured against the need. */
  readonly lines: readonly { readonly pack: PricedPack; readonly count: number }[];
  /** What the packs hold, in the need's unit, exact; about this much where pieces are of about a weight. */
  readonly bought: Quantity;
  /** The most by which a cheaper mix may undercut this one; zero when proven cheapest. */
  readonly gap: Decimal;
  /** Packs on offer whose unit no conversion of the food reaches. */
  readonly unreachable: readonly PricedPack[];
  /** True where the pinned pack is not among those on offer, so that others were taken. */
  readonly pinnedMissing: boolean;
}

/**
 * The cheapest whole packs of one food, over all suppliers, that hold at least what is needed; a pinned pack
 * that is on offer is taken alone. Ties fall to the fewest packs, then the least left over, then the order of
 * `packs` (that of `packsOn`: supplier, then pack). Amounts and prices are compared exactly, before each line
 * is rounded to the minor unit. A piece of about a weight counts as that weight at its price by weight.
 */
export function choosePacks(
  need: Quantity,
  packs: readonly PricedPack[],
  conversions: readonly Conversion[],
  pinned?: PinnedPack,
): PackChoice {
  const usable = measuredPacks(need.unit, packs, conversions, pinned);
  const counts = usable.packs.map(() => 0);
  let gap = new Decimal(0);
  if (usable.packs.length > 0) {
    const { measure, sizes, prices } = usable;
    const step = commonMeasure(prices);
    const cover = cheapestCover(
      need.amount.div(measure).ceil().n,
      sizes.map((size, index) => ({ size, cost: (prices[index] as Fraction).div(step).n })),
    );
    counts.splice(0, counts.length, ...cover.counts);
    gap = decimalOfFraction(step.mul(cover.gap));
  }
  const bought = usable.packs.reduce(
    (sum, { size }, index) => sum.add(size.mul(BigInt(counts[index] as number))),
    new Fraction(0n),
  );
  return {
    lines: usable.packs.flatMap(({ pack }, index) => {
      const count = counts[index] as number;
      return count > 0 ? [{ pack, count }] : [];
    }),
    bought: { amount: bought, unit: need.unit },
    gap,
    unreachable: usable.unreachable,
    pinnedMissing: usable.pinnedMissing,
  };
}
