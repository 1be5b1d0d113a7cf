/** A start tag of an SVG file with its attributes, written out: escapes of XML resolved. */
export interface SvgElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** Offset of its `<` in the file. */
  readonly at: number;
}

/** What of a drawing is read: its elements in order and the words between them, or why and where it is no drawing. */
export type SvgTokens =
  | { readonly elements: readonly SvgElement[] }
  | { readonly what: string; readonly at: number };

const NAME = /[A-Za-z_][\w.:-]*/y;
const ATTRIBUTE = /\s+([A-Za-z_][\w.:-]*)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;
const SPACE = /\s*/y;
const REFERENCES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/**
 * Reads the part of XML 1.0 that a drawing needs: elements, attributes, text and comments, well-formed. Document types,
 * instructions to programs and sections of raw text are refused, so that no two readers understand a file differently.
 */
export function svgTokens(text: string): SvgTokens {
  const elements: SvgElement[] = [];
  const open: string[] = [];
  let at = text.match(/^<\?xml [^<>]*\?>/)?.[0].length ?? 0;
  while (at < text.length) {
    const tag = text.indexOf('<', at);
    const words = text.slice(at, tag === -1 ? undefined : tag);
    if (unescaped(words) === undefined) return { what: 'a & begins no escape of XML', at };
    if (open.length === 0 && words.trim() !== '') return { what: 'words stand outside the drawing', at };
    if (tag === -1) break;
    if (text.startsWith('<!--', tag)) {
      const end = text.indexOf('-->', tag + 4);
      if (end === -1) return { what: 'a comment is not closed', at: tag };
      at = end + 3;
    } else if (/[!?]/.test(text[tag + 1] ?? '')) {
      return { what: 'document types, instructions and raw sections do not stand in a mark', at: tag };
    } else if (text[tag + 1] === '/') {
      const name = open.pop();
      const close = name === undefined ? undefined : text.slice(tag).match(/^<\/([^\s>]+)\s*>/);
      if (!close || close[1] !== name) return { what: 'a closing tag closes nothing that is open', at: tag };
      at = tag + close[0].length;
    } else {
      if (open.length === 0 && elements.length > 0) return { what: 'there is a second drawing', at: tag };
      const element = startTag(text, tag);
      if ('what' in element) return element;
      elements.push(element);
      if (!element.empty) open.push(element.name);
      at = element.end;
    }
  }
  if (open.length > 0) return { what: `<${open.at(-1)}> is not closed`, at: text.length };
  return { elements };
}

function startTag(
  text: string,
  at: number,
): (SvgElement & { end: number; empty: boolean }) | { what: string; at: number } {
  NAME.lastIndex = at + 1;
  const name = NAME.exec(text)?.[0];
  if (name === undefined) return { what: 'a < begins no tag', at };
  const attributes = new Map<string, string>();
  let end = at + 1 + name.length;
  for (;;) {
    ATTRIBUTE.lastIndex = end;
    const found = ATTRIBUTE.exec(text);
    if (!found) break;
    const [whole, key = '', one, other] = found;
    const value = unescaped(one ?? other ?? '');
    if (value === undefined) return { what: `“${key}” holds a & that begins no escape of XML`, at };
    if (attributes.has(key)) return { what: `<${name}> says “${key}” twice`, at };
    attributes.set(key, value);
    end += whole.length;
  }
  SPACE.lastIndex = end;
  end += SPACE.exec(text)?.[0].length ?? 0;
  const empty = text.startsWith('/>', end);
  if (!empty && text[end] !== '>') return { what: `the tag <${name}> cannot be read`, at };
  return { name, attributes, at, empty, end: end + (empty ? 2 : 1) };
}

/** The text with its escapes resolved; undefined where one is none of XML's own. */
function unescaped(text: string): string | undefined {
  let sound = true;
  const plain = text.replace(
    /&(?:#(\d{1,7}|x[\da-fA-F]{1,6});|(\w{2,4});)?/g,
    (_, code?: string, name?: string) => {
      const sign = name === undefined ? numbered(code) : REFERENCES[name];
      sound &&= sign !== undefined;
      return sign ?? '';
    },
  );
  return sound ? plain : undefined;
}

function numbered(code: string | undefined): string | undefined {
  const number = code === undefined ? Number.NaN : Number(code.replace(/^x/, '0x'));
  return number >= 0x20 && number <= 0x10ffff ? String.fromCodePoint(number) : undefined;
}
