import { type Dirent, existsSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join, sep } from 'node:path';
import { type Finding, finding } from '../findings/finding.ts';

/** A file below a folder. */
export interface FoundFile {
  /** Path relative to the folder, forward slashes. */
  readonly file: string;
  /** Absolute. */
  readonly path: string;
}

/** Deeper than any content folder goes. */
const DEEPEST = 6;

/**
 * Every plain file below a folder, by name. Symbolic links are followed only within the folder; pipes, devices
 * and folders that cannot be read are findings, never waited for.
 */
export function walkFolder(dir: string): { found: FoundFile[]; findings: Finding[] } {
  const found: FoundFile[] = [];
  const findings: Finding[] = [];
  let root: string;
  try {
    root = realpathSync(dir);
    if (!statSync(root).isDirectory()) throw new Error('no folder');
  } catch {
    const wayOut = 'give the folder that has kitchen.yaml in it';
    const start = { file: '', line: 1, column: 1 };
    return { found, findings: [finding('no-content-folder', start, 'there is no such folder', wayOut)] };
  }

  // Without it nothing can be shown, and a wrong folder, such as a whole disk, is not to be walked through.
  if (!existsSync(join(root, 'kitchen.yaml')) && (dirname(root) === root || root === homedir())) {
    const start = { file: '', line: 1, column: 1 };
    const what = `${root} is a whole disk or a home folder and has no kitchen.yaml`;
    return {
      found,
      findings: [finding('no-content-folder', start, what, 'give the folder that has kitchen.yaml in it')],
    };
  }

  const walk = (folder: string, depth: number): void => {
    const path = join(dir, folder);
    let entries: Dirent[];
    try {
      entries = readdirSync(path, { withFileTypes: true });
    } catch (error) {
      findings.push(unreadable(folder, error));
      return;
    }
    // Code units, not a locale's order, which differs between machines.
    entries.sort((one, other) => (one.name < other.name ? -1 : 1));
    for (const entry of entries) {
      if (/^(?:\.|~\$)/.test(entry.name)) continue;
      const file = folder === '' ? entry.name : `${folder}/${entry.name}`;
      const kind = kindOf(root, join(dir, file), entry, file, findings);
      if (kind === 'file') found.push({ file, path: join(dir, file) });
      if (kind === 'folder' && depth < DEEPEST) walk(file, depth + 1);
    }
  };
  walk('', 1);
  return { found, findings };
}

function kindOf(
  root: string,
  path: string,
  entry: Dirent,
  file: string,
  findings: Finding[],
): 'file' | 'folder' | undefined {
  const start = { file, line: 1, column: 1 };
  try {
    const real = entry.isSymbolicLink() ? realpathSync(path) : undefined;
    if (real !== undefined && real !== root && !real.startsWith(root + sep)) {
      const what = 'the link leads out of the content folder';
      findings.push(finding('outside-link', start, what, 'put the file itself here'));
      return undefined;
    }
    const { isFolder, isFile } = real === undefined ? entryKind(entry) : statKind(real);
    if (isFolder) return 'folder';
    if (isFile) return 'file';
    const what = 'this is neither a file nor a folder';
    findings.push(finding('unreadable-file', start, what, 'delete it or move it elsewhere'));
  } catch (error) {
    findings.push(unreadable(file, error));
  }
  return undefined;
}

function entryKind(entry: Dirent): { isFolder: boolean; isFile: boolean } {
  return { isFolder: entry.isDirectory(), isFile: entry.isFile() };
}

function statKind(path: string): { isFolder: boolean; isFile: boolean } {
  const stats = statSync(path);
  return { isFolder: stats.isDirectory(), isFile: stats.isFile() };
}

/** The finding for a file or folder that the system does not give, with the system's reason. */
export function unreadable(file: string, error: unknown): Finding {
  const { code } = error as NodeJS.ErrnoException;
  const what = `it can’t be read (${code ?? 'no reason given'})`;
  const wayOut = 'check that it exists, that any link to it works, and that you have permission to read it';
  return finding('unreadable-file', { file, line: 1, column: 1 }, what, wayOut);
}
