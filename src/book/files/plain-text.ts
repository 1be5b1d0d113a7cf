import { type Finding, finding, type Place } from '../findings/finding.ts';

/** The text without byte order mark, its line ends (also CRLF and CR) as line feeds. Lines keep their numbers. */
export function plainText(text: string): string {
  return text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
}

/** The place of an offset in a text of which the first line is line `firstLine` of the file. */
export function placeInText(file: string, text: string, offset: number, firstLine = 1): Place {
  let line = firstLine;
  let start = 0;
  for (let end = text.indexOf('\n'); end !== -1 && end < offset; end = text.indexOf('\n', start)) {
    line += 1;
    start = end + 1;
  }
  return { file, line, column: offset - start + 1 };
}

/** Where the text holds its first character that nobody can see; -1 where it holds none. */
export function indexOfControl(text: string): number {
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code < 0x20 ? code !== 0x09 && code !== 0x0a : code >= 0x7f && isControl(code, text, index))
      return index;
  }
  return -1;
}

/** The finding for a text with a character that nobody can see, placed at the first of them. */
export function controlFinding(file: string, text: string, firstLine = 1): Finding | undefined {
  const index = indexOfControl(text);
  return index === -1 ? undefined : controlFindingAt(placeInText(file, text, index, firstLine), text, index);
}

/** The finding for the character that nobody can see at `index` of `text`, placed by the caller. */
export function controlFindingAt(place: Place, text: string, index: number): Finding {
  const code = text.charCodeAt(index).toString(16).toUpperCase().padStart(4, '0');
  return finding(
    'control-character',
    place,
    `the text has the invisible control character U+${code}`,
    'delete it, or retype the text around it',
  );
}

/**
 * DEL and the C1 controls, the marks that turn the order of letters about, a byte order mark inside of the
 * text, and half a surrogate pair.
 */
function isControl(code: number, text: string, index: number): boolean {
  if (code <= 0x9f) return true;
  if ((code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069)) return true;
  if (code === 0xfeff || code === 0xfffe || code === 0xffff) return true;
  if (code >= 0xd800 && code <= 0xdbff) {
    const next = text.charCodeAt(index + 1);
    return !(next >= 0xdc00 && next <= 0xdfff);
  }
  if (code >= 0xdc00 && code <= 0xdfff) {
    const before = text.charCodeAt(index - 1);
    return !(before >= 0xd800 && before <= 0xdbff);
  }
  return false;
}
