import type { Finding } from './finding.ts';
import type { Severity } from './severity.ts';

/** The findings in the order of file, line and column, the same on every machine. */
export function sortFindings(findings: readonly Finding[]): Finding[] {
  return [...findings].sort(
    (one, other) =>
      inOrder(one.place.file, other.place.file) ||
      one.place.line - other.place.line ||
      one.place.column - other.place.column ||
      inOrder(one.code, other.code) ||
      inOrder(one.what, other.what),
  );
}

/**
 * Findings for people, one a line and sorted, with a count at the end. `folder` is the content folder as the
 * reader knows it, so that an editor can jump to `content/recipes/x.mdx:12:3`.
 */
export function printFindings(findings: readonly Finding[], folder: string): string {
  const lines = sortFindings(findings).map(({ code, severity, place, what, wayOut }) => {
    const where = `${folder.replace(/\/+$/, '')}/${place.file}:${place.line}:${place.column}`;
    return oneLine(`${where} ${severity} ${code} ${what} — ${wayOut}`);
  });
  return `${[...lines, `${countFindings(findings)}.`].join('\n')}\n`;
}

/** Findings for programs: sorted, with the three counts. */
export function findingsJson(findings: readonly Finding[]): string {
  const list = sortFindings(findings).map(({ code, severity, place, what, wayOut }) => {
    return {
      severity,
      code,
      file: place.file,
      line: place.line,
      column: place.column,
      what,
      wayOut,
    };
  });
  const counts = {
    errors: count(findings, 'error'),
    warnings: count(findings, 'warning'),
  };
  return `${JSON.stringify({ ...counts, notes: count(findings, 'note'), findings: list }, undefined, 2)}\n`;
}

/** `2 errors, 1 warning`, naming only what there is; `Nothing found` where there is nothing. */
export function countFindings(findings: readonly Finding[]): string {
  const parts = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const number = count(findings, severity);
    return number === 0 ? [] : [`${number} ${severity}${number === 1 ? '' : 's'}`];
  });
  return parts.join(', ') || 'Nothing found';
}

function count(findings: readonly Finding[], severity: Severity): number {
  return findings.filter((each) => each.severity === severity).length;
}

/** Code units, not a locale's order, which differs between machines. */
function inOrder(one: string, other: string): number {
  return one < other ? -1 : one > other ? 1 : 0;
}

/** A terminal must never be steered by what stands in a file or in a file's name. */
function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').replace(/\p{C}/gu, '\uFFFD');
}
