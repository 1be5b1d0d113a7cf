import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCsv } from '../../../src/book/files/csv-source.ts';

const HEADER = 'ingredient,pack,price\n';
const read = (text: string) => readCsv('prices/x.csv', text);
const names = (text: string) => read(text).rows.map((row) => `${row.line} ${row.get('ingredient')}`);

describe('rows', () => {
  test('fields are found by their header, whatever its case, and placed by their number', () => {
    const { rows, headers } = read('Ingredient, Pack ,PRICE\npotato,"50 lb, washed",31.50\n');
    expect(headers).toEqual(['Ingredient', 'Pack', 'PRICE']);
    expect(rows[0]?.get('pack')).toBe('50 lb, washed');
    expect(rows[0]?.placeOf('price')).toEqual({ file: 'prices/x.csv', line: 2, column: 3 });
    expect(rows[0]?.get('code')).toBe('');
  });

  test('a spreadsheet may write semicolons or tabs, a byte order mark, its own line ends and empty fields', () => {
    expect(read('\uFEFFingredient;pack\r\nbeet;2,5 kg\r\n').rows[0]?.get('pack')).toBe('2,5 kg');
    expect(read('ingredient\tpack\rbeet\t1 lb').rows[0]?.get('pack')).toBe('1 lb');
    const { rows, findings } = read('ingredient,pack,,\nbeet,1 lb,,\n,,,\n\nleek,2 lb\n');
    expect(findings).toEqual([]);
    expect(rows.map(({ line }) => line)).toEqual([2, 5]);
  });

  test('what another program writes is read back as it was', () => {
    const field = fc
      .string({ minLength: 1 })
      .filter((text) => text === text.trim() && !/[\p{C}\p{Zl}\p{Zp}]/u.test(text));
    fc.assert(
      fc.property(fc.array(fc.tuple(field, field), { minLength: 1, maxLength: 20 }), (rows) => {
        const { rows: back, findings } = read(stringify([['ingredient', 'pack'], ...rows]));
        expect(findings).toEqual([]);
        expect(back.map((row) => [row.get('ingredient'), row.get('pack')])).toEqual(rows);
      }),
    );
  });
});

describe('broken rows', () => {
  test.each([
    ['an unclosed quotation mark', 'a,"1 lb,2\n', 'csv-quotes'],
    ['a quotation mark inside of a field', 'a,2" pan,3\n', 'csv-quotes'],
    ['text after a closing quotation mark', 'a,"1" lb,2\n', 'csv-quotes'],
    ['too few fields', 'a,1 lb\n', 'csv-fields'],
    ['too many fields', 'a,1 lb,2,3\n', 'csv-fields'],
    ['a character nobody sees', 'a,1 lb,\u00002\n', 'control-character'],
  ])('%s costs its own row and no other', (_, row, code) => {
    const text = `${HEADER}beet,1 lb,2\n\n${row}leek,"1 lb, washed",2\n${row}chard,1 lb,2\n`;
    expect(names(text)).toEqual(['2 beet', '5 leek', '7 chard']);
    expect(read(text).findings.map((each) => `${each.place.line} ${each.code}`)).toEqual([
      `4 ${code}`,
      `6 ${code}`,
    ]);
  });

  test('a lost quotation mark that meets another rows later never swallows the rows between', () => {
    const text = `${HEADER}a,"1 lb,2\nbeet,1 lb,2\nleek,1 lb,2\nb,1 lb",2\nchard,1 lb,2\n`;
    expect(names(text)).toEqual(['3 beet', '4 leek', '6 chard']);
    expect(read(text).findings.map(({ place }) => place.line)).toEqual([2, 5]);
  });

  test('twenty thousand broken rows are told, and what follows is not read', () => {
    const { rows, findings } = read(HEADER + 'a,"1,2\n'.repeat(400_000));
    expect(rows).toEqual([]);
    expect(findings).toHaveLength(20_001);
    expect(findings.at(-1)?.code).toBe('csv-too-many-rows');
  });
});
