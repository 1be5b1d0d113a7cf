import { type Document, isScalar, type Range, visit, type YAMLError } from 'yaml';
import type { FindingCode } from '../findings/catalogue.ts';
import { wordsOfError } from './yaml-error-words.ts';

/** What the parser stumbled over, in a cook's words. */
export interface SyntaxProblem {
  readonly code: FindingCode;
  /** Offset into the text. */
  readonly at: number;
  readonly what: string;
  readonly wayOut: string;
}

/**
 * The parser's errors, translated. One slip often makes several errors on one line, and what follows an
 * unclosed mark is noise, so only the first of each line is kept, and not more than three of a file.
 */
export function syntaxProblems(
  document: Document.Parsed,
  lineOf: (offset: number) => number,
): SyntaxProblem[] {
  const problems = new Map<number, SyntaxProblem>();
  for (const error of document.errors) {
    const problem =
      quoteProblem(document, error, lineOf) ?? bracketProblem(document, error) ?? translated(error);
    const line = lineOf(problem.at);
    if (!problems.has(line)) problems.set(line, problem);
    if (problems.size === 3) break;
  }
  return [...problems.values()];
}

function translated(error: YAMLError): SyntaxProblem {
  return { code: 'yaml-syntax', at: error.pos[0], ...wordsOfError(error) };
}

/**
 * A quotation mark that is not closed shows only at the next one, or at the end of the file. The author needs
 * the place where it was opened.
 */
function quoteProblem(
  document: Document.Parsed,
  error: YAMLError,
  lineOf: (offset: number) => number,
): SyntaxProblem | undefined {
  const isOpen = /^Missing closing ["']quote/.test(error.message);
  const isAfter = error.code === 'UNEXPECTED_TOKEN' && error.message.endsWith('at node end');
  if (!isOpen && !isAfter) return undefined;
  const range = lastQuoteBefore(document, error.pos[0]);
  if (!range) return undefined;
  if (isOpen || lineOf(range[0]) < lineOf(error.pos[0])) {
    return {
      code: 'yaml-syntax',
      at: range[0],
      what: 'the quotation mark opened here is not closed on its line',
      wayOut: 'close it, or leave it out',
    };
  }
  return {
    code: 'yaml-syntax',
    at: error.pos[0],
    what: 'text follows the closing quotation mark',
    wayOut: 'put the whole text between the marks; an apostrophe within is safe in "double" ones',
  };
}

/** A bracket that is not closed shows only where the next line steps back, or at the end of the file. */
function bracketProblem(document: Document.Parsed, error: YAMLError): SyntaxProblem | undefined {
  if (!/^Flow (map|sequence) in block collection/.test(error.message)) return undefined;
  const range = lastBracketBefore(document, error.pos[0]);
  if (!range) return undefined;
  return {
    code: 'yaml-syntax',
    at: range[0],
    what: 'the bracket opened here is not closed, or closed on a line that is not indented',
    wayOut: 'close it, or put text that starts with a bracket in quotation marks',
  };
}

/** Where the last quoted text stands that begins before the offset. */
function lastQuoteBefore(document: Document.Parsed, offset: number): Range | undefined {
  let found: Range | undefined;
  visit(document, {
    Scalar(_, node) {
      if (!isScalar(node) || !node.type?.startsWith('QUOTE_')) return;
      if (node.range && node.range[0] < offset) found = node.range;
    },
  });
  return found;
}

/** Where the last list or mapping in brackets stands that begins before the offset. */
function lastBracketBefore(document: Document.Parsed, offset: number): Range | undefined {
  let found: Range | undefined;
  visit(document, {
    Collection(_, node) {
      if (node.flow && node.range && node.range[0] < offset) found = node.range;
    },
  });
  return found;
}
