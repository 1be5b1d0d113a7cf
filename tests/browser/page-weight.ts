import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The most that a proposal's page may weigh without fonts and photos, compressed, in bytes. */
export const HEAVIEST = 60 * 1024;

/** What a built page weighs compressed: its HTML and the styles, scripts and drawings it names, each once. */
export async function pageWeight(out: string, folder: string): Promise<number> {
  const html = await readFile(join(out, folder, 'index.html'), 'utf8');
  const parts = new Set(
    [...html.matchAll(/(?:src|href)="([^"]+\.(?:js|css|svg))"/g)].map(([, name]) => name!),
  );
  if (![...parts].some((name) => name.endsWith('.js')) || ![...parts].some((name) => name.endsWith('.css')))
    throw new Error(`${folder} names no script or no style: its weight would be too small`);
  const files = await Promise.all([...parts].map((name) => readFile(join(out, folder, name))));
  return [Buffer.from(html), ...files].reduce((sum, bytes) => sum + gzipSync(bytes).length, 0);
}
