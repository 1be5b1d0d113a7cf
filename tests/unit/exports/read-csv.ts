/**
 * Rows of a CSV text by RFC 4180 alone, read sign by sign; it shares nothing with what writes them. Throws where
 * the text is not as the RFC has it: lines end in CRLF, a field with a comma, a quote or a line break is quoted.
 */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    const [field, end] = text[at] === '"' ? quotedField(text, at + 1) : plainField(text, at);
    row.push(field);
    if (text[end] === ',') at = end + 1;
    else if (text.startsWith('\r\n', end)) {
      rows.push(row);
      row = [];
      at = end + 2;
    } else throw new Error(`neither a comma nor CRLF after the field that ends at ${end}`);
  }
  if (row.length > 0) throw new Error('the last line does not end');
  return rows;
}

function quotedField(text: string, start: number): [string, number] {
  let field = '';
  for (let at = start; at < text.length; at++) {
    if (text[at] !== '"') field += text[at];
    else if (text[at + 1] === '"') {
      field += '"';
      at++;
    } else return [field, at + 1];
  }
  throw new Error('a quoted field does not end');
}

function plainField(text: string, start: number): [string, number] {
  const length = text.slice(start).search(/[,\r\n"]/);
  return length === -1
    ? [text.slice(start), text.length]
    : [text.slice(start, start + length), start + length];
}
