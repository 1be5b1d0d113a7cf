import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { type Finding, finding } from '../findings/finding.ts';
import { plainText } from './plain-text.ts';
import { unreadable } from './walk-folder.ts';

/** In bytes: as many as the largest list of prices may have. What kinds of text may have is told where they are read. */
const LARGEST = 4 * 1024 * 1024;

/** A file's text, or why there is none. */
export interface ReadText {
  text: string | undefined;
  /** Of a file that is not UTF-8, its text with what cannot be decoded replaced: enough to see which ids it names. */
  seen?: string;
  findings: Finding[];
}

/**
 * The text of a file, UTF-8, without byte order mark and with plain line feeds; without text there is a finding,
 * which names the file `file`. Never throws, and never waits for what is not a plain file.
 */
export function readText(path: string, file: string): ReadText {
  const start = { file, line: 1, column: 1 };
  const refuse = (found: Finding): ReturnType<typeof readText> => ({ text: undefined, findings: [found] });
  let bytes: Uint8Array;
  try {
    const read = readPlainFile(path);
    if (read === 'no file') {
      return refuse(finding('unreadable-file', start, 'this is not a plain file', 'put a plain file here'));
    }
    if (typeof read === 'number') {
      const what = `the file has ${read.toLocaleString('en-US')} bytes`;
      return refuse(finding('file-too-large', start, what, 'split it; 4,194,304 is the most'));
    }
    bytes = read;
  } catch (error) {
    return refuse(unreadable(file, error));
  }
  try {
    return { text: plainText(new TextDecoder('utf-8', { fatal: true }).decode(bytes)), findings: [] };
  } catch {
    const at = { file, ...placeOfBadByte(bytes) };
    const what = 'from here on the file is not text in UTF-8';
    const wayOut = 'save it as UTF-8 (in a spreadsheet: CSV UTF-8)';
    return {
      text: undefined,
      seen: plainText(new TextDecoder().decode(bytes)),
      findings: [finding('not-utf-8', at, what, wayOut)],
    };
  }
}

/** The bytes; the number of them where there are too many. */
function readPlainFile(path: string): Uint8Array | number | 'no file' {
  // Without O_NONBLOCK, opening a pipe would wait for somebody to write into it.
  const handle = openSync(path, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const stats = fstatSync(handle);
    if (!stats.isFile()) return 'no file';
    if (stats.size > LARGEST) return stats.size;
    const bytes = new Uint8Array(stats.size);
    let length = 0;
    while (length < bytes.length) {
      const read = readSync(handle, bytes, length, bytes.length - length, null);
      if (read === 0) break;
      length += read;
    }
    return bytes.subarray(0, length);
  } finally {
    closeSync(handle);
  }
}

/** Line and column of the first byte that is not UTF-8: the longest beginning that can be decoded ends there. */
function placeOfBadByte(bytes: Uint8Array): { line: number; column: number } {
  let good = 0;
  let bad = bytes.length;
  while (good + 1 < bad) {
    const middle = Math.floor((good + bad) / 2);
    if (isDecodable(bytes.subarray(0, middle))) good = middle;
    else bad = middle;
  }
  const lines = new TextDecoder().decode(bytes.subarray(0, good)).split(/\r\n?|\n/);
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}

function isDecodable(bytes: Uint8Array): boolean {
  try {
    // A character cut in two at the end is not yet an error.
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}
