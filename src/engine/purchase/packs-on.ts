import { compareDays, type Day } from '../calendar/day.ts';
import { tidy } from '../measure/mixed-number.ts';
import type { PricedPack } from './price-list.ts';

/**
 * The packs on offer on a day: of every pack of a supplier and ingredient, distinguished by their text, the newest
 * price that is valid by then (`validFrom` ≤ day). Of two from the same date the one listed last counts. Sorted
 * by supplier, then pack, so that ties between packs always fall the same way.
 */
export function packsOn(packs: readonly PricedPack[], day: Day): readonly PricedPack[] {
  const valid = packs.filter(({ validFrom }) => compareDays(validFrom, day) <= 0);
  const known = offers.get(packs) ?? new Map<number, readonly PricedPack[]>();
  offers.set(packs, known);
  const found = known.get(valid.length) ?? newestOf(valid);
  known.set(valid.length, found);
  return found;
}

/**
 * What was found on offer in a list, by how many of its prices were valid by then: prices only ever join, so that the
 * same number is the same prices. Every plan asks for the same few.
 */
const offers = new WeakMap<readonly PricedPack[], Map<number, readonly PricedPack[]>>();

function newestOf(valid: readonly PricedPack[]): readonly PricedPack[] {
  const newest = new Map<string, PricedPack>();
  for (const pack of valid) {
    const key = [pack.supplier, pack.ingredient, packKey(pack.packText)].join('\n');
    const known = newest.get(key);
    if (!known || compareDays(known.validFrom, pack.validFrom) <= 0) newest.set(key, pack);
  }
  return [...newest.values()].sort(comparePacks);
}

/** The text by which packs of one supplier are distinguished: spaces, case and the signs of `×` and `/` do not matter. */
export function packKey(packText: string): string {
  return tidy(packText)
    .toLowerCase()
    .replace(/ ?[x×*] ?(?=[\d#])/g, ' x ')
    .replace(/ ?\/ ?/g, '/');
}

/** Order of packs by supplier, then by pack text: code units, the same on every machine. */
export function comparePacks(a: PricedPack, b: PricedPack): number {
  const [keyA, keyB] = [orderKey(a), orderKey(b)];
  return keyA < keyB ? -1 : keyA > keyB ? 1 : 0;
}

const orderKeys = new WeakMap<PricedPack, string>();

function orderKey(pack: PricedPack): string {
  const key = orderKeys.get(pack) ?? `${pack.supplier}\n${packKey(pack.packText)}`;
  orderKeys.set(pack, key);
  return key;
}
