import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvText } from '../../../src/exports/files/csv-text.ts';
import { readCsv } from './read-csv.ts';

test('quotes, commas and line breaks come back as they were, in lines that end in CRLF', () => {
  const rows = [
    ['full pan, 2½ in', 'holds "240" fl oz', 'two\nlines', ''],
    ['', '"', ',', 'one\r\ntwo'],
  ];
  const text = csvText(['a', 'b', 'c', 'd'], rows);
  expect(readCsv(text)).toEqual([['a', 'b', 'c', 'd'], ...rows]);
});

test('any texts that begin with no sign a spreadsheet computes from come back as they were', () => {
  const field = fc.string({ unit: 'grapheme' }).filter((text) => !/^[=+\-@\t\r]/.test(text));
  fc.assert(
    fc.property(fc.array(fc.tuple(field, field, field)), (rows) => {
      expect(readCsv(csvText(['a', 'b', 'c'], rows)).slice(1)).toEqual(rows);
    }),
  );
});

/** The first signs by which spreadsheets take a field for a formula: OWASP, CSV Injection. */
test.each(['=1+1', '+cmd|x!A0', '-2+3', '@SUM(A1)', '\t=1', '\r=1', '=HYPERLINK("http://x.example","y")'])(
  'the formula %j is text to a spreadsheet',
  (formula) => {
    const [, [field = ''] = []] = readCsv(csvText(['a'], [[formula]]));
    expect(field).toBe(`'${formula}`);
  },
);

test('a number stays a number, with or without sign', () => {
  expect(readCsv(csvText(['a'], [['-2.5'], ['+3'], ['0.250'], [7]])).flat()).toEqual([
    'a',
    '-2.5',
    '+3',
    '0.250',
    '7',
  ]);
});
