import { randomBytes } from 'node:crypto';
import { rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Replaces a file's text whole or not at all. */
export async function replaceText(file: string, text: string): Promise<void> {
  const scratch = join(dirname(file), `.${randomBytes(6).toString('hex')}.tmp`);
  try {
    await writeFile(scratch, text, { flush: true });
    await rename(scratch, file);
  } catch (error) {
    await rm(scratch, { force: true });
    throw error;
  }
}
