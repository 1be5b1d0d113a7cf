import { realpath } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import { Refusal } from './refusal.ts';

/**
 * Refuses an output within the content or the content within the output, links followed: a build replaces its output,
 * and what it wrote would be read as content. The same for the folder of files that are served as they are.
 */
export async function refuseOverlap(contentDir: string, outDir: string, publicDir: string): Promise<void> {
  const [content, out, served] = await Promise.all([contentDir, outDir, publicDir].map(placeOf));
  const other = "give '--out' a folder beside it";
  if (content === out)
    throw new Error(`${outDir} contains the content, and a build replaces its output; ${other}`);
  for (const [what, held] of [
    ['the content', content],
    ['the files served as they are', served],
  ] as const) {
    if (isWithin(held!, out!))
      throw new Refusal(
        `the output ${outDir} contains ${what} (${held}), and a build replaces its output`,
        "give '--out' another folder",
      );
    if (isWithin(out!, held!))
      throw new Refusal(
        `the output ${outDir} is inside the folder of ${what} (${held})`,
        "give '--out' another folder",
      );
  }
}

/** Where a folder is, or will be once it is made. */
async function placeOf(folder: string): Promise<string> {
  const path = resolve(folder);
  try {
    return await realpath(path);
  } catch {
    const above = dirname(path);
    return above === path ? path : join(await placeOf(above), basename(path));
  }
}

/** Whether the first is the second or lies anywhere in it. */
export function isWithin(inner: string, outer: string): boolean {
  const way = relative(outer, inner);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && resolve(outer, way) === inner);
}
