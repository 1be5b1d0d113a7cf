import { packKey } from '../../../engine/purchase/packs-on.ts';
import type { PricedPack } from '../../../engine/purchase/price-list.ts';

/** By what the row of a pack is found again: of two rows with the same pack from the same day the last one counts. */
export function priceRowKey({ supplier, ingredient, packText, validFrom }: PricedPack): string {
  return [supplier, ingredient, packKey(packText), validFrom].join('\n');
}
