import { randomBytes } from 'node:crypto';
import { link, mkdir, open, readdir, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type EventFact, eventFactSchema } from '../../schema/event-fact.ts';
import { recordText, withPlace } from '../write-once.ts';
import type { NextFact } from './current-event.ts';
import { factFile } from './fact-file.ts';

/**
 * Publishes a fact under its number in the event's folder, whole or not at all. False where the number is taken by
 * whatever kind of fact: then somebody else was faster, and what is known of the event must be read again.
 *
 * A fact's name ends in its kind, so that two writers would not collide on it. Each therefore claims the number
 * first, by linking its finished file to `.<number>`; names with a dot in front are passed over by whoever reads
 * the folder. A claim whose writer died is the fact itself: the next writer publishes it in its stead.
 */
export async function recordFact(
  contentDir: string,
  event: string,
  { number, fact }: NextFact,
): Promise<boolean> {
  const file = factFile(contentDir, event, number, fact.kind);
  const folder = dirname(file);
  await mkdir(folder, { recursive: true });
  const digits = String(number).padStart(3, '0');
  const claim = join(folder, `.${digits}`);
  const scratch = join(folder, `.${randomBytes(6).toString('hex')}.tmp`);
  try {
    await writeFlushed(scratch, recordText(fact));
    if (!(await linked(scratch, claim))) {
      await finishFor(claim, contentDir, event, number);
      return false;
    }
    // Whoever had the number before has published it and given up the claim by now; whoever found our claim
    // may have published it for us.
    const published = await factNumbered(folder, digits);
    if (published === undefined) await linked(scratch, file);
    const ours = published === undefined || (await isSameFile(scratch, join(folder, published)));
    await rm(claim, { force: true });
    return ours;
  } catch (error) {
    throw withPlace(error, file);
  } finally {
    await rm(scratch, { force: true });
  }
}

/** Publishes the fact that a claim holds, unless its number has been published meanwhile. */
async function finishFor(claim: string, contentDir: string, event: string, number: number): Promise<void> {
  const fact = await claimedFact(claim);
  if (!fact) return;
  const published = await factNumbered(dirname(claim), String(number).padStart(3, '0'));
  if (published === undefined) await linked(claim, factFile(contentDir, event, number, fact.kind));
  await rm(claim, { force: true });
}

async function factNumbered(folder: string, digits: string): Promise<string | undefined> {
  return (await readdir(folder)).find((name) => name.startsWith(`${digits}-`));
}

async function isSameFile(one: string, other: string): Promise<boolean> {
  const [{ ino, dev }, second] = await Promise.all([
    stat(one, { bigint: true }),
    stat(other, { bigint: true }),
  ]);
  return ino === second.ino && dev === second.dev;
}

async function claimedFact(claim: string): Promise<EventFact | undefined> {
  try {
    const handle = await open(claim, 'r');
    try {
      return eventFactSchema.parse(JSON.parse(await handle.readFile('utf8')));
    } finally {
      await handle.close();
    }
  } catch (error) {
    // Gone meanwhile: its own writer has finished.
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

async function writeFlushed(file: string, text: string): Promise<void> {
  const handle = await open(file, 'wx');
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** False where the new name is taken already, or the old one has just gone. */
async function linked(from: string, to: string): Promise<boolean> {
  try {
    await link(from, to);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'EEXIST' || code === 'ENOENT') return false;
    throw error;
  }
}
