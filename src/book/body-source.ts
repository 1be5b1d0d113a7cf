import type { Finding, Place } from './finding.ts';
import type { Body } from './front-matter.ts';

/** A picture or link that a text holds. */
export interface Reference {
  /** The address as the text means it (escapes resolved). */
  readonly to: string;
  readonly place: Place;
}

/** What a text holds, and what is wrong with it. */
export interface CheckedBody {
  readonly findings: Finding[];
  /** Files of the content folder, relative to the text's own folder. Only allowed ones. */
  readonly pictures: readonly Reference[];
  /** Only allowed ones. */
  readonly links: readonly Reference[];
}

export function checkBody(
  file: string,
  body: Body,
  kind: 'markdown' | 'mdx',
  components: readonly string[],
): CheckedBody {
  throw new Error(`${file} ${body.line} ${kind} ${components.length}`);
}
