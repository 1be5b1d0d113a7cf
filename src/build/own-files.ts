import { type Dirent, existsSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Refusal } from './refusal.ts';

/** A file at the root of every output: says that Salver wrote it, and what it is made of. */
export const recordFile = '.salver-build.json';

/** Beside it: when each file was last written, so that one that was touched since is looked at more closely. */
export const timesFile = '.salver-times.json';

/** What file managers leave in every folder that somebody looks into; nobody misses it. */
const FILE_MANAGERS = ['.DS_Store', 'Thumbs.db', 'desktop.ini'];

/**
 * What an output folder holds that Salver did not write, as paths from it, sorted: of a folder without any file of
 * Salver's the folder alone, with a slash behind. Empty folders do not count in an output. Fails where there is a file instead of a folder,
 * and where the record of the output cannot be read.
 */
export function foreignIn(dir: string): string[] {
  // A folder that is none of ours may be a whole disk: it is not walked through.
  if (!existsSync(join(dir, recordFile))) return namesIn(dir);
  const files = filesIn(dir);
  const own = ownFiles(dir);
  const folders = new Set([...own].flatMap(foldersOf));
  const named = files
    .filter((file) => !own.has(file) && !FILE_MANAGERS.includes(file.slice(file.lastIndexOf('/') + 1)))
    .map((file) => {
      const strange = foldersOf(file).find((folder) => !folders.has(folder));
      return strange === undefined ? file : `${strange}/`;
    });
  return [...new Set(named)].sort();
}

/** A wrong `--out`, or a file put into the output by hand, must not cost anybody anything. */
export function refuseForeign(dir: string): void {
  const foreign = foreignIn(dir);
  if (foreign.length === 0) return;
  if (!existsSync(join(dir, recordFile)))
    throw new Refusal(
      `${dir} has files that Salver did not write (${listed(foreign)})`,
      "give '--out' a new or empty folder",
    );
  throw new Refusal(
    `${dir} has files that Salver did not write (${listed(foreign)}), and a build replaces that folder`,
    "move them elsewhere, or give '--out' another folder; a file to be served with the proposals goes in Salver's own public/ folder",
  );
}

/** Whether a folder beside the output is ours to remove: it has the record, or nothing at all. */
export function isMarked(dir: string): boolean {
  const found = lstatSync(dir, { throwIfNoEntry: false });
  return (
    found?.isDirectory() === true && (existsSync(join(dir, recordFile)) || readdirSync(dir).length === 0)
  );
}

/** The first few of some names, and how many more there are. */
export function listed(names: readonly string[]): string {
  const more = names.length - 3;
  return [...names.slice(0, 3), ...(more > 0 ? [`${more} more`] : [])].join(', ');
}

/** What lies directly in a folder, with a slash behind folders; nothing of file managers. */
function namesIn(dir: string): string[] {
  return entriesOf(dir, false)
    .filter(({ name }) => !FILE_MANAGERS.includes(name))
    .map((entry) => (entry.isDirectory() ? `${entry.name}/` : entry.name))
    .sort();
}

/** All that is no folder, links included, by its path with `/`. */
export function filesIn(dir: string): string[] {
  return entriesOf(dir, true)
    .filter((entry) => !entry.isDirectory())
    .map((entry) =>
      join(entry.parentPath, entry.name).slice(dir.length).replaceAll('\\', '/').replace(/^\/+/, ''),
    );
}

function entriesOf(dir: string, recursive: boolean): Dirent[] {
  try {
    return readdirSync(dir, { recursive, withFileTypes: true });
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return [];
    if (code === 'ENOTDIR') throw new Refusal(`${dir} is a file`, "give '--out' a folder");
    throw error;
  }
}

/** The files that the record names, and the two that stand beside them. */
function ownFiles(dir: string): Set<string> {
  let text: string;
  try {
    text = readFileSync(join(dir, recordFile), 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Set();
    throw error;
  }
  const record = parsedRecord(text);
  if (typeof record?.version === 'number' && record.version > 1)
    throw new Refusal(
      `${dir} was built by a newer version of Salver`,
      "build with that version, or give '--out' another folder",
    );
  if (record?.version !== 1 || typeof record.files !== 'object' || record.files === null)
    throw new Refusal(
      `${join(dir, recordFile)} can’t be read, and without it there is no telling which files in ${dir} are Salver's`,
      'move that folder elsewhere, then build again',
    );
  return new Set([...Object.keys(record.files), recordFile, timesFile]);
}

function parsedRecord(text: string): { version?: unknown; files?: unknown } | undefined {
  try {
    return JSON.parse(text) ?? undefined;
  } catch {
    return undefined;
  }
}

/** `a/b/c.txt` lies in `a` and `a/b`. */
function foldersOf(file: string): string[] {
  const parts = file.split('/').slice(0, -1);
  return parts.map((_, index) => parts.slice(0, index + 1).join('/'));
}
