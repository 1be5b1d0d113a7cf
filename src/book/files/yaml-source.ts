import { LineCounter, parseDocument } from 'yaml';
import { type Finding, finding, type Place } from '../findings/finding.ts';
import { underNewNames } from './older-names.ts';
import { isReported, placeOf, type Source } from './place-of.ts';
import { controlFinding, placeInText, plainText } from './plain-text.ts';
import { syntaxProblems } from './yaml-errors.ts';
import { DEEPEST, type OverLimit, overLimit } from './yaml-limits.ts';
import { readTree } from './yaml-tree.ts';

/** In UTF-16 units: a thousand foods with all their facts take a tenth of it. */
const LONGEST = 1024 * 1024;

/** What has become of a YAML text. */
export interface ReadYaml {
  readonly source: Source | undefined;
  readonly findings: readonly Finding[];
}

/** See {@link readYaml}. */
export type YamlReader = (file: string, text: string, firstLine?: number) => ReadYaml;

/**
 * Reads YAML text (failsafe: every scalar stays text). `firstLine` is the line of the file at which the text
 * begins. Never throws; without a source the text could not be read at all.
 */
export function readYaml(file: string, text: string, firstLine = 1): ReadYaml {
  const plain = plainText(text);
  const refused = refusal(file, plain, firstLine);
  if (refused) return { source: undefined, findings: [refused] };

  const lines = new LineCounter();
  // The parser's own search for duplicate keys is quadratic; readTree has a linear one.
  const options = {
    schema: 'failsafe',
    uniqueKeys: false,
    prettyErrors: false,
    lineCounter: lines,
  } as const;
  const document = parseDocument(plain, options);
  const placeAt = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return {
      file,
      line: firstLine + Math.max(line, 1) - 1,
      column: Math.max(col, 1),
    };
  };
  const problems = syntaxProblems(document, (offset) => lines.linePos(offset).line);
  if (problems.length > 0) {
    const findings = problems.map(({ code, at, what, wayOut }) => finding(code, placeAt(at), what, wayOut));
    return { source: undefined, findings };
  }
  const tree = readTree(document.contents, plain, placeAt);
  underNewNames(file, tree);
  const { data, root, findings } = tree;
  const source: Source = {
    file,
    data,
    placeOf: (path, part) => placeOf(root, path, part),
    isReported: (path) => isReported(root, path),
  };
  return { source, findings };
}

/** Why the text is not worth parsing. */
function refusal(file: string, text: string, firstLine: number): Finding | undefined {
  if (text.length > LONGEST) {
    const what = `the file has ${text.length.toLocaleString('en-US')} characters`;
    return finding(
      'file-too-large',
      { file, line: firstLine, column: 1 },
      what,
      'split it; 1,048,576 is the most',
    );
  }
  const control = controlFinding(file, text, firstLine);
  if (control) return control;
  const over = overLimit(text);
  return over && finding(over.code, placeInText(file, text, over.at, firstLine), ...OVER_LIMIT[over.code]);
}

const OVER_LIMIT: Record<OverLimit['code'], [what: string, wayOut: string]> = {
  'yaml-too-many': ['the file has more than about 40,000 keys and values', 'split it into several files'],
  'yaml-too-deep': [
    `lists and mappings are nested more than ${DEEPEST} deep`,
    'use fewer levels; text with brackets needs quotation marks',
  ],
  'yaml-documents': [
    'the line is a YAML directive',
    'delete the line; text that starts with % needs quotation marks',
  ],
};
