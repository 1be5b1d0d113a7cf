import { parseDay } from '../engine/calendar/day.ts';
import type { Ingredient } from '../engine/food/ingredient.ts';
import type { Parsed } from '../engine/parsed.ts';
import { parsePackPrice, priceOfPack } from '../engine/purchase/pack-price.ts';
import { parsePack } from '../engine/purchase/parse-pack.ts';
import type { PricedPack } from '../engine/purchase/price-list.ts';
import { PRICE_COLUMNS, type PriceColumn, priceRowSchema } from '../schema/price-list.ts';
import type { SupplierText } from '../schema/supplier.ts';
import type { CsvRow, CsvSource } from './csv-source.ts';
import { finding, type Place } from './finding.ts';
import { hold, type Ledger, suggestion } from './ledger.ts';

/** What one price list is read with. */
interface PriceContext {
  readonly ledger: Ledger;
  readonly supplier: string;
  readonly text: SupplierText;
  readonly currency: string;
  readonly ingredients: ReadonlyMap<string, Ingredient>;
  /** The supplier's own name for each column, its names for foods by lower case. */
  readonly header: Readonly<Record<PriceColumn, string>>;
  readonly names: ReadonlyMap<string, string>;
}

/**
 * The packs of one supplier's price list. A row that cannot be read, or is of a food nobody knows, is left out
 * with its finding; the others count.
 */
export function linkPrices(
  ledger: Ledger,
  supplier: string,
  text: SupplierText,
  csv: Pick<CsvSource, 'headers' | 'rows'>,
  file: string,
  currency: string,
  ingredients: ReadonlyMap<string, Ingredient>,
): PricedPack[] {
  const header = columnNames(text);
  if (lacksColumn(ledger, csv.headers, header, file)) {
    hold(ledger, `prices/${supplier}`, `${file} lacks a column`);
    return [];
  }
  if (!text.columns) strangeColumns(ledger, csv.headers, file);
  const names = new Map(Object.entries(text.names ?? {}).map(([name, id]) => [name.toLowerCase(), id]));
  const context = {
    ledger,
    supplier,
    text,
    currency,
    ingredients,
    header,
    names,
  };
  return csv.rows.flatMap((row) => {
    const pack = linkRow(context, row);
    return pack ? [pack] : [];
  });
}

function columnNames(text: SupplierText): Record<PriceColumn, string> {
  return Object.fromEntries(
    PRICE_COLUMNS.map((column) => [column, text.columns?.[column] ?? column]),
  ) as Record<PriceColumn, string>;
}

function lacksColumn(
  ledger: Ledger,
  headers: readonly string[],
  header: PriceContext['header'],
  file: string,
): boolean {
  const known = new Set(headers.map((name) => name.toLowerCase()));
  const missing = PRICE_COLUMNS.filter(
    (each) => each !== 'item number' && !known.has(header[each].toLowerCase()),
  );
  // Without any column the file's own reading has said what is wrong.
  if (headers.length === 0) return true;
  for (const column of missing) {
    const wayOut = `name it in the first line, or say in suppliers.yaml under “columns” what the list calls “${column}”`;
    const what = `the price list has no column “${header[column]}”`;
    ledger.findings.push(finding('missing-column', { file, line: 1, column: 1 }, what, wayOut));
  }
  return missing.length > 0;
}

/** A list in Salver's own words has no other columns; a supplier's own list has as many as it likes. */
function strangeColumns(ledger: Ledger, headers: readonly string[], file: string): void {
  for (const [index, name] of headers.entries()) {
    if (PRICE_COLUMNS.some((known) => known === name.toLowerCase())) continue;
    const near = suggestion(ledger, name.toLowerCase(), PRICE_COLUMNS);
    const place = { file, line: 1, column: index + 1 };
    const what = `the price list has a column “${name}” that is not read`;
    ledger.findings.push(
      finding('unknown-column', place, what, near ?? `the columns are ${PRICE_COLUMNS.join(', ')}`),
    );
  }
}

function linkRow(context: PriceContext, row: CsvRow): PricedPack | undefined {
  const { ledger, supplier, currency, header } = context;
  const field = (column: PriceColumn) => row.get(header[column]);
  const place = (column: PriceColumn) => row.placeOf(header[column]);
  const form = priceRowSchema.safeParse(Object.fromEntries(PRICE_COLUMNS.map((each) => [each, field(each)])));
  if (!form.success) {
    misshapen(context, row, form.error.issues[0]?.path[0] as PriceColumn);
    return undefined;
  }
  const ingredient = ingredientOf(context, row, field('ingredient'), place('ingredient'));
  const pack = understand(ledger, place('pack'), parsePack(field('pack')));
  const price = understand(ledger, place('price'), parsePackPrice(field('price'), currency));
  const validFrom = understand(ledger, place('valid from'), parseDay(field('valid from')));
  const cost = pack && price && understand(ledger, place('price'), priceOfPack(pack, price));
  if (!pack || !cost || validFrom === undefined) unreadRow(context, row, field('ingredient'));
  if (ingredient === undefined || !pack || !cost || validFrom === undefined) return undefined;
  return {
    supplier,
    ingredient,
    packText: field('pack'),
    contents: pack.contents,
    aboutWeight: pack.aboutWeight,
    price: cost,
    itemNumber: field('item number'),
    validFrom,
  };
}

/** A field that is empty where it must not be, or far too long; the schema says what belongs there. */
function misshapen(context: PriceContext, row: CsvRow, column: PriceColumn): void {
  const { ledger, header } = context;
  const text = row.get(header[column]);
  const what = text === '' ? `the row has no ${column}` : `the row’s ${column} is too long`;
  const wayOut = `write ${priceRowSchema.shape[column].description}`;
  ledger.findings.push(finding('not-understood', row.placeOf(header[column]), what, wayOut));
  unreadRow(context, row, row.get(header.ingredient));
}

/** The id of the food a row is of: its own name, the supplier's mapping of it, in any case. */
function ingredientOf(context: PriceContext, row: CsvRow, name: string, place: Place): string | undefined {
  const { ledger, names, ingredients } = context;
  const id = names.get(name.toLowerCase()) ?? name.toLowerCase();
  if (ingredients.has(id)) return id;
  if (ledger.held.has(`ingredient/${id}`) || ledger.unreadable.has('ingredient')) return undefined;
  const near = suggestion(ledger, id, ingredients.keys());
  const wayOut = near ?? 'write the ingredient, or say in suppliers.yaml under “names” which one it is';
  ledger.findings.push(finding('unknown-id', place, `no ingredient is called “${name}”`, wayOut));
  unreadRow(context, row, name);
  return undefined;
}

/** While some row is not read, nobody can say that an ingredient has no price. */
function unreadRow({ ledger, supplier }: PriceContext, { line }: CsvRow, name: string): void {
  hold(ledger, `prices/${supplier}/${name}`, `line ${line} of its price list cannot be read`);
}

function understand<T>(ledger: Ledger, place: Place, read: Parsed<T>): T | undefined {
  if (read.ok) return read.value;
  ledger.findings.push(finding('not-understood', place, read.what, read.wayOut));
  return undefined;
}
