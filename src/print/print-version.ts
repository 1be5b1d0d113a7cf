import { execFile } from 'node:child_process';
import { stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { digestOf, digestOfFolder } from '../files/digest.ts';
import type { Browser } from './find-browser.ts';

/** Digest of what a print depends on besides its page: the browser and the code of this folder. */
export async function printVersion(browser: Browser): Promise<string> {
  const code = await digestOfFolder(dirname(fileURLToPath(import.meta.url)));
  return digestOf(code, await browserVersion(browser));
}

/** What the browser says of itself; where asking would open a window, its file's size and date. */
async function browserVersion({ path }: Browser): Promise<string> {
  if (process.platform !== 'win32') {
    const answer = await promisify(execFile)(path, ['--version'], { timeout: 10_000 }).catch(() => undefined);
    if (answer) return answer.stdout.trim();
  }
  const { size, mtimeMs } = await stat(path);
  return `${path} ${size} ${mtimeMs}`;
}
