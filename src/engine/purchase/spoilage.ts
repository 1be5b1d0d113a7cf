import type { Ingredient } from '../food/ingredient.ts';

/**
 * Foods that keep no longer than this, as bought, are taken to spoil before a later event uses what is left of
 * them; what keeps longer goes back to the shelf. A month between two uses of the same food: common practice, no
 * source.
 */
export const SPOILS_WITHIN_DAYS = 30;

/**
 * Chilled foods, and those that do not say how they are kept, are taken to keep from Thursday's delivery to a
 * Sunday's event where it is not stated how long they do: common practice, no source.
 */
const DEFAULT_KEEPS_DAYS = 4;

/** Whole days a food keeps as bought; undefined for dry and frozen foods that do not say. */
export function keepsFor({
  keepsDays,
  storage,
}: Pick<Ingredient, 'keepsDays' | 'storage'>): number | undefined {
  const lasting = storage === 'dry' || storage === 'frozen';
  return keepsDays ?? (lasting ? undefined : DEFAULT_KEEPS_DAYS);
}

/** True where what is left of a food is lost. */
export function spoils(food: Pick<Ingredient, 'keepsDays' | 'storage'>): boolean {
  const days = keepsFor(food);
  return days !== undefined && days <= SPOILS_WITHIN_DAYS;
}

/** A pack as far as its left-over goes. */
interface SizedPack {
  readonly supplier: string;
  readonly size: bigint;
}

/**
 * The most that may be left over of a food that spoils where a pack of each kind is bought, in the order given.
 *
 * The price of a whole pack is paid whether it is eaten or thrown away, so that least cost alone rarely wastes;
 * but a large pack may cost less than a small one that suffices, and an order short of a minimum could be filled
 * up with food that nobody will eat. So the rule is: no pack may be left off, and none exchanged for the next
 * smaller one of the same supplier, with the need still covered. What is left is then less than what a pack
 * holds above the next smaller one (above nothing, for the smallest). It is a rule for every pack bought, not
 * the least left over there could be: nobody buys twelve 1-lb bags to save half a pound of a 10-lb case.
 */
export function roomAboveNeed(packs: readonly SizedPack[]): bigint[] {
  return packs.map(({ supplier, size }) => {
    let smaller = 0n;
    for (const other of packs) {
      if (other.supplier === supplier && other.size < size && other.size > smaller) smaller = other.size;
    }
    return size - smaller - 1n;
  });
}
