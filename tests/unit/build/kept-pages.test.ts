import { mkdtemp, readFile, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { readRecord } from '../../../src/build/build-record.ts';
import { buildSite } from '../../../src/build/build-site.ts';
import { recordFile, timesFile } from '../../../src/build/own-files.ts';
import type { Renderer } from '../../../src/build/renderer.ts';
import type { PageView } from '../../../src/views/page-view.ts';
import type { Site, SitePage, SitePart } from '../../../src/views/site.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'salver-kept-'));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const FILE = 'public/proposals/one/index.html';

function page(from: string, words: string, asked: { times: number }): SitePage {
  return {
    file: FILE,
    route: '/proposals/one/',
    known: { cacheKey: from, accent: '#7a4a2b', title: 'Supper', client: 'A client' },
    get view() {
      asked.times += 1;
      return { brand: { accent: '#7a4a2b' }, words } as unknown as PageView;
    },
  };
}

function build(
  pages: SitePage[],
  digest = 'app',
  part?: SitePart,
  { stays, verify, said = [] }: { stays?: Site['stays']; verify?: boolean; said?: string[] } = {},
) {
  const renderer: Renderer = {
    digest,
    assets: { neededBy: () => [], read: async () => undefined },
    render: async () => {
      throw new Error('nothing is printed');
    },
    page: async (_file, _route, view) => {
      const { words } = JSON.parse(view) as { words: string };
      return { content: new TextEncoder().encode(`<p>${words}</p>`), assets: [], digest: words };
    },
    proposal: async () => {
      throw new Error('no page has its source here');
    },
  };
  return buildSite({
    site: { pages, prints: [], files: [], part, stays },
    renderer,
    printVersion: '',
    openPrinter: undefined,
    publicDir: join(dir, 'none'),
    out: join(dir, 'out'),
    verify,
    say: (line) => said.push(line),
  });
}

const written = () => readFile(join(dir, 'out', FILE), 'utf8');

describe('a page of which it is known what it is made from', () => {
  test('is taken over without its view being made, and made again for other words or another app', async () => {
    const asked = { times: 0 };
    await build([page('one', 'first', asked)]);
    expect(asked.times).toBe(1);
    const again = await build([page('one', 'first', asked)]);
    expect([asked.times, again.kept.includes(FILE)]).toEqual([1, true]);
    await build([page('two', 'second', asked)]);
    expect([asked.times, await written()]).toEqual([2, '<p>second</p>']);
    await build([page('two', 'third', asked)], 'another app');
    expect([asked.times, await written()]).toEqual([3, '<p>third</p>']);
  });

  test('is not rewritten where it comes out the same from something else', async () => {
    const asked = { times: 0 };
    await build([page('one', 'same', asked)]);
    const again = await build([page('two', 'same', asked)]);
    expect(again.made).not.toContain(FILE);
    await build([page('two', 'same', asked)]);
    expect(asked.times).toBe(2);
  });
});

describe('a part of which it is known what it is made from', () => {
  const NOTE = 'private/kitchen/note.txt';
  const kitchen = (from: string, words: string, asked: { times: number }): SitePart => ({
    cacheKey: from,
    accent: '#7a4a2b',
    async make() {
      asked.times += 1;
      const view = { brand: { accent: '#7a4a2b' }, words } as unknown as PageView;
      return {
        pages: [{ file: 'private/kitchen/index.html', route: '/kitchen/', view }],
        prints: [],
        files: [{ file: NOTE, content: words }],
      };
    },
  });
  const note = () => readFile(join(dir, 'out', NOTE), 'utf8');

  test('is taken over whole without being made, and made again from something else or by another app', async () => {
    const asked = { times: 0 };
    await build([], 'app', kitchen('one', 'first', asked));
    const again = await build([], 'app', kitchen('one', 'first', asked));
    expect([asked.times, again.kept]).toEqual([
      1,
      expect.arrayContaining([NOTE, 'private/kitchen/index.html']),
    ]);
    expect(again.made).toEqual([]);
    await build([], 'app', kitchen('two', 'second', asked));
    expect([asked.times, await note()]).toEqual([2, 'second']);
    await build([], 'another app', kitchen('two', 'third', asked));
    expect([asked.times, await note()]).toEqual([3, 'third']);
  });

  test('is made again where one of its files was touched, and gone where there is none any more', async () => {
    const asked = { times: 0 };
    await build([], 'app', kitchen('one', 'first', asked));
    await writeFile(join(dir, 'out', NOTE), 'scribbled over');
    await build([], 'app', kitchen('one', 'first', asked));
    expect([asked.times, await note()]).toEqual([2, 'first']);
    await build([]);
    await expect(note()).rejects.toThrow('ENOENT');
  });
});

describe('a file that was changed and has its length still', () => {
  const changed = async (keepTime: boolean) => {
    const path = join(dir, 'out', FILE);
    const { atime, mtime } = await stat(path);
    await writeFile(path, '<p>FIRST</p>');
    if (keepTime) await utimes(path, atime, mtime);
  };

  test('is told by its SHA-256, as others compute it, and made again', async () => {
    await build([page('one', 'first', { times: 0 })]);
    const { files } = await readRecord(join(dir, 'out'));
    // From `printf '<p>first</p>' | sha256sum`.
    expect(files[FILE]?.sha256).toBe('9a17ecbcc87151aaf729b10d1256d47513b026fb23e0a3edb8ab97221a88232f');
    await changed(false);
    const said: string[] = [];
    const again = await build([page('one', 'first', { times: 0 })], 'app', undefined, { said });
    expect([again.made, await written()]).toEqual([[FILE], '<p>first</p>']);
    expect(said).toEqual([
      `Changed in ${join(dir, 'out')} since they were written, and made again: ${FILE}.`,
    ]);
  });

  test('is told under `verify` also where its time was put back', async () => {
    await build([page('one', 'first', { times: 0 })]);
    // To whole milliseconds, which a time can be put back to.
    await utimes(join(dir, 'out', FILE), 1_800_000_000, 1_800_000_000);
    await build([page('one', 'first', { times: 0 })]);
    await changed(true);
    await build([page('one', 'first', { times: 0 })]);
    expect(await written()).toBe('<p>FIRST</p>');
    await build([page('one', 'first', { times: 0 })], 'app', undefined, { verify: true });
    expect(await written()).toBe('<p>first</p>');
  });

  test('a file that was only copied is taken over', async () => {
    await build([page('one', 'first', { times: 0 })]);
    await utimes(join(dir, 'out', FILE), 1_700_000_000, 1_700_000_000);
    const again = await build([page('one', 'first', { times: 0 })]);
    expect(again.kept).toContain(FILE);
  });

  test('an output of an earlier Salver, which kept lengths alone, is taken over and held to its bytes from then on', async () => {
    await build([page('one', 'first', { times: 0 })]);
    const path = join(dir, 'out', recordFile);
    const record = JSON.parse(await readFile(path, 'utf8'));
    record.files[FILE].sha256 = undefined;
    await writeFile(path, JSON.stringify(record));
    await rm(join(dir, 'out', timesFile));
    const again = await build([page('one', 'first', { times: 0 })]);
    expect(again.kept).toContain(FILE);
    await changed(false);
    await build([page('one', 'first', { times: 0 })]);
    expect(await written()).toBe('<p>first</p>');
  });
});

describe('a file that stays though it is made no longer', () => {
  const ours = new Set(['ours']);
  const stays = (of: ReadonlySet<string>) => ({ stays: () => of });
  const owned = (of: string[] | undefined) => ({ ...page('one', 'first', { times: 0 }), of });

  test('is its owner’s alone: another kitchen that builds into the same folder does not get it', async () => {
    await build([owned(['ours', 'also there'])]);
    await build([], 'app', undefined, stays(ours));
    expect(await written()).toBe('<p>first</p>');
    await build([], 'app', undefined, stays(new Set(['theirs'])));
    await expect(written()).rejects.toThrow('ENOENT');
  });

  test('is kept where an earlier Salver did not write down whose it is', async () => {
    await build([owned(undefined)]);
    await build([], 'app', undefined, stays(ours));
    expect(await written()).toBe('<p>first</p>');
  });

  test('stops the build where it was changed, since it cannot be made again', async () => {
    await build([owned(['ours'])]);
    await writeFile(join(dir, 'out', FILE), '<p>FIRST</p>');
    await expect(build([], 'app', undefined, stays(ours))).rejects.toThrow(
      'was changed after it was written and can’t be made again because its day is over; put the old file back',
    );
    expect(await written()).toBe('<p>FIRST</p>');
  });
});
