import { type Day, parseDay } from '../../engine/calendar/day.ts';
import type { Ingredient } from '../../engine/food/ingredient.ts';
import { parseQuantity } from '../../engine/measure/parse-quantity.ts';
import { notParsed, type Parsed } from '../../engine/parsed.ts';
import type { StockLot } from '../../engine/purchase/stock.ts';
import type { ContentText } from '../files/content-texts.ts';
import { type CsvRow, readCsv } from '../files/csv-source.ts';
import { finding, type Place } from '../findings/finding.ts';
import { type Ledger, suggestion } from '../ledger.ts';

/** A lot in stock, and where stock.csv says so. */
export interface WrittenLot extends StockLot {
  readonly place: Place;
}

const NEEDED = ['ingredient', 'amount'] as const;
const USE_BY = 'use by';

/**
 * What is in stock, by ingredient, as stock.csv lists it: `ingredient,amount,use by`, the last column or its field
 * left out where nothing limits it. A row that cannot be read, or is of a food nobody knows, is left out with its
 * finding; the others count.
 */
export function readStock(
  ledger: Ledger,
  files: readonly ContentText[],
  ingredients: ReadonlyMap<string, Ingredient>,
): Map<string, WrittenLot[]> {
  const stock = new Map<string, WrittenLot[]>();
  for (const { file, text } of files) {
    if (text === undefined) continue;
    const csv = readCsv(file, text);
    ledger.findings.push(...csv.findings);
    if (lacksColumn(ledger, csv.headers, csv.place)) continue;
    for (const row of csv.rows) {
      const lot = readLot(ledger, row, ingredients);
      if (lot) stock.set(lot.ingredient, [...(stock.get(lot.ingredient) ?? []), lot]);
    }
  }
  return stock;
}

function lacksColumn(ledger: Ledger, headers: readonly string[], place: Place): boolean {
  const known = new Set(headers.map((name) => name.toLowerCase()));
  // Without any column the file's own reading has said what is wrong.
  if (headers.length === 0) return true;
  const missing = NEEDED.filter((column) => !known.has(column));
  for (const column of missing) {
    const what = `the stock list has no column “${column}”`;
    ledger.findings.push(
      finding('missing-column', place, what, `name it on the first line: ingredient,amount,${USE_BY}`),
    );
  }
  return missing.length > 0;
}

function readLot(
  ledger: Ledger,
  row: CsvRow,
  ingredients: ReadonlyMap<string, Ingredient>,
): WrittenLot | undefined {
  const understand = <T>(column: string, read: Parsed<T>): T | undefined => {
    if (read.ok) return read.value;
    ledger.findings.push(finding('not-understood', row.placeOf(column), read.what, read.wayOut));
    return undefined;
  };
  const ingredient = ingredientOf(ledger, row, ingredients);
  const amount = understand('amount', parseAmount(row.get('amount')));
  const written = row.get(USE_BY);
  const useBy = written === '' ? undefined : understand<Day>(USE_BY, parseDay(written));
  if (ingredient === undefined || !amount || (written !== '' && useBy === undefined)) return undefined;
  return { ingredient, amount, useBy, place: row.placeOf('ingredient') };
}

function parseAmount(text: string): ReturnType<typeof parseQuantity> {
  return text === ''
    ? notParsed('the amount in stock is missing', 'write it as 12 lb, 3 cans or 2 qt')
    : parseQuantity(text);
}

function ingredientOf(
  ledger: Ledger,
  row: CsvRow,
  ingredients: ReadonlyMap<string, Ingredient>,
): string | undefined {
  const name = row.get('ingredient');
  const id = name.toLowerCase();
  if (ingredients.has(id)) return id;
  if (ledger.held.has(`ingredient/${id}`) || ledger.unreadable.has('ingredient')) return undefined;
  const wayOut = suggestion(ledger, id, ingredients.keys()) ?? 'write the ingredient’s id';
  ledger.findings.push(
    finding('unknown-id', row.placeOf('ingredient'), `no ingredient is called “${name}”`, wayOut),
  );
  return undefined;
}
