import type { Finding } from './finding.ts';
import type { Source } from './place-of.ts';

/**
 * Reads YAML text (failsafe: every scalar stays text). `firstLine` is the line of the file at which the text
 * begins. Never throws; without a source the text could not be read at all.
 */
export function readYaml(
  file: string,
  text: string,
  firstLine = 1,
): { source: Source | undefined; findings: Finding[] } {
  throw new Error(`${file} ${text.length} ${firstLine}`);
}
