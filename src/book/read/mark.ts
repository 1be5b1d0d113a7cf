import type { Mark } from '../../engine/kitchen/mark.ts';
import type { ContentFolder } from '../files/list-content.ts';
import type { Source } from '../files/place-of.ts';
import { readText } from '../files/read-text.ts';
import { finding } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import { quoted } from '../findings/quoted.ts';
import { type Ledger, placeAt } from '../ledger.ts';
import { checkMark } from './mark-form.ts';

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
