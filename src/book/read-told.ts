import { type Told, toldSchema } from '../schema/told.ts';
import type { ContentText } from './content-texts.ts';
import { finding } from './finding.ts';
import type { Ledger } from './ledger.ts';
import { readJson } from './read-json.ts';

/**
 * What clients were told, by proposal, in the order written. A record that cannot be read is an error and counts as
 * not told: to tell a client twice harms nobody.
 */
export function readTold(ledger: Ledger, files: readonly ContentText[]): Map<string, Told[]> {
  const told = new Map<string, Told[]>();
  for (const { id, file, text } of files) {
    const read = text === undefined ? undefined : readJson(file, text, toldSchema);
    if (!read) continue;
    if ('problem' in read) {
      ledger.findings.push(read.problem);
      continue;
    }
    const { proposal } = read.value;
    if (!new RegExp(`^${proposal}-\\d{3}$`).test(id)) {
      const what = `the file holds what the client of ${proposal} was told`;
      const wayOut = `name it told/${proposal}-001.json, or with the next free number`;
      ledger.findings.push(finding('record-name', { file, line: 1, column: 1 }, what, wayOut));
      continue;
    }
    told.set(proposal, [...(told.get(proposal) ?? []), read.value]);
  }
  return told;
}
