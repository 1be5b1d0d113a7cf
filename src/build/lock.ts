import { randomBytes } from 'node:crypto';
import { link, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { withPlace } from '../offers/write-once.ts';

/** Locks that this process holds: its own number in a file proves nothing after a restart. */
const held = new Set<string>();

/**
 * Does the work while no other process does work under the same lock file. A lock whose owner has gone is taken
 * over. Waits up to the given milliseconds for a living owner, then fails with the sentence given.
 */
export async function withLock<T>(
  file: string,
  { wait, refusal }: { wait: number; refusal: string },
  work: () => Promise<T>,
): Promise<T> {
  const end = performance.now() + wait;
  await mkdir(dirname(file), { recursive: true });
  // An abandoned lock is dropped by the first try and taken by the second.
  while (!(await take(file)) && !(await take(file))) {
    if (performance.now() >= end) throw new Error(refusal);
    await pause(100);
  }
  try {
    return await work();
  } finally {
    held.delete(file);
    await rm(file, { force: true });
  }
}

/** Links a finished file into place, so that a lock is never seen without its owner's number. */
async function take(file: string): Promise<boolean> {
  const mine = `${file}.${process.pid}.${randomBytes(4).toString('hex')}`;
  try {
    await writeFile(mine, String(process.pid));
    await link(mine, file);
    // Before anything else is awaited: whoever else in this process reads the number now must not take it for a dead one's.
    held.add(file);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw withPlace(error, file);
    await dropIfAbandoned(file);
    return false;
  } finally {
    await rm(mine, { force: true });
  }
}

async function dropIfAbandoned(file: string): Promise<void> {
  const owner = Number(await readFile(file, 'utf8').catch(() => ''));
  if (!Number.isInteger(owner) || owner <= 0) return;
  if (owner === process.pid ? held.has(file) : isAlive(owner)) return;
  // Of several that find it abandoned, one rename succeeds; the number is read again in case a new owner came.
  const aside = `${file}.${process.pid}.abandoned`;
  try {
    await rename(file, aside);
  } catch {
    return;
  }
  const moved = Number(await readFile(aside, 'utf8').catch(() => ''));
  if (moved !== owner) await link(aside, file).catch(() => undefined);
  await rm(aside, { force: true });
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
