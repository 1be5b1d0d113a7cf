import { relative } from 'node:path';
import type { Finding } from '../../book/findings/finding.ts';
import { findingsJson, printFindings } from '../../book/findings/print-findings.ts';
import type { Call } from './command.ts';

/** Prints findings for people, with paths from where the caller stands, or as JSON. */
export function sayFindings(call: Call, findings: readonly Finding[]): void {
  call.write(call.json ? findingsJson(findings) : printFindings(findings, contentFolder(call)));
}

/** The content folder as the caller would type it. */
export function contentFolder({ contentDir }: Pick<Call, 'contentDir'>): string {
  const { INIT_CWD: callerDir = process.cwd() } = process.env;
  return relative(callerDir, contentDir) || '.';
}
