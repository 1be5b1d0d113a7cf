import { type Finding, finding } from '../../findings/finding.ts';
import type { PriceRow } from './price-row.ts';

/** A row of a price list that could be read. */
export type ReadPack = Extract<PriceRow, { kind: 'pack' }>;

/**
 * The packs without cans of a second size. One word, can, counts them, and the food's `1 can = 104 oz` is true of one
 * size: a case of No. 300 cans weighed as No. 10 cans would be bought for seven times what it holds. Cans of
 * No. 10 stay where there are any, else those of the number listed first; the others are left out and told.
 */
export function withoutOtherCans(packs: readonly ReadPack[]): {
  readonly sound: readonly ReadPack[];
  readonly mixed: readonly Finding[];
} {
  const kept = new Map<string, ReadPack>();
  for (const each of packs) {
    const known = kept.get(each.pack.ingredient);
    if (each.canNumber && (!known || (each.canNumber === '10' && known.canNumber !== '10')))
      kept.set(each.pack.ingredient, each);
  }
  const other = (each: ReadPack) =>
    each.canNumber !== undefined && kept.get(each.pack.ingredient)?.canNumber !== each.canNumber;
  const mixed = packs.filter(other).map(({ pack, place, canNumber }) => {
    const { canNumber: stays, pack: known } = kept.get(pack.ingredient) as ReadPack;
    const what = `${pack.ingredient} is also sold as “${known.packText}”: cans of No. ${canNumber} and No. ${stays} are different sizes, and “can” can mean only one of them, so this row is left out`;
    return finding(
      'cans-of-two-sizes',
      place,
      what,
      'write what a can of this row holds, such as 24 x 15 oz',
    );
  });
  return { sound: packs.filter((each) => !other(each)), mixed };
}
