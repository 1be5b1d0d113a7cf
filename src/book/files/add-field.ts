import { isMap, isScalar, type Pair, parseDocument, type Scalar, stringify, type YAMLMap } from 'yaml';
import { notParsed, type Parsed, parsed } from '../../engine/parsed.ts';

/**
 * The text of an ingredients file with a field added to an entry, or with a new entry at its end where there is none.
 * All else stays to the letter: comments, order, spacing, line ends. Fails where the file is not YAML that can be
 * added to, or the entry has the field already.
 */
export function withField(text: string, id: string, field: string, value: string): Parsed<string> {
  const newLine = text.includes('\r\n') ? '\r\n' : '\n';
  const doc = parseDocument(text);
  if (doc.errors.length > 0 || (doc.contents !== null && !isMap(doc.contents)))
    return notParsed('the file is not a mapping in YAML', 'fix what `check` reports about it first');
  const entry = doc.contents?.items.find(({ key }) => isScalar(key) && key.value === id);
  const added = entry
    ? insertInto(text, entry as Pair<Scalar, unknown>, field, value, newLine)
    : `${withEnd(text, newLine)}${id}:${newLine}  ${fieldText(field, value)}${newLine}`;
  if (added === undefined || !says(added, id, field, value))
    return notParsed(`“${field}” can’t be added to “${id}” automatically`, 'write it in the file by hand');
  return parsed(added);
}

function insertInto(
  text: string,
  { key, value }: Pair<Scalar, unknown>,
  field: string,
  said: string,
  newLine: string,
): string | undefined {
  const written = fieldText(field, said);
  if (isMap(value) && value.items.length > 0 && value.range) {
    return value.flow
      ? intoFlow(text, value, `${field}: ${inBraces(said)}`)
      : afterLast(text, value, written, newLine);
  }
  // An entry of which only the name is written.
  const [, keyEnd] = key.range ?? [];
  if (keyEnd === undefined || (isScalar(value) && value.value !== null)) return undefined;
  return insertLine(text, keyEnd, `  ${written}`, newLine);
}

function fieldText(field: string, value: string): string {
  return `${field}: ${stringify(value, { lineWidth: 0 }).trimEnd()}`;
}

/** Within braces a comma would end the value. */
function inBraces(value: string): string {
  return /^[\w (%).-]+$/.test(value) ? value : JSON.stringify(value);
}

function intoFlow(text: string, { range }: YAMLMap, written: string): string | undefined {
  if (!range) return undefined;
  const close = text.lastIndexOf('}', range[1] - 1);
  const before = text.slice(0, close).trimEnd();
  return `${before}${before.endsWith(',') ? '' : ','} ${written} ${text.slice(close)}`;
}

function afterLast(text: string, { items }: YAMLMap, written: string, newLine: string): string | undefined {
  const [first, last] = [items[0], items.at(-1)] as Pair<Scalar, Scalar | null>[];
  const start = first?.key.range?.[0];
  const end = last?.value?.range?.[1] ?? last?.key.range?.[1];
  if (start === undefined || end === undefined) return undefined;
  const indent = text.slice(text.lastIndexOf('\n', start - 1) + 1, start);
  return indent.trim() === '' ? insertLine(text, end, `${indent}${written}`, newLine) : undefined;
}

/** Inserts a line below the one that a position is on; a comment at that line's end stays with it. */
function insertLine(text: string, position: number, line: string, newLine: string): string {
  // A block of text ends behind its last line break.
  const from = text[position - 1] === '\n' ? position - 1 : position;
  const end = text.indexOf('\n', from);
  if (end === -1) return `${text}${newLine}${line}${newLine}`;
  return `${text.slice(0, end + 1)}${line}${newLine}${text.slice(end + 1)}`;
}

function withEnd(text: string, newLine: string): string {
  return text === '' || text.endsWith('\n') ? text : `${text}${newLine}`;
}

/** Whether the new text reads as meant, so that nothing else has become part of the field or been lost. */
function says(text: string, id: string, field: string, value: string): boolean {
  const doc = parseDocument(text, { schema: 'failsafe' });
  return doc.errors.length === 0 && doc.getIn([id, field]) === value;
}
