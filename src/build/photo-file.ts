import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharpService from 'astro/assets/services/sharp';
import type { PhotoName } from './photo-name.ts';

/** Of 100: no difference is seen on a page or a sheet. */
const QUALITY = 80;

/**
 * A photo at a width, upright, as WebP, made of the author's own file by Astro's image service and kept in a folder.
 * Nothing of what a camera wrote beside the picture comes along.
 */
export async function photoFile(
  original: string,
  { stem, width }: PhotoName,
  keptIn: string,
): Promise<Uint8Array> {
  const kept = join(keptIn, `${stem}.${width}w.webp`);
  const known = await readFile(kept).catch(() => undefined);
  if (known) return known;
  const transform = { src: original, width, format: 'webp', quality: QUALITY };
  const config = { service: { entrypoint: '', config: {} } };
  const { data } = await sharpService.transform(
    await readFile(original),
    transform,
    config as unknown as Parameters<typeof sharpService.transform>[2],
    console as unknown as Parameters<typeof sharpService.transform>[3],
  );
  await mkdir(keptIn, { recursive: true });
  const scratch = `${kept}.${process.pid}`;
  await writeFile(scratch, data);
  await rename(scratch, kept);
  return data;
}
