import type { z } from 'zod';
import type { ContentText } from '../files/content-texts.ts';
import { readJson } from '../files/read-json.ts';
import { finding } from '../findings/finding.ts';
import type { Ledger } from '../ledger.ts';

/** Where a record stands. */
export interface WrittenIn {
  readonly file: string;
}

/** Records of a proposal, numbered in a folder of their own. */
export interface NumberedRecords<T> {
  /** By proposal, in the order written, each with its file. */
  readonly records: Map<string, (T & WrittenIn)[]>;
  /** The proposals of which some record cannot be used, as far as file names tell, with the reason. */
  readonly lost: Map<string, string>;
}

/**
 * Reads records that are called `<folder>/<proposal>-001.json`. One that cannot be read, or holds another proposal's,
 * is an error and counts for nobody.
 */
export function readNumbered<T extends { readonly proposal: string }>(
  ledger: Ledger,
  files: readonly ContentText[],
  schema: z.ZodType<T>,
  folder: string,
  holds: (proposal: string) => string,
): NumberedRecords<T> {
  const records = new Map<string, (T & WrittenIn)[]>();
  const lost = new Map<string, string>();
  for (const { id, file, text } of files) {
    const named = id.replace(/-\d{3}$/, '');
    const read = text === undefined ? undefined : readJson(file, text, schema);
    if (!read || 'problem' in read) {
      if (read) ledger.findings.push(read.problem);
      lost.set(named, `${file} can’t be read`);
      continue;
    }
    const { proposal } = read.value;
    if (!new RegExp(`^${proposal}-\\d{3}$`).test(id)) {
      const what = `the file holds ${holds(proposal)}`;
      const wayOut = `name it ${folder}/${proposal}-001.json, or with the next free number`;
      ledger.findings.push(finding('record-name', { file, line: 1, column: 1 }, what, wayOut));
      for (const each of [named, proposal]) lost.set(each, `${file} has the wrong name`);
      continue;
    }
    records.set(proposal, [...(records.get(proposal) ?? []), { ...read.value, file }]);
  }
  return { records, lost };
}
