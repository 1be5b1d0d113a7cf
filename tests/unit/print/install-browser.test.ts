import { chmod, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { type Browser, findBrowser } from '../../../src/print/find-browser.ts';
import { installBrowser, type Machine } from '../../../src/print/install-browser.ts';

/** A machine on which only the named program brings a browser. */
function machine(helps: string | undefined, options: { debian?: boolean; present?: boolean } = {}) {
  const ran: string[] = [];
  const said: string[] = [];
  let browser: Browser | undefined = options.present ? { path: '/b', from: 'system' } : undefined;
  const stand: Machine = {
    find: () => browser,
    async run(program, words) {
      const line = [program === process.execPath ? 'node' : program, ...words.slice(-2)].join(' ');
      ran.push(line);
      if (helps !== undefined && line.endsWith(helps)) browser = { path: '/b', from: 'system' };
      return browser !== undefined || line.includes('update');
    },
    isRootOnDebian: async () => options.debian ?? false,
    say: (line) => said.push(line),
  };
  return { stand, ran, said };
}

describe('bringing a browser', () => {
  test('does nothing where there is one', async () => {
    const { stand, ran, said } = machine(undefined, { present: true });
    expect(await installBrowser(stand)).toBeDefined();
    expect([ran, said]).toEqual([[], []]);
  });

  test('stops at the download that helps', async () => {
    const { stand, ran } = machine('install chromium', { debian: true });
    expect(await installBrowser(stand)).toBeDefined();
    expect(ran).toEqual(['node install chromium']);
  });

  test('goes on to Debian’s package as root, saying each step', async () => {
    const { stand, ran, said } = machine('recommends chromium', { debian: true });
    expect(await installBrowser(stand)).toBeDefined();
    expect(ran).toEqual([
      'node install chromium',
      'apt-get -qq update',
      'apt-get --no-install-recommends chromium',
    ]);
    expect(said).toHaveLength(2);
  });

  test('touches no packages elsewhere, and tells that nothing helped', async () => {
    const { stand, ran } = machine(undefined);
    expect(await installBrowser(stand)).toBeUndefined();
    expect(ran).toEqual(['node install chromium']);
  });
});

describe('finding a browser', () => {
  let folder: string;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'salver-'));
  });
  afterEach(() => rm(folder, { recursive: true, force: true }));

  test('prefers Playwright’s own, then takes the system’s, and no file that cannot be run', async () => {
    const own = join(folder, 'own');
    const system = join(folder, 'bin', 'chromium');
    const searchPath = { PATH: join(folder, 'bin') };
    expect(findBrowser(own, searchPath)).toBeUndefined();
    await mkdir(join(folder, 'bin'));
    await writeFile(system, '', { mode: 0o644 });
    expect(findBrowser(own, searchPath)).toBeUndefined();
    await chmod(system, 0o755);
    expect(findBrowser(own, searchPath)).toEqual({ path: system, from: 'system' });
    await writeFile(own, '', { mode: 0o755 });
    expect(findBrowser(own, searchPath)).toEqual({ path: own, from: 'playwright' });
  });
});
