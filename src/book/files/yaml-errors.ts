import { type Document, type ErrorCode, isScalar, type Range, visit, type YAMLError } from 'yaml';
import type { FindingCode } from '../findings/catalogue.ts';

/** What the parser stumbled over, in a cook's words. */
export interface SyntaxProblem {
  readonly code: FindingCode;
  /** Offset into the text. */
  readonly at: number;
  readonly what: string;
  readonly wayOut: string;
}

type Words = Pick<SyntaxProblem, 'what' | 'wayOut'> & { code?: FindingCode };

const QUOTE_IT = 'put the whole text in quotation marks';
const WRITE_OUT = 'write the value out where it is used; text that starts this way needs quotation marks';

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
  const words = MISSING_OR_UNEXPECTED.find(([start]) => error.message.startsWith(start))?.[1];
  return {
    code: 'yaml-syntax',
    at: error.pos[0],
    ...(words ?? BY_CODE[error.code] ?? unknown(error)),
  };
}

function unknown(error: YAMLError): Words {
  return {
    what: `this is not YAML (${error.message})`,
    wayOut: `compare the line with the ones around it, or ${QUOTE_IT}`,
  };
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

/** The codes that stand for many things, distinguished by how their messages begin (yaml 2.9). */
const MISSING_OR_UNEXPECTED: readonly (readonly [string, Words])[] = [
  [
    'Implicit map keys need',
    {
      what: 'there is no colon after this key',
      wayOut: 'write a colon, a space and the value',
    },
  ],
  [
    'Block collections are not',
    {
      what: 'a comma is missing in the brackets',
      wayOut: 'put a comma between the items',
    },
  ],
  [
    'Missing , ',
    {
      what: 'a comma is missing in the brackets',
      wayOut: 'put a comma between the items',
    },
  ],
  [
    'Missing space after :',
    {
      what: 'there is no space after the colon',
      wayOut: 'write a space after it',
    },
  ],
  [
    'Comments must be',
    {
      what: 'a # comes right after a value',
      wayOut: 'put a space before the #',
    },
  ],
  [
    'Sequence item without',
    {
      what: 'an item in this list has no hyphen',
      wayOut: 'start it with a hyphen',
    },
  ],
  [
    'All sequence items',
    {
      what: 'the items of this list do not line up',
      wayOut: 'indent them alike',
    },
  ],
  ['Unexpected empty item', { what: 'there is nothing between two commas', wayOut: 'delete one comma' }],
  ['Unexpected ,', { what: 'there is one comma too many', wayOut: 'delete it' }],
  [
    'Block scalar header',
    {
      what: 'text comes right after | or >',
      wayOut: 'start the text on the next line',
    },
  ],
  [
    'Unexpected block-seq-ind',
    {
      what: 'a list starts on the same line as its key',
      wayOut: 'start it on the next line, or write it with commas in brackets',
    },
  ],
  [
    'Unexpected flow-',
    {
      what: 'a closing bracket has no opening one',
      wayOut: `delete it, or ${QUOTE_IT}`,
    },
  ],
];

const BY_CODE: Partial<Record<ErrorCode, Words>> = {
  BLOCK_AS_IMPLICIT_KEY: {
    what: 'there is a second key inside a value',
    wayOut: 'put text with a colon in quotation marks, or indent this key like the others',
  },
  MULTILINE_IMPLICIT_KEY: {
    what: 'this line has no colon, so the next one runs into it',
    wayOut: 'write a colon after the key',
  },
  BAD_SCALAR_START: {
    what: 'text can’t start with this character',
    wayOut: QUOTE_IT,
  },
  TAB_AS_INDENT: {
    what: 'the line is indented with a tab',
    wayOut: 'indent with spaces',
  },
  BAD_INDENT: {
    what: 'the line does not line up with the lines it belongs to',
    wayOut: 'indent it like the others',
  },
  BAD_DQ_ESCAPE: {
    what: 'a backslash in double quotation marks means something else here',
    wayOut: 'write it twice, or use single quotation marks',
  },
  BAD_ALIAS: {
    code: 'yaml-alias',
    what: 'text starts with * or &',
    wayOut: WRITE_OUT,
  },
  ALIAS_PROPS: {
    code: 'yaml-alias',
    what: 'text starts with * or &',
    wayOut: WRITE_OUT,
  },
  MULTIPLE_ANCHORS: {
    code: 'yaml-alias',
    what: 'text starts with * or &',
    wayOut: WRITE_OUT,
  },
  MULTIPLE_TAGS: {
    code: 'yaml-tag',
    what: 'text starts with !',
    wayOut: QUOTE_IT,
  },
  TAG_RESOLVE_FAILED: {
    code: 'yaml-tag',
    what: 'text starts with !',
    wayOut: QUOTE_IT,
  },
  MULTIPLE_DOCS: {
    code: 'yaml-documents',
    what: 'a second document starts here',
    wayOut: 'delete the line of hyphens or dots, or split the file',
  },
  BAD_DIRECTIVE: {
    code: 'yaml-documents',
    what: 'the line is a YAML directive',
    wayOut: 'delete the line; text that starts with % needs quotation marks',
  },
  KEY_OVER_1024_CHARS: {
    code: 'key-form',
    what: 'the key is longer than 1,024 characters',
    wayOut: 'shorten it',
  },
  RESOURCE_EXHAUSTION: {
    code: 'yaml-too-deep',
    what: 'lists and mappings are nested too deep',
    wayOut: 'use fewer levels',
  },
};
