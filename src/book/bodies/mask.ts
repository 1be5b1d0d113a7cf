import type { MdastNode } from 'satteri';

/** A text made harmless for the parser of components, and where it was changed. */
export interface MaskedText {
  /** As long as the original, so that every place stays the same. */
  readonly text: string;
  /** Offsets of opening braces that no backslash makes plain. */
  readonly braces: readonly number[];
  /** Offsets of lines that begin with `import` or `export`. */
  readonly modules: readonly number[];
}

/** Two characters that stand for nothing (private use). */
const BRACE = '\uE000';
const MODULE = '\uE001';

/**
 * Takes from a text all that the parser would read as program: it takes exponential time over some expressions,
 * so that 150 characters can hold it for a minute. Opening braces and the first letter of import and export
 * become letters without meaning; whether they stood in code, where they are plain text, is told by
 * `isInCode` once the text is parsed.
 */
export function maskProgram(text: string): MaskedText {
  const braces = [...text.matchAll(/\{/g)]
    .map(({ index }) => index)
    .filter((index) => backslashesBefore(text, index) % 2 === 0);
  const lines = [...text.matchAll(/^(?:import|export)(?=[\s{])/gm)];
  const masked = text.replace(/\{/g, BRACE).replace(/^[ie](?=(?:mport|xport)[\s\uE000])/gm, MODULE);
  return { text: masked, braces, modules: lines.map(({ index }) => index) };
}

/** A part of a parsed masked text, as it was. Lines that began with import or export are told before it matters. */
export function unmasked(value: string): string {
  return value.replaceAll(BRACE, '{');
}

/** Whether one of the nodes is code around the offset. */
export function isInCode(nodes: readonly MdastNode[], offset: number): boolean {
  return nodes.some(({ type, position }) => {
    if ((type !== 'code' && type !== 'inlineCode') || !position) return false;
    return (position.start.offset ?? 0) <= offset && offset < (position.end.offset ?? 0);
  });
}

/** Whether one of the nodes is a paragraph or heading that begins at the offset. */
export function beginsText(nodes: readonly MdastNode[], offset: number): boolean {
  return nodes.some(
    ({ type, position }) => (type === 'paragraph' || type === 'heading') && position?.start.offset === offset,
  );
}

function backslashesBefore(text: string, index: number): number {
  let count = 0;
  while (text[index - 1 - count] === '\\') count += 1;
  return count;
}
