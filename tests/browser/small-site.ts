import { cp, mkdir, mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * A copy of the small site under tests/fixtures, which a test may change and compile. It lies inside the project,
 * since the compiled app's imports resolve upwards from where it is.
 */
export async function smallSite(): Promise<{ dir: string; remove(): Promise<void> }> {
  const parent = join(root, '.salver', 'tests');
  await mkdir(parent, { recursive: true });
  const dir = await mkdtemp(join(parent, 'site-'));
  await cp(join(root, 'tests', 'fixtures', 'site'), dir, {
    recursive: true,
    filter: (source) => !/[\\/]\.(?:salver|astro)$/.test(source),
  });
  return { dir, remove: () => rm(dir, { recursive: true, force: true }) };
}
