import type { Ingredient } from '../../../engine/food/ingredient.ts';
import { PRICE_COLUMNS, type PriceColumn } from '../../../schema/price-list.ts';
import type { SupplierText } from '../../../schema/supplier.ts';
import type { CsvSource } from '../../files/csv-source.ts';
import { finding } from '../../findings/finding.ts';
import { hold, type Ledger, suggestion } from '../../ledger.ts';
import { linkPriceRow, type PriceListContext, type PriceRow } from './price-row.ts';

/**
 * The rows of one supplier's price list, each read or with what keeps it from being read; none where the list lacks a
 * column. What the rows leave to tell waits for the recipes, which say what foods are used.
 */
export function linkPrices(
  ledger: Ledger,
  supplier: string,
  text: SupplierText,
  csv: Pick<CsvSource, 'headers' | 'rows'>,
  file: string,
  currency: string,
  ingredients: ReadonlyMap<string, Ingredient>,
): { readonly context: PriceListContext; readonly rows: readonly PriceRow[] } {
  const header = columnNames(text);
  const names = new Map(Object.entries(text.names ?? {}).map(([name, id]) => [name.toLowerCase(), id]));
  const context = { supplier, text, currency, ingredients, header, names };
  if (lacksColumn(ledger, csv.headers, header, file)) {
    hold(ledger, `prices/${supplier}`, `${file} is missing a column`);
    return { context, rows: [] };
  }
  if (!text.columns) strangeColumns(ledger, csv.headers, file);
  return { context, rows: csv.rows.map((row) => linkPriceRow(context, row)) };
}

function columnNames(text: SupplierText): Record<PriceColumn, string> {
  return Object.fromEntries(
    PRICE_COLUMNS.map((column) => [column, text.columns?.[column] ?? column]),
  ) as Record<PriceColumn, string>;
}

function lacksColumn(
  ledger: Ledger,
  headers: readonly string[],
  header: PriceListContext['header'],
  file: string,
): boolean {
  const known = new Set(headers.map((name) => name.toLowerCase()));
  const missing = PRICE_COLUMNS.filter(
    (each) => each !== 'item number' && !known.has(header[each].toLowerCase()),
  );
  // Without any column the file's own reading has said what is wrong.
  if (headers.length === 0) return true;
  for (const column of missing) {
    const wayOut = `name it on the first line, or write in suppliers.yaml under “columns” what the list calls “${column}”`;
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
