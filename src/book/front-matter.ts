import type { Finding } from './finding.ts';
import type { Source } from './place-of.ts';

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
  readonly findings: Finding[];
}

export function readFrontMatter(file: string, text: string): FrontMatter {
  throw new Error(`${file} ${text.length}`);
}
