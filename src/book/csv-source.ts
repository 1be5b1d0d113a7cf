import type { Finding, Place } from './finding.ts';

/** One row of a CSV file below the header. Headers are found whatever their case and outer spaces. */
export interface CsvRow {
  /** The line at which the row begins, from 1. */
  readonly line: number;
  /** The field under the header, outer spaces removed; empty text where there is no such column. */
  get(header: string): string;
  /** Where that field stands: the column is the field's number, 1 where there is no such column. */
  placeOf(header: string): Place;
}

/** A CSV file, read. */
export interface CsvSource {
  /** The names of the columns as written, outer spaces removed; unnamed columns are left out. */
  readonly headers: readonly string[];
  readonly rows: readonly CsvRow[];
  readonly findings: Finding[];
}

export function readCsv(file: string, text: string): CsvSource {
  throw new Error(`${file} ${text.length}`);
}
