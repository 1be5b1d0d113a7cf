import type { Mark } from '../engine/kitchen/mark.ts';
import { checkMark } from './check-mark.ts';
import { finding } from './finding.ts';
import { type Ledger, placeAt } from './ledger.ts';
import type { ContentFolder } from './list-content.ts';
import { nearest } from './nearest.ts';
import type { Source } from './place-of.ts';
import { quoted } from './quoted.ts';
import { readText } from './read-text.ts';

/**
 * The mark that kitchen.yaml names; undefined where it names none, and, with findings, where the drawing cannot be
 * shown. A kitchen without its mark still feeds its guests, so nothing else is held back. Drawings that nobody names
 * are told.
 */
export function readMark(
  ledger: Ledger,
  { drawings }: ContentFolder,
  source: Source,
  named: string | undefined,
): Mark | undefined {
  const start = (file: string) => ({ file, line: 1, column: 1 });
  for (const file of drawings.keys()) {
    if (file === named) continue;
    const wayOut = `write mark: ${file} in kitchen.yaml, or delete it`;
    ledger.findings.push(finding('stray-file', start(file), 'this drawing is not used', wayOut));
  }
  if (named === undefined) return undefined;
  const path = drawings.get(named);
  if (path === undefined) {
    const near = nearest(named, [...drawings.keys()]);
    const wayOut =
      near === undefined
        ? 'save an SVG file in the content folder and write its path, such as brand/mark.svg'
        : `did you mean ${near}?`;
    const place = placeAt({ source, base: [] }, ['mark']);
    ledger.findings.push(finding('mark-missing', place, `there is no drawing ${quoted(named)}`, wayOut));
    return undefined;
  }
  const read = readText(path, named);
  const checked = read.text === undefined ? undefined : checkMark(named, read.text);
  ledger.findings.push(...read.findings, ...(checked?.findings ?? []));
  return checked?.mark;
}
