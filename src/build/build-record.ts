import { statSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { recordFile } from './publish.ts';

/** What is remembered of one file of the output, so that an equal one need not be made again. */
export interface FileRecord {
  /** Digest of what the file was made from, or of its bytes where it was given finished. */
  key: string;
  /** Digest of all that this was made from in its turn, where it can be told without making it. */
  from?: string;
  /** Its length in bytes; a file of another length has been touched and is made again. */
  size: number;
  /**
   * What a page needs beside it: styles, scripts, fonts and photos of the app by their names, files of the brand by
   * their paths from its side's root, with a slash in front.
   */
  assets?: string[];
}

/** What an output consists of; stands at its root, in neither of the two sites. */
export interface BuildRecord {
  version: 1;
  files: Record<string, FileRecord>;
  /** The part that only work can tell the files of: digest of all it was made from, and its files. */
  part?: PartRecord;
}

/** What is remembered of the site's part. */
export interface PartRecord {
  from: string;
  files: string[];
}

/** What is remembered of the last output: nothing where there is none, or none that can be read. */
export async function readRecord(out: string): Promise<BuildRecord> {
  try {
    const record = JSON.parse(await readFile(join(out, recordFile), 'utf8')) as BuildRecord;
    if (record.version === 1 && typeof record.files === 'object') return record;
  } catch {
    // Missing or damaged: everything is made anew.
  }
  return { version: 1, files: {} };
}

/** The last output's file, if it was made from the same and still lies there as it was written. */
export function unchanged(
  out: string,
  record: BuildRecord,
  file: string,
  made: { readonly key: string } | { readonly from: string },
): FileRecord | undefined {
  const known = Object.hasOwn(record.files, file) ? record.files[file] : undefined;
  if (!known || ('key' in made ? known.key !== made.key : known.from !== made.from)) return undefined;
  return sizeOf(join(out, file)) === known.size ? known : undefined;
}

function sizeOf(path: string): number | undefined {
  try {
    const found = statSync(path, { throwIfNoEntry: false });
    return found?.isFile() ? found.size : undefined;
  } catch {
    // One that cannot be looked at is made again.
    return undefined;
  }
}

/** The record as text, files in order, so that two equal outputs have equal records. */
export function recordText(files: Map<string, FileRecord>, part?: PartRecord): string {
  const sorted = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  return `${JSON.stringify({ version: 1, files: Object.fromEntries(sorted), part } satisfies BuildRecord, undefined, 1)}\n`;
}
