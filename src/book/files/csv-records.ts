import { CsvError } from 'csv-parse';
import { parse } from 'csv-parse/sync';

/** One record of a CSV text, or what stood in the place of one. */
export type CsvRecord =
  | { readonly line: number; readonly fields: readonly string[] }
  | { readonly line: number; readonly broken: BrokenQuote };

export type BrokenQuote = 'open-quote' | 'quote-inside';

/** Lines given to the parser at once: what has to be read again after a broken row is never more. */
const BATCH = 200;

/**
 * The records of a text with plain line feeds, header included, not more than `most`. A record is a line: a
 * quotation mark that is not closed on its line makes a broken record, and reading goes on with the next line,
 * so that one slip never swallows the rows below it. Blank lines are no records.
 */
export function csvRecords(text: string, separator: string, most: number): CsvRecord[] {
  const lines = text.split('\n');
  const records: CsvRecord[] = [];
  for (let from = 0; from < lines.length && records.length < most; ) {
    from = readBatch(lines, from, separator, records);
  }
  return records.slice(0, most);
}

/** Reads records into the list until one is broken or the batch is done; gives the line (from 0) to go on with. */
function readBatch(lines: readonly string[], from: number, separator: string, records: CsvRecord[]): number {
  const to = Math.min(from + BATCH, lines.length);
  let next = firstFilled(lines, from, to);
  try {
    parse(lines.slice(from, to).join('\n'), {
      delimiter: separator,
      record_delimiter: '\n',
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      on_record(fields: string[], { lines: read }) {
        if (from + read > next + 1) throw new LineBreak();
        records.push({ line: next + 1, fields });
        next = firstFilled(lines, next + 1, to);
        return null;
      },
    });
    return to;
  } catch (error) {
    const inside = error instanceof CsvError && error.code === 'INVALID_OPENING_QUOTE';
    records.push({
      line: next + 1,
      broken: inside ? 'quote-inside' : 'open-quote',
    });
    return next + 1;
  }
}

/** A field that goes on in the next line: allowed in CSV, but in a list of prices a lost quotation mark. */
class LineBreak extends Error {}

function firstFilled(lines: readonly string[], from: number, to: number): number {
  let index = from;
  while (index < to && lines[index]?.trim() === '') index += 1;
  return index;
}
