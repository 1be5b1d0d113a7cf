import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { buildSite } from '../../../src/build/build-site.ts';
import type { Renderer } from '../../../src/build/renderer.ts';
import type { SitePage, SitePart } from '../../../src/build/site.ts';
import type { PageView } from '../../../src/views/page-view.ts';

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
    known: { from, accent: '#7a4a2b', title: 'Supper', client: 'A client' },
    get view() {
      asked.times += 1;
      return { brand: { accent: '#7a4a2b' }, words } as unknown as PageView;
    },
  };
}

function build(pages: SitePage[], digest = 'app', part?: SitePart) {
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
    site: { pages, prints: [], files: [], part },
    renderer,
    printVersion: '',
    openPrinter: undefined,
    publicDir: join(dir, 'none'),
    out: join(dir, 'out'),
    say: () => undefined,
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
    from,
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
