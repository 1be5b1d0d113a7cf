import { CST, Lexer } from 'yaml';

/** Deeper than kitchen.yaml goes three times over. */
export const DEEPEST = 12;
/** About 40,000 keys with their values, or 2,000 foods with all their facts. */
const MOST_TOKENS = 300_000;

const OWN_MARKS: ReadonlySet<string> = new Set([CST.DOCUMENT, CST.SCALAR, CST.FLOW_END]);

/** What a text must not have before it is worth parsing, and where it has it. */
export interface OverLimit {
  readonly code: 'yaml-too-deep' | 'yaml-too-many' | 'yaml-documents';
  /** Offset into the text. */
  readonly at: number;
}

/**
 * Looks only at the marks of a YAML text, not at their sense, so that a hostile file is refused long before it
 * is built: too many marks, brackets or list marks nested too deep, or a directive.
 */
export function overLimit(text: string): OverLimit | undefined {
  if (isSurelyWithin(text)) return undefined;
  return firstOver(text);
}

/**
 * Whether no reading of the text can be over a limit, told without a lexer, which takes as long as parsing does: every
 * sign counts that could be a mark. Inside of brackets only what cannot hide one that closes is let pass.
 */
export function isSurelyWithin(text: string): boolean {
  // A sign makes at most three marks: that a document begins, that a text does, and itself.
  if (text.length * 3 > MOST_TOKENS || /^%/m.test(text)) return false;
  let brackets = 0;
  let onThisLine = 0;
  for (let at = 0; at < text.length; at += 1) {
    switch (text[at]) {
      case '[':
      case '{':
        brackets += 1;
        if (brackets > DEEPEST) return false;
        break;
      case ']':
      case '}':
        if (brackets > 0) brackets -= 1;
        break;
      case '-':
      case '?':
        onThisLine += 1;
        if (onThisLine > DEEPEST) return false;
        break;
      case '\n':
      case '\r':
        onThisLine = 0;
        break;
      case '"':
      case "'":
      case '#':
      case '!':
      case '&':
      case '*':
        if (brackets > 0) return false;
        break;
    }
  }
  return true;
}

/** The same by the lexer's own marks. */
export function firstOver(text: string): OverLimit | undefined {
  let at = 0;
  let tokens = 0;
  let brackets = 0;
  let onThisLine = 0;
  let isText = false;
  for (const token of new Lexer().lex(text)) {
    tokens += 1;
    if (tokens > MOST_TOKENS) return { code: 'yaml-too-many', at };
    // What follows the lexer's mark for a text is that text, even where it looks like a sign.
    switch (isText ? null : CST.tokenType(token)) {
      case 'flow-map-start':
      case 'flow-seq-start':
        brackets += 1;
        break;
      case 'flow-map-end':
      case 'flow-seq-end':
        brackets -= 1;
        break;
      case 'seq-item-ind':
      case 'explicit-key-ind':
        onThisLine += 1;
        break;
      case 'newline':
        onThisLine = 0;
        break;
      case 'directive-line':
        return { code: 'yaml-documents', at };
    }
    if (brackets > DEEPEST || onThisLine > DEEPEST) return { code: 'yaml-too-deep', at };
    // The lexer's own marks (here begins a document, a text) stand for no character of the file.
    if (isText || !OWN_MARKS.has(token)) at += token.length;
    isText = !isText && token === CST.SCALAR;
  }
  return undefined;
}
