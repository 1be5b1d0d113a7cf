import Fraction from 'fraction.js';
import { type Conversion, convert } from '../measure/conversions.ts';
import { packKey } from './packs-on.ts';
import { fractionOfPrice } from './price-fraction.ts';
import type { PricedPack } from './price-list.ts';

/** The pack that a caterer insists on. */
export interface PinnedPack {
  readonly supplier: string;
  readonly pack: string;
}

/** The packs among those on offer that a need may be covered with. */
export interface UsablePacks {
  /** With what one pack holds, in the unit asked for, exact. In the order given. */
  readonly packs: readonly { readonly pack: PricedPack; readonly size: Fraction }[];
  /** Packs on offer whose unit no conversion of the food reaches. */
  readonly unreachable: readonly PricedPack[];
  /** True where the pinned pack is not among those on offer, so that others may be taken. */
  readonly pinnedMissing: boolean;
}

/** Measures packs on offer in a unit. A pinned pack that is on offer is usable alone. */
export function usablePacks(
  unit: string,
  packs: readonly PricedPack[],
  conversions: readonly Conversion[],
  pinned: PinnedPack | undefined,
): UsablePacks {
  const pinnedPacks = packs.filter((pack) => isPinned(pack, pinned));
  const sizes = new Map<PricedPack, Fraction>();
  for (const pack of packs) {
    const size = convert(pack.contents, unit, conversions)?.amount;
    if (size) sizes.set(pack, size);
  }
  const wanted = pinnedPacks.length > 0 ? pinnedPacks : packs;
  return {
    packs: wanted.flatMap((pack) => {
      const size = sizes.get(pack);
      return size ? [{ pack, size }] : [];
    }),
    unreachable: packs.filter((pack) => !sizes.has(pack)),
    pinnedMissing: pinned !== undefined && pinnedPacks.length === 0,
  };
}

/** Packs that a need may be covered with, in whole numbers. */
export interface MeasuredPacks extends UsablePacks {
  /** The largest amount that all of them hold whole multiples of, in the unit asked for. */
  readonly measure: Fraction;
  /** What each holds, in measures. */
  readonly sizes: readonly bigint[];
  /** What each costs, exact. */
  readonly prices: readonly Fraction[];
}

/**
 * The same with their common measure. Kept with the packs for who asks again for the same, since every plan does: what
 * it is made from never changes.
 */
export function measuredPacks(
  unit: string,
  packs: readonly PricedPack[],
  conversions: readonly Conversion[],
  pinned: PinnedPack | undefined,
): MeasuredPacks {
  const kept = measured.get(packs);
  if (kept?.unit === unit && kept.conversions === conversions && kept.pinned === pinned) return kept.packs;
  const usable = usablePacks(unit, packs, conversions, pinned);
  const measure = commonMeasure(usable.packs.map(({ size }) => size));
  const made = {
    ...usable,
    measure,
    sizes: usable.packs.map(({ size }) => size.div(measure).n),
    prices: usable.packs.map(({ pack }) => fractionOfPrice(pack.price)),
  };
  measured.set(packs, { unit, conversions, pinned, packs: made });
  return made;
}

const measured = new WeakMap<
  readonly PricedPack[],
  {
    readonly unit: string;
    readonly conversions: readonly Conversion[];
    readonly pinned: PinnedPack | undefined;
    readonly packs: MeasuredPacks;
  }
>();

/** True where a pack is the pinned one: the same supplier, the same text but for spaces and case. */
export function isPinned(pack: PricedPack, pinned: PinnedPack | undefined): boolean {
  return (
    pinned !== undefined &&
    pack.supplier === pinned.supplier &&
    packKey(pack.packText) === packKey(pinned.pack)
  );
}

/** The largest amount of which all of these are whole multiples; 1 where all are nothing. */
export function commonMeasure(amounts: readonly Fraction[]): Fraction {
  const measure = amounts.reduce((a, b) => a.gcd(b), new Fraction(0n));
  return measure.n === 0n ? new Fraction(1n) : measure;
}
