import { copyFileSync, linkSync, mkdirSync, writeFileSync } from 'node:fs';
import { lstat, mkdir, readdir, realpath, rename, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { withPlace } from '../offers/write-once.ts';
import { withLock } from './lock.ts';
import { sideOf } from './site.ts';

/** The output folder in the making. Nothing of it is seen before it is whole. */
export interface Scratch {
  /** Writes one file of the output; folders are made as needed. */
  write(file: string, content: string | Uint8Array): void;
  /** Takes a file over from the last output, without rewriting it where the file system can. */
  keep(file: string): void;
}

/** After which of its steps a publication is, for a test that stops it there. */
export type PublishStep = 'recovered' | 'filled' | 'old moved away' | 'new moved in' | 'old removed';

/** A file at the root of every output: says that Salver wrote it, and what it is made of. */
export const recordFile = '.salver-build.json';

/**
 * Replaces the whole output folder by what `fill` writes, or leaves it as it was when anything fails. The new
 * folder is filled beside the old one, the old one renamed away and the new one in; a run that was stopped
 * between the two renames is put right by the next, which says so. Refuses a folder that holds files not written by Salver, and
 * a second run at the same time.
 */
export async function publish(
  out: string,
  fill: (scratch: Scratch) => Promise<string>,
  onStep: (step: PublishStep) => void = () => undefined,
  say: (line: string) => void = () => undefined,
): Promise<void> {
  await mkdir(dirname(resolve(out)), { recursive: true });
  const dir = await realpath(out).catch(() => resolve(out));
  const { next, last, lock } = besides(dir);
  const refusal = `another build is writing ${dir}; wait until it is done`;
  await withLock(lock, { wait: 0, refusal }, async () => {
    const found = await recover(dir);
    if (found) say(found);
    onStep('recovered');
    try {
      await mkdir(next, { recursive: true });
      const record = await fill(scratchIn(next, dir));
      await writeFile(join(next, recordFile), record).catch((error) => {
        throw withPlace(error, next);
      });
      onStep('filled');
    } catch (error) {
      await rm(next, { recursive: true, force: true });
      throw error;
    }
    const replaces = await exists(dir);
    if (replaces) await rename(dir, last);
    onStep('old moved away');
    try {
      await rename(next, dir);
    } catch (error) {
      if (replaces) await rename(last, dir);
      await rm(next, { recursive: true, force: true });
      throw error;
    }
    onStep('new moved in');
    await rm(last, { recursive: true, force: true });
    onStep('old removed');
  });
}

/**
 * Puts an interrupted run right: the output is whole afterwards, the old one or the new, and nothing lies beside it. Gives
 * a sentence for who stopped it; undefined where nothing was interrupted.
 */
async function recover(dir: string): Promise<string | undefined> {
  const { next, last } = besides(dir);
  const [hadNext, hadLast] = [await exists(next), await exists(last)];
  if (hadLast) {
    if (await exists(dir)) await rm(last, { recursive: true, force: true });
    else await rename(last, dir);
  }
  await rm(next, { recursive: true, force: true });
  await refuseForeign(dir);
  return hadNext || hadLast
    ? 'An earlier build was stopped before it was done. Nothing half-made was published, and this one does it again.'
    : undefined;
}

/** A wrong `--out` must not cost anybody their files. */
async function refuseForeign(dir: string): Promise<void> {
  const names: string[] = await readdir(dir).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    if (error.code === 'ENOTDIR') throw new Error(`${dir} is a file; give '--out' a folder`);
    throw error;
  });
  if (names.length > 0 && !names.includes(recordFile)) {
    throw new Error(`${dir} holds files that Salver did not write; give '--out' a new or empty folder`);
  }
}

/**
 * Of thousands of small files each step is so short that waiting for it costs more than the step; so they are taken
 * one after another, at once.
 */
function scratchIn(next: string, last: string): Scratch {
  const folders = new Set<string>();
  function place(file: string): string {
    sideOf(file);
    const path = join(next, file);
    const folder = dirname(path);
    if (!folders.has(folder)) mkdirSync(folder, { recursive: true });
    folders.add(folder);
    return path;
  }
  return {
    write(file, content) {
      try {
        writeFileSync(place(file), content, { flag: 'wx' });
      } catch (error) {
        throw withPlace(error, join(last, file));
      }
    },
    keep(file) {
      const path = place(file);
      try {
        linkSync(join(last, file), path);
      } catch (error) {
        // No hard links here, or too many of this file: a copy serves as well.
        if (!NO_LINK.includes((error as NodeJS.ErrnoException).code ?? '')) throw error;
        copyFileSync(join(last, file), path);
      }
    },
  };
}

const NO_LINK = ['EXDEV', 'EPERM', 'ENOTSUP', 'EOPNOTSUPP', 'ENOSYS', 'EMLINK'];

/** The places beside the output, on its own file system, that a publication uses. */
function besides(dir: string) {
  const beside = (ending: string) => join(dirname(dir), `.${basename(dir)}.${ending}`);
  return { next: beside('next'), last: beside('last'), lock: beside('lock') };
}

async function exists(path: string): Promise<boolean> {
  return lstat(path).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return false;
      throw error;
    },
  );
}
