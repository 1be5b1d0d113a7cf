import { relative } from 'node:path';
import type { Finding } from '../../book/findings/finding.ts';
import { findingsJson, printFindings } from '../../book/findings/print-findings.ts';
import { findingAsRead, wayOutAsRead } from '../../exports/words/finding-as-read.ts';
import type { Call } from './command.ts';

/**
 * Prints findings for people, with paths from where the caller stands, or as JSON. What is wrong is told in the figures
 * and the spelling of the kitchen's locale, where it is known; decimals and days in the way out stay as files have them.
 */
export function sayFindings(call: Call, findings: readonly Finding[], locale?: string): void {
  const read = locale
    ? findings.map((each) => ({
        ...each,
        what: findingAsRead(each.what, locale),
        wayOut: wayOutAsRead(each.wayOut, locale),
      }))
    : findings;
  call.write(call.json ? findingsJson(findings) : printFindings(read, contentFolder(call)));
}

/** The content folder as the caller would type it. */
export function contentFolder({ contentDir }: Pick<Call, 'contentDir'>): string {
  const { INIT_CWD: callerDir = process.cwd() } = process.env;
  return relative(callerDir, contentDir) || '.';
}
