import type { Source } from '../files/place-of.ts';
import { plainText } from '../files/plain-text.ts';
import { readYaml, type YamlReader } from '../files/yaml-source.ts';
import { type Finding, finding } from '../findings/finding.ts';

/** In UTF-16 units. */
const LONGEST = 64 * 1024;

/** The text below the data of a file. */
export interface Body {
  readonly text: string;
  /** The line of the file at which the text begins, from 1. */
  readonly line: number;
}

/** What a file with data on top holds. */
export interface FrontMatter {
  readonly source: Source | undefined;
  readonly body: Body | undefined;
  readonly findings: readonly Finding[];
}

/**
 * Parts a file into the data between two lines of three hyphens, the first of them its first line, and the text
 * below. Never throws; what is wrong with the data never hides the text, nor the other way round.
 */
export function readFrontMatter(file: string, text: string, yaml: YamlReader = readYaml): FrontMatter {
  const lines = plainText(text).split('\n');
  const start = { file, line: 1, column: 1 };
  if (!isFence(lines[0])) {
    const what = 'the file does not start with its data';
    const wayOut = 'write --- on the first line, the data below it, and --- again';
    return {
      source: undefined,
      body: undefined,
      findings: [finding('front-matter-missing', start, what, wayOut)],
    };
  }
  const end = lines.findIndex((line, index) => index > 0 && isFence(line));
  if (end === -1) {
    const what = 'the data that starts here has no end';
    const wayOut = 'write --- on its own line below the data';
    return {
      source: undefined,
      body: undefined,
      findings: [finding('front-matter-unclosed', start, what, wayOut)],
    };
  }
  const body = { text: lines.slice(end + 1).join('\n'), line: end + 2 };
  const data = lines.slice(1, end).join('\n');
  if (data.length > LONGEST) {
    const what = `the data on top has ${data.length.toLocaleString('en-US')} characters`;
    const tooLarge = finding('file-too-large', start, what, 'shorten it; 65,536 is the most');
    return { source: undefined, body, findings: [tooLarge] };
  }
  return { ...yaml(file, data, 2), body };
}

function isFence(line: string | undefined): boolean {
  return line !== undefined && /^---[ \t]*$/.test(line);
}
