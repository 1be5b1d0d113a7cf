import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { filesOf } from '../files/digest.ts';
import { classicScript } from './classic-script.ts';
import { assetsNamedIn } from './page-html.ts';
import { photoFile } from './photo-file.ts';
import { PIXELS, photoName, photosNamedIn } from './photo-name.ts';

/** The compiled styles, scripts, fonts and pictures of an app, by their names such as `page.B2x9.css`. */
export interface ClientAssets {
  /** What a page needs: all it names, and all that those name in turn. */
  neededBy(html: string): string[];
  /** One file's bytes, a style's own addresses made relative and a script made a plain one; undefined where there is none of the name. */
  read(name: string): Promise<Uint8Array | undefined>;
}

/** Reads which assets the compiled app has and which name which. */
export async function readClientAssets(appDir: string): Promise<ClientAssets> {
  const folder = join(appDir, 'client', '_astro');
  const all = await filesOf(folder);
  // Authors' own pictures are only what photos are made of.
  const names = all.filter((name) => !PIXELS.test(name));
  const originals = new Map(
    all.filter((name) => PIXELS.test(name)).map((name) => [name.replace(PIXELS, ''), name]),
  );
  const known = new Set(names);
  const named = new Map<string, string[]>();
  for (const name of names.filter(isText)) {
    const text = await readFile(join(folder, name), 'utf8');
    named.set(
      name,
      names.filter((each) => text.includes(each)),
    );
  }
  return {
    neededBy(html) {
      const found = new Set<string>();
      const queue = assetsNamedIn(html).filter((name) => known.has(name));
      for (let name = queue.pop(); name !== undefined; name = queue.pop()) {
        if (found.has(name)) continue;
        found.add(name);
        queue.push(...(named.get(name) ?? []));
      }
      return [...found, ...photosNamedIn(html)].sort();
    },
    async read(name) {
      const photo = photoName(name);
      const original = photo && originals.get(photo.stem);
      if (original) return photoFile(join(folder, original), photo, join(appDir, 'photos'));
      if (!names.includes(name)) return undefined;
      const bytes = await readFile(join(folder, name));
      if (name.endsWith('.js')) return Buffer.from(classicScript(bytes.toString('utf8'), name));
      if (!name.endsWith('.css')) return bytes;
      return Buffer.from(bytes.toString('utf8').replaceAll('url(/_astro/', 'url(./'));
    },
  };
}

function isText(name: string): boolean {
  return name.endsWith('.css') || name.endsWith('.js');
}
