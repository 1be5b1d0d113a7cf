import type { Ingredient } from '../../engine/food/ingredient.ts';
import { packKey } from '../../engine/purchase/packs-on.ts';
import type { PricedPack } from '../../engine/purchase/price-list.ts';
import type { ContentText } from '../files/content-texts.ts';
import { readCsv } from '../files/csv-source.ts';
import { finding, type Place } from '../findings/finding.ts';
import { hold, type Ledger, placeIn, restsOn, suggestion } from '../ledger.ts';
import { type ReadPack, withoutOtherCans } from '../link/prices/can-sizes.ts';
import { tellPriceRows } from '../link/prices/price-list-findings.ts';
import { priceRowKey } from '../link/prices/price-row-key.ts';
import { linkPrices } from '../link/prices/prices.ts';
import type { ReadSupplier } from './suppliers.ts';

/** The price lists, read. */
export interface ReadPrices {
  /** Every pack ever listed, by ingredient. */
  readonly prices: Map<string, PricedPack[]>;
  /** Where each of them stands, by `priceRowKey`. */
  readonly rows: ReadonlyMap<string, Place>;
  /** Enters what the rows leave to tell, once the foods that recipes use are known; undefined while they are not. */
  readonly tell: (used: ReadonlySet<string> | undefined) => void;
}

/** Reads every price list. A list whose supplier is unknown or held back is held back whole. */
export function readPriceLists(
  ledger: Ledger,
  files: readonly ContentText[],
  suppliers: ReadonlyMap<string, ReadSupplier>,
  currency: string,
  ingredients: ReadonlyMap<string, Ingredient>,
): ReadPrices {
  const lists: ReturnType<typeof linkPrices>[] = [];
  for (const { id, file, text } of files) {
    const found = suppliers.get(id);
    if (!found) {
      missingSupplier(ledger, id, file, suppliers);
      continue;
    }
    if (text === undefined) {
      hold(ledger, `prices/${id}`, `${file} can’t be read`);
      continue;
    }
    const csv = readCsv(file, text);
    ledger.findings.push(...csv.findings);
    const broken = csv.findings.find((each) => each.severity === 'error');
    if (broken) hold(ledger, `prices/${id}`, `${broken.what} (${file}:${broken.place.line})`);
    lists.push(linkPrices(ledger, id, found.text, csv, file, currency, ingredients));
  }
  const read = lists.flatMap(({ rows }) => rows.flatMap((row) => (row.kind === 'pack' ? [row] : [])));
  const { sound, mixed } = withoutOtherCans(read);
  return {
    prices: groupedBy(sound),
    rows: new Map(sound.map(({ pack, place }) => [priceRowKey(pack), place])),
    tell: (used) => {
      for (const { context, rows } of lists) tellPriceRows(ledger, context, rows, used);
      ledger.findings.push(...mixed);
    },
  };
}

function groupedBy(rows: readonly ReadPack[]): Map<string, PricedPack[]> {
  const prices = new Map<string, PricedPack[]>();
  for (const { pack } of rows) {
    const packs = prices.get(pack.ingredient);
    if (packs) packs.push(pack);
    else prices.set(pack.ingredient, [pack]);
  }
  return prices;
}

/**
 * The ingredients again, without pins to packs that no price list has: the cheapest is bought instead, and the
 * author is warned.
 */
export function settlePins(
  ledger: Ledger,
  ingredients: ReadonlyMap<string, Ingredient>,
  prices: ReadonlyMap<string, readonly PricedPack[]>,
): Map<string, Ingredient> {
  const settled = new Map<string, Ingredient>();
  for (const [id, ingredient] of ingredients) {
    const { pinned } = ingredient;
    const packs = (prices.get(id) ?? []).filter((pack) => pack.supplier === pinned?.supplier);
    const pin = pinned && packs.find((pack) => packKey(pack.packText) === packKey(pinned.pack));
    const place = placeIn(ledger, `ingredient/${id}`, ['buy']);
    if (pinned && !pin && place && !ledger.held.has(`prices/${pinned.supplier}`)) {
      const known = [...new Set(packs.map((pack) => pack.packText))];
      const wayOut =
        known.length === 0 ? 'name a supplier that sells it' : `its packs there are ${known.join(', ')}`;
      const what = `${pinned.supplier} does not list “${pinned.pack}” of ${id}, so the cheapest pack is bought`;
      ledger.findings.push(finding('pinned-pack-unknown', place, what, wayOut));
    }
    settled.set(id, pinned && !pin ? { ...ingredient, pinned: undefined } : ingredient);
  }
  return settled;
}

function missingSupplier(
  ledger: Ledger,
  id: string,
  file: string,
  suppliers: ReadonlyMap<string, unknown>,
): void {
  if (ledger.held.has(`supplier/${id}`) || ledger.unreadable.has('supplier')) {
    hold(ledger, `prices/${id}`, restsOn(ledger, `supplier/${id}`));
    return;
  }
  const near = suggestion(ledger, id, suppliers.keys());
  const wayOut = near ?? 'add the supplier in suppliers.yaml under the id in the file’s name';
  const what = `no supplier is called “${id}”`;
  ledger.findings.push(finding('unknown-id', { file, line: 1, column: 1 }, what, wayOut));
  hold(ledger, `prices/${id}`, what);
}
