import { mkdir, open, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { notParsed, type Parsed, parsed } from '../engine/parsed.ts';
import { DRAFT_BEGINS } from './mail-draft.ts';

/** What keeps a folder out of whatever repository it lies in, this file included. */
const IGNORE_ALL = '# Drafts hold clients’ addresses and secret links.\n*\n';

/**
 * The folder for drafts: beside the content, never in it, and with an ignore rule of its own, so that no draft is committed
 * with the files around it. Made where it is missing.
 */
export async function draftsFolder(projectDir: string): Promise<string> {
  const folder = join(projectDir, 'drafts');
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, '.gitignore'), IGNORE_ALL, { flag: 'wx' }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EEXIST') throw error;
    },
  );
  return folder;
}

/** Writes a draft whole or not at all, over an earlier draft but over nothing else. */
export async function writeDraft(file: string, draft: Buffer): Promise<Parsed<true>> {
  if (await isOther(file))
    return notParsed(`${file} already exists and is not a draft`, 'give another file with --draft');
  const scratch = `${file}.${process.pid}.tmp`;
  try {
    await writeFile(scratch, draft, { flag: 'wx' });
    await rename(scratch, file);
  } catch (error) {
    await rm(scratch, { force: true });
    const { code } = error as NodeJS.ErrnoException;
    return notParsed(`can’t write ${file} (${code})`, 'give another file with --draft');
  }
  return parsed(true);
}

async function isOther(file: string): Promise<boolean> {
  const handle = await open(file, 'r').catch(() => undefined);
  if (!handle) return false;
  const length = DRAFT_BEGINS.length;
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, 0);
    return buffer.subarray(0, bytesRead).toString('latin1') !== DRAFT_BEGINS;
  } catch {
    // A folder can be opened and not read.
    return true;
  } finally {
    await handle.close();
  }
}
