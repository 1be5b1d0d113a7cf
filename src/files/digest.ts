import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** SHA-256 in hex over parts; each is preceded by its length, so that moving a byte between parts shows. */
export function digestOf(...parts: (string | Uint8Array)[]): string {
  const hash = createHash('sha256');
  for (const part of parts) {
    const bytes = typeof part === 'string' ? Buffer.from(part, 'utf8') : part;
    hash.update(`${bytes.byteLength}:`).update(bytes);
  }
  return hash.digest('hex');
}

/** SHA-256 of some bytes in hex, as `sha256sum` prints it. */
export function sha256Of(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Digest of all files of a folder, names and contents; of nothing where there is no such folder. */
export async function digestOfFolder(folder: string): Promise<string> {
  const parts: (string | Uint8Array)[] = [];
  for (const file of await filesOf(folder)) parts.push(file, await readFile(join(folder, file)));
  return digestOf(...parts);
}

/** Every file under a folder as a path with `/`, sorted; none where there is no such folder. */
export async function filesOf(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return [];
      throw error;
    },
  );
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name).slice(folder.length).replaceAll('\\', '/').replace(/^\/+/, ''),
    )
    .sort();
}
