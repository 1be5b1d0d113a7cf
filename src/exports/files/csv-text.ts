import { stringify } from 'csv-stringify/sync';

/**
 * Rows as RFC 4180: commas, quotes doubled, CRLF. A text that a spreadsheet would run as a formula is given an
 * apostrophe in front, so that opening the file computes nothing. Numbers keep a decimal point, dates are ISO 8601 and
 * clocks have 24 hours whatever the locale, since programs read these files; pages and papers are what people read.
 */
export function csvText(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const safe = rows.map((row) => row.map((field) => (typeof field === 'string' ? inert(field) : field)));
  return stringify([header, ...safe] as (string | number)[][], {
    record_delimiter: '\r\n',
    quoted_match: /[\r\n]/,
  });
}

function inert(field: string): string {
  return /^[=+\-@\t\r]/.test(field) && !/^[+-]?\d+(\.\d+)?$/.test(field) ? `'${field}` : field;
}
