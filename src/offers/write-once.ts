import { randomBytes } from 'node:crypto';
import { link, mkdir, open, rm } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * Publishes a record as a file that did not exist before: written whole beside its place, flushed, then linked
 * into it. False when the place is taken, and nothing changes; so of two writers one is refused, and a reader
 * never sees half a file. Fails as the file system does.
 */
export function writeOnce(file: string, record: object): Promise<boolean> {
  return writeTextOnce(file, recordText(record));
}

/** The same for a text. */
export async function writeTextOnce(file: string, text: string): Promise<boolean> {
  await mkdir(dirname(file), { recursive: true });
  // Beginning with a dot, so that whoever lists the folder meanwhile passes it over.
  const scratch = `${dirname(file)}/.${randomBytes(6).toString('hex')}.tmp`;
  try {
    const handle = await open(scratch, 'wx');
    try {
      await handle.writeFile(text);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await link(scratch, file);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw withPlace(error, file);
  } finally {
    await rm(scratch, { force: true });
  }
}

/** The error of a file system, which does not say where when the disk fills up half-way. */
export function withPlace(error: unknown, file: string): unknown {
  if (error instanceof Error && !('path' in error)) Object.assign(error, { path: file });
  return error;
}

/** A record as Salver's JSON files hold it: two spaces a level, a line break at the end. */
export function recordText(record: object): string {
  return `${JSON.stringify(record, null, 2)}\n`;
}
