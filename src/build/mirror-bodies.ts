import { constants } from 'node:fs';
import { copyFile, mkdir, readdir, readFile, rename, rm, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { digestOf } from '../files/digest.ts';
import type { Body } from '../views/body.ts';

/** A folder that holds bodies alone, named by their digest. */
export interface MirroredBodies {
  dir: string;
  digest: string;
}

/**
 * Writes the bodies, without their front matter, to `.salver/bodies/<digest>/<collection>/<id>.mdx`. Only what
 * passed the check is given, so a broken draft stops no compile and an edit of data asks for none.
 */
export async function mirrorBodies(projectDir: string, bodies: readonly Body[]): Promise<MirroredBodies> {
  const digest = digestOfBodies(bodies).slice(0, 16);
  const parent = join(projectDir, '.salver', 'bodies');
  const dir = join(parent, digest);
  if (await markUsed(dir)) return { dir, digest };

  const scratch = join(parent, `${digest}.${process.pid}`);
  await fillBodies(scratch, bodies);
  await rename(scratch, dir).catch(async (error: NodeJS.ErrnoException) => {
    // Another process was faster; its folder holds the same bytes.
    await rm(scratch, { recursive: true, force: true });
    if (error.code !== 'ENOTEMPTY' && error.code !== 'EEXIST') throw error;
  });
  return { dir, digest };
}

/**
 * Makes a folder hold the bodies' files and no others; both collections' folders exist afterwards, even empty. A file
 * that is right already is not written, so that nobody who watches it is woken.
 */
export async function fillBodies(dir: string, bodies: readonly Body[]): Promise<void> {
  for (const collection of ['recipes', 'packages'] as const) {
    const folder = join(dir, collection);
    await mkdir(folder, { recursive: true });
    const wanted = new Map(
      bodies.filter((body) => body.collection === collection).map(({ id, text }) => [`${id}.mdx`, text]),
    );
    const photos = new Map(
      bodies
        .filter((body) => body.collection === collection)
        .flatMap((body) => (body.photos ?? []).map(({ name, path }) => [name, path])),
    );
    for (const name of await readdir(folder)) {
      if (!wanted.has(name) && !photos.has(name)) await rm(join(folder, name), { recursive: true });
    }
    // A photo's name is its digest: one that is there is right.
    for (const [name, path] of photos) {
      await copyFile(path, join(folder, name), constants.COPYFILE_EXCL).catch(
        (error: NodeJS.ErrnoException) => {
          if (error.code !== 'EEXIST') throw error;
        },
      );
    }
    for (const [name, text] of wanted) {
      const file = join(folder, name);
      if ((await readFile(file, 'utf8').catch(() => undefined)) !== text) await writeFile(file, text);
    }
  }
}

/** Of two equal ones the bodies are equal, whatever their order; a photo's name, its digest, stands in the text. */
export function digestOfBodies(bodies: readonly Body[]): string {
  return digestOf(...bodies.map(({ collection, id, text }) => digestOf(collection, id, text)).sort());
}

/** Notes that a kept folder is in use, so that it is not cleared away; false where there is none. */
export async function markUsed(dir: string): Promise<boolean> {
  const now = new Date();
  return utimes(dir, now, now).then(
    () => true,
    () => false,
  );
}
