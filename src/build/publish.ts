import { copyFileSync, linkSync, mkdirSync, writeFileSync } from 'node:fs';
import { lstat, mkdir, open, readdir, realpath, rename, rm, rmdir } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { withPlace } from '../offers/write-once.ts';
import { sideOf } from '../views/site.ts';
import { timesText } from './build-record.ts';
import { withLock } from './lock.ts';
import { foreignIn, isMarked, listed, recordFile, refuseForeign, timesFile } from './own-files.ts';
import { Refusal } from './refusal.ts';

/** The output folder in the making. Nothing of it is seen before it is whole. */
export interface Scratch {
  /** Writes one file of the output; folders are made as needed. */
  write(file: string, content: string | Uint8Array): void;
  /** Takes a file over from the last output, without rewriting it where the file system can. */
  keep(file: string): void;
}

/** After which of its steps a publication is, for a test that stops it there. */
export type PublishStep = 'recovered' | 'filled' | 'old moved away' | 'new moved in' | 'old removed';

/**
 * Replaces the whole output folder by what `fill` writes, or leaves it as it was when anything fails. The new
 * folder is filled beside the old one, the old one renamed away and the new one in; a run that was stopped
 * between the two renames is put right by the next, which says so. Refuses a folder that holds anything Salver did not
 * write, by name, before any work and again before the renames, and a second run at the same time. `fill` gives the
 * record's text, by which the next run knows what is ours.
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
  await withLock(lock, { wait: 0, refusal: isWriting(dir) }, async () => {
    const found = await recover(dir);
    if (found) say(found);
    onStep('recovered');
    try {
      await mkdir(next, { recursive: true });
      // The mark by which a later run knows that this folder is ours to remove.
      await writeWhole(join(next, recordFile), EMPTY_RECORD);
      await writeWhole(join(next, recordFile), await fill(scratchIn(next, dir)));
      await writeWhole(join(next, timesFile), timesText(next));
      onStep('filled');
      refuseForeign(dir);
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
    if (replaces) await removeLast(last, say);
    onStep('old removed');
  });
}

/** Refuses, before any other work, what `publish` would refuse: files of somebody else, and a build that is under way. */
export async function refuseOutput(out: string): Promise<void> {
  const dir = await realpath(out).catch(() => undefined);
  // While another run puts its output in place, files and record are not of one edition.
  if (dir !== undefined)
    await withLock(besides(dir).lock, { wait: 1000, refusal: isWriting(dir) }, async () =>
      refuseForeign(dir),
    );
}

const EMPTY_RECORD = '{ "version": 1, "files": {} }\n';

/** The sentence for whoever comes while another build is at it. */
const isWriting = (dir: string) => `another build is writing to ${dir}; wait until it has finished`;

/** On the disk before anything is renamed: a record lost in a power cut would leave an output that is nobody's. */
async function writeWhole(file: string, text: string): Promise<void> {
  try {
    const handle = await open(file, 'w');
    try {
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    throw withPlace(error, dirname(file));
  }
}

/**
 * Puts an interrupted run right: the output is whole afterwards, the old one or the new, and nothing lies beside it. Gives
 * a sentence for who stopped it; undefined where nothing was interrupted. Touches nothing before it knows that all of
 * it is Salver's.
 */
async function recover(dir: string): Promise<string | undefined> {
  const { next, last } = besides(dir);
  const [hadNext, hadLast] = [await exists(next), await exists(last)];
  for (const [had, beside] of [
    [hadNext, next],
    [hadLast, last],
  ] as const) {
    if (had && !isMarked(beside))
      throw new Refusal(
        `${beside} is Salver's working folder, but Salver did not write what is in it`,
        'move it elsewhere, or delete it if no one needs it',
      );
  }
  refuseForeign(dir);
  if (hadLast) {
    refuseLeft(last);
    if (await isFilled(dir)) await removeOwn(last);
    else {
      if (await exists(dir)) await rmdir(dir);
      await rename(last, dir);
    }
  }
  await rm(next, { recursive: true, force: true });
  return hadNext || hadLast
    ? 'An earlier build was stopped before it finished. Nothing unfinished was published; this build starts over.'
    : undefined;
}

/** Removes the old output, unless somebody put a file into it while the new one was made: then it stays, and is named. */
async function removeLast(last: string, say: (line: string) => void): Promise<void> {
  try {
    refuseLeft(last);
  } catch (error) {
    say((error as Error).message);
    return;
  }
  await removeOwn(last);
}

function refuseLeft(last: string): void {
  const foreign = foreignIn(last);
  if (foreign.length > 0)
    throw new Refusal(
      `${last} is the output of an earlier build, but has files that Salver did not write (${listed(foreign)})`,
      'move them elsewhere, then build again',
    );
}

/** The record goes last, so that what a stopped run leaves is still known as ours. */
async function removeOwn(dir: string): Promise<void> {
  const names = (await readdir(dir)).filter((name) => name !== recordFile);
  for (const name of [...names, recordFile]) await rm(join(dir, name), { recursive: true, force: true });
  await rm(dir, { recursive: true, force: true });
}

async function isFilled(dir: string): Promise<boolean> {
  return (await exists(dir)) && (await readdir(dir)).length > 0;
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
