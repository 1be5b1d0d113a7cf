import { describe, expect, test } from 'vitest';
import { stablePdf } from '../../../src/print/stable-pdf.ts';

const facts = { title: 'Menü', author: 'A (B)' };

/** The outer form of a PDF as the browser writes it, stamped with a time and numbered nodes. */
function printed(time: string, [first, second]: [string, string]): Uint8Array {
  const info = `1 0 obj\n<</Title (x)\n/CreationDate (D:${time}+00'00')\n/ModDate (D:${time}+00'00')>>\nendobj\n`;
  const body = `%PDF-1.4\n${info}2 0 obj\n<</ID (node${first})\n/Headers [(node${second}) (node${first})]>>\nendobj\n`;
  const end = `xref\n0 3\ntrailer\n<</Size 3\n/Root 2 0 R\n/Info 1 0 R>>\nstartxref\n${body.length}\n%%EOF\n`;
  return Buffer.from(body + end, 'latin1');
}

describe('a print made stable', () => {
  test('two prints of one page at different times, with other node numbers, are the same bytes', () => {
    const one = stablePdf(printed('20270426101500', ['00000012', '00000017']), facts);
    const other = stablePdf(printed('20280101000000', ['00000342', '00000400']), facts);
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true);
  });

  test('prints with another structure stay different', () => {
    const one = stablePdf(printed('20270426101500', ['00000012', '00000017']), facts);
    const other = stablePdf(printed('20270426101500', ['00000017', '00000012']), facts);
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(false);
  });

  test('the facts are appended where the new cross-reference says they are', () => {
    const text = Buffer.from(stablePdf(printed('20270426101500', ['00000001', '00000002']), facts)).toString(
      'latin1',
    );
    const at = Number(/1 1\n(\d{10}) 00000 n /.exec(text)![1]);
    expect(text.slice(at)).toMatch(/^1 0 obj\n<<\/Title <FEFF004D0065006E00FC>\n\/Author <FEFF/);
    const table = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(text)![1]);
    expect(text.slice(table, table + 5)).toBe('xref\n');
  });

  test('a file of another form is refused rather than broken', () => {
    expect(() => stablePdf(Buffer.from('%PDF-1.7 … %%EOF'), facts)).toThrow('trailer is not understood');
  });
});
