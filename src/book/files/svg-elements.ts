import { parseXml, type XmlDocument, type XmlElement, XmlError } from '@rgrove/parse-xml';

/** An element of an SVG file with its attributes, written out: escapes of XML resolved. */
export interface SvgElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** Offset of its `<` in the file. */
  readonly at: number;
}

/** The elements of a drawing in the order of the file, or why and where it is no drawing. */
export type SvgElements =
  | { readonly elements: readonly SvgElement[] }
  | { readonly what: string; readonly at: number };

/** No drawing program nests groups so deep; the parser goes down into each by a call of its own. */
const DEEPEST = 200;
const TOO_DEEP = `groups stand in groups more than ${DEEPEST} deep`;
/** Kinds of nodes that a drawing needs none of. */
const REFUSED: ReadonlySet<string> = new Set(['doctype', 'pi', 'cdata']);
/** Comments, and a tab or line break that is written as an escape. */
const ESCAPED_BREAK = /<!--.*?-->|&#(?:0*(?:9|10|13)|x0*[9ad]);/gis;

/**
 * Reads the part of XML 1.0 that a drawing needs, well-formed: elements, attributes, text and comments. Document types,
 * instructions to programs and sections of raw text are refused, so that no two readers understand a file differently.
 */
export function svgElements(text: string): SvgElements {
  const read = xmlOf(text);
  if ('what' in read) return read;
  const escaped = [...text.matchAll(ESCAPED_BREAK)].find(([found]) => found.startsWith('&'));
  if (escaped) return { what: 'a tab or line break is written as an escape', at: escaped.index };
  const elements: SvgElement[] = [];
  type Step = { readonly node: XmlElement['children'][number]; readonly depth: number };
  const left: Step[] = read.children.map((node) => ({ node, depth: 1 }) as Step).reverse();
  for (let step = left.pop(); step; step = left.pop()) {
    const { node, depth } = step;
    const at = node.start;
    if (depth > DEEPEST) return { what: TOO_DEEP, at };
    if (REFUSED.has(node.type))
      return { what: 'a mark can’t contain document types, processing instructions or CDATA', at };
    if (node.type !== 'element') continue;
    const { name, attributes, children } = node as XmlElement;
    elements.push({ name, attributes: new Map(Object.entries(attributes)), at });
    left.push(...children.map((child) => ({ node: child, depth: depth + 1 })).reverse());
  }
  return { elements };
}

function xmlOf(text: string): XmlDocument | { what: string; at: number } {
  try {
    return parseXml(text, { includeOffsets: true, preserveCdata: true, preserveDocumentType: true });
  } catch (error) {
    if (error instanceof RangeError) return { what: TOO_DEEP, at: 0 };
    if (!(error instanceof XmlError)) throw error;
    const [reason = ''] = error.message.split(' (line ');
    // Here the parser counts a sign of two code units as one.
    const at = [...text].slice(0, error.pos).join('').length;
    return { what: `this is not well-formed XML (${reason})`, at };
  }
}
