import type { ErrorCode, YAMLError } from 'yaml';
import type { FindingCode } from '../findings/catalogue.ts';

/** What an error of the parser means and what to do, in a cook's words; its finding where it is not plain syntax. */
export interface ErrorWords {
  readonly code?: FindingCode;
  readonly what: string;
  readonly wayOut: string;
}

const QUOTE_IT = 'put the whole text in quotation marks';
const WRITE_OUT = 'write the value out where it is used; text that starts this way needs quotation marks';

/** The words for an error of the parser (yaml 2.9); one that is not known here is shown in the parser's own. */
export function wordsOfError({ message, code }: YAMLError): ErrorWords {
  const words = MISSING_OR_UNEXPECTED.find(([start]) => message.startsWith(start))?.[1] ?? BY_CODE[code];
  return (
    words ?? {
      what: `this is not YAML (${message})`,
      wayOut: `compare the line with the ones around it, or ${QUOTE_IT}`,
    }
  );
}

/** The codes that stand for many things, distinguished by how their messages begin (yaml 2.9). */
const MISSING_OR_UNEXPECTED: readonly (readonly [string, ErrorWords])[] = [
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

const BY_CODE: Partial<Record<ErrorCode, ErrorWords>> = {
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
