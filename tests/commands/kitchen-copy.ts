import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { inject, onTestFinished } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The second kitchen's content; its proposal is `lifeboat-evening`, issued to be valid until 2027-05-10. */
export const SECOND_KITCHEN = join(root, 'tests/fixtures/second-kitchen');

/** A change of one content file: what is replaced, and by what. The text must be there. */
export type Change = readonly [file: string, from: string, to: string];

/** A copy of a content folder that a test may write in; it goes with the test. */
export function copyOf(content: string = SECOND_KITCHEN, changes: readonly Change[] = []): string {
  const dir = freshCopy(content);
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  change(dir, ...changes);
  return dir;
}

/** A copy that several tests of a file read, or of several files in one process; it goes with the run. */
export function keptCopyOf(content: string = SECOND_KITCHEN): string {
  return freshCopy(content, inject('sharedFolder'));
}

function freshCopy(content: string, within = tmpdir()): string {
  const dir = mkdtempSync(join(within, 'salver-kitchen-'));
  cpSync(content, dir, { recursive: true });
  return dir;
}

/** Changes files of a content folder. */
export function change(dir: string, ...changes: readonly Change[]): void {
  for (const [file, from, to] of changes) {
    const text = readFileSync(join(dir, file), 'utf8');
    if (!text.includes(from)) throw new Error(`${file} has no “${from}”`);
    writeFileSync(join(dir, file), text.replace(from, to));
  }
}

/** Every file and folder under a folder with a digest of its bytes: two equal pictures mean that nothing was written. */
export function pictureOf(dir: string): Record<string, string> {
  const picture: Record<string, string> = {};
  for (const entry of readdirSync(dir, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    picture[path] = entry.isFile()
      ? createHash('sha256').update(readFileSync(path)).digest('hex')
      : 'a folder';
  }
  return picture;
}
