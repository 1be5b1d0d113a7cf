import Fraction from 'fraction.js';
import { type Conversion, convert } from '../measure/conversions.ts';
import type { Quantity } from '../measure/quantity.ts';
import { Decimal } from '../money/decimal.ts';
import { cheapestCover } from './cheapest-cover.ts';
import { packKey } from './packs-on.ts';
import { decimalOfFraction, fractionOfPrice } from './price-fraction.ts';
import type { PricedPack } from './price-list.ts';

/** The pack that a caterer insists on. */
export interface PinnedPack {
  readonly supplier: string;
  readonly pack: string;
}

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

const NOTHING = new Fraction(0n);

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
  const pinnedPacks = packs.filter((pack) => isPinned(pack, pinned));
  const sizes = new Map<PricedPack, Fraction>();
  for (const pack of packs) {
    const size = convert(pack.contents, need.unit, conversions)?.amount;
    if (size) sizes.set(pack, size);
  }
  const usable = (pinnedPacks.length > 0 ? pinnedPacks : packs).filter((pack) => sizes.has(pack));
  const counts = usable.map(() => 0);
  let gap = new Decimal(0);
  if (usable.length > 0) {
    const measure = commonMeasure(usable.map((pack) => sizes.get(pack) as Fraction));
    const prices = usable.map(({ price }) => fractionOfPrice(price));
    const step = commonMeasure(prices);
    const cover = cheapestCover(
      need.amount.div(measure).ceil().n,
      usable.map((pack, index) => ({
        size: (sizes.get(pack) as Fraction).div(measure).n,
        cost: (prices[index] as Fraction).div(step).n,
      })),
    );
    counts.splice(0, counts.length, ...cover.counts);
    gap = decimalOfFraction(step.mul(cover.gap));
  }
  const lines = usable.flatMap((pack, index) => {
    const count = counts[index] as number;
    return count > 0 ? [{ pack, count }] : [];
  });
  const bought = lines.reduce(
    (sum, { pack, count }) => sum.add((sizes.get(pack) as Fraction).mul(BigInt(count))),
    NOTHING,
  );
  return {
    lines,
    bought: { amount: bought, unit: need.unit },
    gap,
    unreachable: packs.filter((pack) => !sizes.has(pack)),
    pinnedMissing: pinned !== undefined && pinnedPacks.length === 0,
  };
}

/** True where a pack is the pinned one: the same supplier, the same text but for spaces and case. */
export function isPinned(pack: PricedPack, pinned: PinnedPack | undefined): boolean {
  return (
    pinned !== undefined &&
    pack.supplier === pinned.supplier &&
    packKey(pack.packText) === packKey(pinned.pack)
  );
}

/** The largest amount of which all of these are whole multiples; 1 where all are nothing. */
function commonMeasure(amounts: readonly Fraction[]): Fraction {
  const measure = amounts.reduce((a, b) => a.gcd(b), NOTHING);
  return measure.n === 0n ? new Fraction(1n) : measure;
}
