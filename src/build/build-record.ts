import { lstatSync, readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { sha256Of } from '../files/digest.ts';
import { filesIn, recordFile, timesFile } from './own-files.ts';

/** What is remembered of one file of the output, so that an equal one need not be made again. */
export interface FileRecord {
  /** The cache key of the last step: digest of the view it was rendered from, or of its bytes where it was given finished. */
  key: string;
  /** The cache key of the first step, where there is one: digest of all that the view was made from. Asked first, since it spares making the view. */
  from?: string;
  /** Its length in bytes; a file of another length has been changed and is made again. */
  size: number;
  /** SHA-256 of its bytes in hex, as other programs give it; missing in records of an earlier Salver. */
  sha256?: string;
  /**
   * Whose it is, where it stays after its day: the digests of the offers that its events have accepted. Missing in
   * records of an earlier Salver.
   */
  of?: string[];
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
  /** The part that only work can tell the files of. */
  part?: PartRecord;
}

/** What is remembered of the site's part: its cache key, a digest of all it was made from, and its files. */
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
    // Missing or damaged: everything is made again.
  }
  return { version: 1, files: {} };
}

/** The last output, as far as files of it may be taken over. */
export interface LastOutput {
  readonly dir: string;
  readonly record: BuildRecord;
  /** When each file was last written, by the clock of its file system. */
  readonly times: Readonly<Record<string, number>>;
  /** Whether each file is compared with its SHA-256, touched or not. */
  readonly verify: boolean;
}

/** Reads what is remembered of an output; nothing where there is none. */
export async function readLastOutput(dir: string, verify: boolean): Promise<LastOutput> {
  return { dir, record: await readRecord(dir), times: await readTimes(dir), verify };
}

/** The last output's file, if it was made from the same and still lies there as it was written. */
export function unchanged(
  last: LastOutput,
  file: string,
  made: { readonly key: string } | { readonly from: string },
): FileRecord | undefined {
  const known = knownOf(last, file);
  if (!known || ('key' in made ? known.key !== made.key : known.from !== made.from)) return undefined;
  return stateOf(last, file) === 'as written' ? known : undefined;
}

/** What is remembered of a file, if anything. */
export function knownOf({ record }: LastOutput, file: string): FileRecord | undefined {
  return Object.hasOwn(record.files, file) ? record.files[file] : undefined;
}

/**
 * How a file lies in the last output. Its bytes are compared where its time is not the one it was written at (a copy,
 * an edit that keeps the length), and all of them where that is asked for. In an output of an earlier Salver, which
 * kept neither, its length alone can be compared.
 */
export function stateOf(last: LastOutput, file: string): 'as written' | 'changed' | 'gone' {
  const known = knownOf(last, file);
  const path = join(last.dir, file);
  try {
    const found = lstatSync(path, { throwIfNoEntry: false });
    if (!known || !found) return 'gone';
    if (!found.isFile() || found.size !== known.size) return 'changed';
    const isTouched = !Object.hasOwn(last.times, file) || last.times[file] !== found.mtimeMs;
    if (known.sha256 === undefined || (!isTouched && !last.verify)) return 'as written';
    return sha256Of(readFileSync(path)) === known.sha256 ? 'as written' : 'changed';
  } catch {
    // One that cannot be looked at is made again.
    return 'changed';
  }
}

async function readTimes(out: string): Promise<Record<string, number>> {
  try {
    const found = JSON.parse(await readFile(join(out, timesFile), 'utf8')) as {
      version: 1;
      times: Record<string, number>;
    };
    if (found.version === 1 && typeof found.times === 'object') return found.times ?? {};
  } catch {
    // Missing or damaged: every file is compared by its bytes.
  }
  return {};
}

/** When each file of an output was written, in milliseconds; beside the record, which is equal for equal outputs. */
export function timesText(dir: string): string {
  const times = filesIn(dir)
    .sort()
    .map((file) => [file, lstatSync(join(dir, file)).mtimeMs] as const);
  return `${JSON.stringify({ version: 1, times: Object.fromEntries(times) })}\n`;
}

/** The record as text, files in order, so that two equal outputs have equal records. */
export function recordText(files: Map<string, FileRecord>, part?: PartRecord): string {
  const sorted = [...files].sort(([a], [b]) => (a < b ? -1 : 1));
  return `${JSON.stringify({ version: 1, files: Object.fromEntries(sorted), part } satisfies BuildRecord, undefined, 1)}\n`;
}
