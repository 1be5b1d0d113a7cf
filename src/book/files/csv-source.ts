import { type Finding, finding, type Place } from '../findings/finding.ts';
import { quoted } from '../findings/quoted.ts';
import { type BrokenQuote, type CsvRecord, csvRecords } from './csv-records.ts';
import { controlFindingAt, indexOfControl, plainText } from './plain-text.ts';

/** In UTF-16 units: 20,000 rows of 200. */
const LONGEST = 4 * 1024 * 1024;
const MOST_ROWS = 20_000;

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
  /** Where the header stands. */
  readonly place: Place;
  readonly rows: readonly CsvRow[];
  readonly findings: Finding[];
}

/**
 * Reads a CSV file (RFC 4180, one line a record) with a header. The separator is the comma, or where the header has none the
 * semicolon or the tab. Empty fields beyond the header's last name and rows of empty fields are passed over, as
 * spreadsheets leave them. Never throws; a broken row is left out with its finding, the others are there.
 */
export function readCsv(file: string, text: string): CsvSource {
  const findings: Finding[] = [];
  const start = { file, line: 1, column: 1 };
  const nothing = (found: Finding): CsvSource => ({
    headers: [],
    place: start,
    rows: [],
    findings: [found],
  });
  if (text.length > LONGEST) {
    const what = `the file has ${text.length.toLocaleString('en-US')} characters`;
    return nothing(finding('file-too-large', start, what, 'delete old rows; 4,194,304 is the most'));
  }
  const plain = plainText(text);
  const [header, ...records] = csvRecords(plain, separatorOf(plain), MOST_ROWS + 2);
  if (!header) {
    return nothing(finding('csv-header', start, 'the file is empty', 'name the columns on the first line'));
  }
  const place = { file, line: header.line, column: 1 };
  if ('broken' in header) {
    return nothing(
      finding('csv-header', place, 'a quotation mark in the header is not closed', 'close or delete it'),
    );
  }
  const columns = readHeader(place, header.fields, findings);
  if (columns.size === 0) {
    return nothing(
      finding('csv-header', place, 'the first line has no column names', 'put the column names there'),
    );
  }
  const width = Math.max(...columns.values()) + 1;
  const rows: CsvRow[] = [];
  for (const [index, record] of records.entries()) {
    if (index === MOST_ROWS) {
      const what = `the file has over ${MOST_ROWS.toLocaleString('en-US')} rows`;
      const at = { file, line: record.line, column: 1 };
      findings.push(
        finding('csv-too-many-rows', at, what, 'delete old rows; rows from here on are not read'),
      );
      break;
    }
    const broken = brokenRow(file, record, width);
    if (broken) findings.push(broken);
    else if ('fields' in record && record.fields.some((field) => field !== '')) {
      rows.push(rowOf(file, record.line, record.fields, columns));
    }
  }
  const headers = [...columns.values()].map((index) => header.fields[index] ?? '');
  return { headers, place, rows, findings };
}

/** The columns' numbers (from 0) by their names in lower case. */
function readHeader(place: Place, names: readonly string[], findings: Finding[]): Map<string, number> {
  const columns = new Map<string, number>();
  for (const [index, name] of names.entries()) {
    const at = { ...place, column: index + 1 };
    const control = indexOfControl(name);
    if (control !== -1) findings.push(controlFindingAt(at, name, control));
    else if (columns.has(keyOf(name))) {
      const what = `there are two columns called ${quoted(name)}`;
      findings.push(finding('csv-duplicate-header', at, what, 'rename or delete one of them'));
    } else if (name !== '') columns.set(keyOf(name), index);
  }
  return columns;
}

function brokenRow(file: string, record: CsvRecord, width: number): Finding | undefined {
  const at = (column: number): Place => ({ file, line: record.line, column });
  if ('broken' in record) return finding('csv-quotes', at(1), ...QUOTES[record.broken]);
  const { fields } = record;
  const spoilt = fields.findIndex((field) => indexOfControl(field) !== -1);
  if (spoilt !== -1) {
    const field = fields[spoilt] ?? '';
    return controlFindingAt(at(spoilt + 1), field, indexOfControl(field));
  }
  if (fields.every((field) => field === '')) return undefined;
  if (fields.length < width) {
    const what = `the row has ${fields.length} of ${width} fields`;
    return finding(
      'csv-fields',
      at(fields.length),
      what,
      'fill in the missing ones, or at least their commas',
    );
  }
  const extra = fields.findIndex((field, index) => index >= width && field !== '');
  if (extra === -1) return undefined;
  const what = `the row has ${fields.length} fields, but there are ${width} columns`;
  return finding(
    'csv-fields',
    at(extra + 1),
    what,
    'put a field with a comma in quotation marks, or name the column',
  );
}

const QUOTES: Record<BrokenQuote, [what: string, wayOut: string]> = {
  'open-quote': [
    'a quotation mark that opens in this row is not closed on its line',
    'close it at the end of its field, or delete it',
  ],
  'quote-inside': [
    'a quotation mark is inside a field',
    'delete it, or put the field in quotation marks and write the inner one twice: "2"" pan"',
  ],
};

function rowOf(file: string, line: number, fields: readonly string[], columns: Map<string, number>): CsvRow {
  return {
    line,
    get: (header) => fields[columns.get(keyOf(header)) ?? -1] ?? '',
    placeOf: (header) => ({
      file,
      line,
      column: (columns.get(keyOf(header)) ?? 0) + 1,
    }),
  };
}

function keyOf(header: string): string {
  return header.trim().toLowerCase();
}

function separatorOf(text: string): string {
  const header = text.split('\n').find((line) => line.trim() !== '') ?? '';
  return [',', ';', '\t'].find((sign) => header.includes(sign)) ?? ',';
}
