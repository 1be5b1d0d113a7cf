import { parseDay } from '../../../engine/calendar/day.ts';
import type { Ingredient } from '../../../engine/food/ingredient.ts';
import type { Parsed } from '../../../engine/parsed.ts';
import { parsePackPrice, priceOfPack } from '../../../engine/purchase/pack-price.ts';
import type { SlashChoice } from '../../../engine/purchase/pack-slash.ts';
import { parsePack } from '../../../engine/purchase/parse-pack.ts';
import type { PricedPack } from '../../../engine/purchase/price-list.ts';
import { PRICE_COLUMNS, type PriceColumn, priceRowSchema } from '../../../schema/price-list.ts';
import type { SupplierText } from '../../../schema/supplier.ts';
import type { CsvRow } from '../../files/csv-source.ts';
import type { Place } from '../../findings/finding.ts';

/** What one price list is read with. */
export interface PriceListContext {
  readonly supplier: string;
  readonly text: SupplierText;
  readonly currency: string;
  readonly ingredients: ReadonlyMap<string, Ingredient>;
  /** The supplier's own name for each column, its names for foods by lower case. */
  readonly header: Readonly<Record<PriceColumn, string>>;
  readonly names: ReadonlyMap<string, string>;
}

/** A field of a row that cannot be read. */
export interface UnreadField {
  readonly column: PriceColumn;
  readonly place: Place;
  readonly what: string;
  readonly wayOut: string;
}

/** What a row comes to. */
export type PriceRow =
  | {
      readonly kind: 'pack';
      readonly place: Place;
      readonly pack: PricedPack;
      readonly canNumber: string | undefined;
      readonly slash: SlashChoice | undefined;
    }
  /** `ingredient`: the food it is of; undefined where the row names none. */
  | {
      readonly kind: 'unread';
      readonly ingredient: string | undefined;
      readonly fields: readonly UnreadField[];
    }
  | { readonly kind: 'unknown food'; readonly place: Place; readonly name: string; readonly id: string };

/** Reads one row. A food that nobody knows is told before anything else of the row is looked at. */
export function linkPriceRow(context: PriceListContext, row: CsvRow): PriceRow {
  const { header, supplier, text, currency, ingredients, names } = context;
  const field = (column: PriceColumn) => row.get(header[column]);
  const place = (column: PriceColumn) => row.placeOf(header[column]);
  const name = field('ingredient');
  const id = names.get(name.toLowerCase()) ?? name.toLowerCase();
  if (name !== '' && name.length <= 300 && !ingredients.has(id))
    return { kind: 'unknown food', place: place('ingredient'), name, id };
  const ingredient = ingredients.has(id) ? id : undefined;
  const form = priceRowSchema.safeParse(Object.fromEntries(PRICE_COLUMNS.map((each) => [each, field(each)])));
  if (!form.success) {
    const column = form.error.issues[0]?.path[0] as PriceColumn;
    return { kind: 'unread', ingredient, fields: [misshapen(column, field(column), place(column))] };
  }
  const fields: UnreadField[] = [];
  const understand = <T>(column: PriceColumn, read: Parsed<T>): T | undefined => {
    if (read.ok) return read.value;
    fields.push({ column, place: place(column), what: read.what, wayOut: read.wayOut });
    return undefined;
  };
  const pack = understand('pack', parsePack(field('pack'), text['slash in packs']));
  const price = understand('price', parsePackPrice(field('price'), currency));
  const validFrom = understand('valid from', parseDay(field('valid from')));
  const cost = pack && price && understand('price', priceOfPack(pack, price));
  if (!pack || !cost || validFrom === undefined || ingredient === undefined)
    return { kind: 'unread', ingredient, fields };
  return {
    kind: 'pack',
    place: place('pack'),
    canNumber: pack.canNumber,
    slash: pack.slash,
    pack: {
      supplier,
      ingredient,
      packText: field('pack'),
      contents: pack.contents,
      aboutWeight: pack.aboutWeight,
      price: cost,
      itemNumber: field('item number'),
      validFrom,
    },
  };
}

/** A field that is empty where it must not be, or far too long; the schema says what belongs there. */
function misshapen(column: PriceColumn, text: string, place: Place): UnreadField {
  const what = text === '' ? `the row has no ${column}` : `the ${column} in this row is too long`;
  return { column, place, what, wayOut: `write ${priceRowSchema.shape[column].description}` };
}
