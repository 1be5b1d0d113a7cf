import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { type Browser as Chromium, chromium } from 'playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildSite } from '../../src/build/build-site.ts';
import { compileApp, digestOfInputs } from '../../src/build/compile-app.ts';
import { mirrorBodies } from '../../src/build/mirror-bodies.ts';
import { openRenderer } from '../../src/build/renderer.ts';
import { openThreadedRenderer, type ThreadedRenderer } from '../../src/build/threaded-renderer.ts';
import { filesOf } from '../../src/files/digest.ts';
import { findBrowser } from '../../src/print/find-browser.ts';
import { openPrinter } from '../../src/print/print-pdf.ts';
import type { Body } from '../../src/views/body.ts';
import type { PageView } from '../../src/views/page-view.ts';
import type { Site } from '../../src/views/site.ts';
import { smallSite } from './small-site.ts';

const view = (fields: Record<string, unknown>) =>
  ({ kind: 'small', brand: { accent: '#7a4a2b' }, ...fields }) as unknown as PageView;
const body = (text: string): Body[] => [{ collection: 'packages', id: 'harvest-table', text }];
const silent = () => undefined;

function siteWith(title: string, sheet: Record<string, unknown> = {}): Site {
  return {
    pages: [
      {
        file: 'public/proposals/one/index.html',
        route: '/proposals/one/',
        view: view({ title, body: 'harvest-table' }),
      },
      { file: 'private/kitchen/index.html', route: '/kitchen/', view: view({ title: 'Kitchen' }) },
    ],
    prints: [
      {
        file: 'private/kitchen/sheet.pdf',
        route: '/print/sheet/',
        view: view({ title: 'A sheet', ...sheet }),
        title: 'A sheet – ½',
        author: 'Quillwater (Kitchen)',
        language: 'en',
      },
    ],
    files: [{ file: 'private/kitchen/shopping.csv', content: 'item,amount\n' }],
  };
}

describe('the way from views to published sites', () => {
  let project: Awaited<ReturnType<typeof smallSite>>;
  let folder: string;
  let out: string;
  let renderer: ThreadedRenderer;
  let chrome: Chromium;
  const browser = findBrowser();

  beforeAll(async () => {
    if (!browser) throw new Error('no browser: run `npm run setup`');
    project = await smallSite();
    folder = await mkdtemp(join(tmpdir(), 'salver-'));
    out = join(folder, 'out');
    renderer = await openThreadedRenderer(
      await compileApp(project.dir, await mirrorBodies(project.dir, body('First *words*.')), silent),
      { pdfs: true },
    );
    chrome = await chromium.launch({ executablePath: browser.path });
    await build(siteWith('A menu'));
  });

  afterAll(async () => {
    await chrome?.close();
    await renderer?.close();
    await project?.remove();
    await rm(folder, { recursive: true, force: true });
  });

  function build(site: Site) {
    return buildSite({
      site,
      renderer,
      printVersion: '1',
      openPrinter: () => openPrinter(browser!),
      publicDir: join(folder, 'none'),
      out,
      say: silent,
    });
  }

  test('each side has its pages and only the styles and fonts that they name', async () => {
    const files = await filesOf(out);
    const withoutDigest = files.map((file) => file.replace(/\.[\w-]{8}\./, '.'));
    expect(withoutDigest).toEqual([
      '.salver-build.json',
      '.salver-times.json',
      'private/_astro/page.css',
      'private/_astro/source-sans-3-latin-400-normal.woff2',
      'private/brand-7a4a2b.css',
      'private/brand-7a4a2b.svg',
      'private/kitchen/index.html',
      'private/kitchen/sheet.pdf',
      'private/kitchen/shopping.csv',
      'public/_astro/page.css',
      'public/_astro/source-sans-3-latin-400-normal.woff2',
      'public/brand-7a4a2b.css',
      'public/brand-7a4a2b.svg',
      'public/proposals/one/index.html',
    ]);
  });

  test('a page opened as a file has its styles, font, script and body, and breaks no policy', async () => {
    const page = await chrome.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(error.message));
    await page.goto(pathToFileURL(join(out, 'public/proposals/one/index.html')).href);
    const seen = await page.evaluate(async () => {
      await document.fonts.ready;
      return {
        colour: getComputedStyle(document.body).color,
        font: document.fonts.check('16px "Source Sans 3"') && document.fonts.size > 0,
        script: document.body.getAttribute('data-script'),
        words: document.querySelector('p')?.innerHTML,
        link: document.querySelector('a')?.getAttribute('href'),
      };
    });
    await page.close();
    expect(complaints).toEqual([]);
    expect(seen).toEqual({
      colour: 'rgb(34, 34, 34)',
      font: true,
      script: 'ran',
      words: 'First <em>words</em>.',
      link: '../../proposals/other/',
    });
  });

  test("the kitchen's links name the file, since it may be opened without a server", async () => {
    const html = await readFile(join(out, 'private/kitchen/index.html'), 'utf8');
    expect(html).toContain('href="../kitchen/index.html"');
  });

  test('a document is tagged, names its author, keeps the size its styles name, and prints the same bytes twice', async () => {
    const first = await readFile(join(out, 'private/kitchen/sheet.pdf'));
    const site = siteWith('A menu', {});
    await rm(out, { recursive: true });
    await build(site);
    const second = await readFile(join(out, 'private/kitchen/sheet.pdf'));
    expect(second.equals(first)).toBe(true);

    const loading = getDocument({ data: new Uint8Array(first), verbosity: 0 });
    const pdf = await loading.promise;
    const { info } = (await pdf.getMetadata()) as { info: Record<string, unknown> };
    expect(info).toMatchObject({ Title: 'A sheet – ½', Author: 'Quillwater (Kitchen)', Language: 'en' });
    expect(await pdf.getMarkInfo()).toEqual(
      new Map(Object.entries({ Marked: true, UserProperties: false, Suspects: false })),
    );
    expect((await pdf.getOutline()).map(({ title }) => title)).toEqual(['A sheet']);
    const page = await pdf.getPage(1);
    expect(page.view).toEqual([0, 0, 5 * 72, 3 * 72]);
    const words = (await page.getTextContent()).items.map((item) => ('str' in item ? item.str : ''));
    expect(words.join(' ')).toContain('Second heading');
    await loading.destroy();
  });

  test('only what changed is made again, and the rest is the same file as before', async () => {
    const inode = async (file: string) => (await stat(join(out, file))).ino;
    const before = await inode('private/kitchen/index.html');
    const report = await build(siteWith('Another menu'));
    expect(report.made).toEqual(['public/proposals/one/index.html']);
    expect(await inode('private/kitchen/index.html')).toBe(before);
    expect(await readFile(join(out, 'public/proposals/one/index.html'), 'utf8')).toContain(
      '<h1>Another menu</h1>',
    );
  });

  test('a kept file that somebody cut short is made again', async () => {
    await writeFile(join(out, 'private/kitchen/index.html'), '<html>');
    const report = await build(siteWith('Another menu'));
    expect(report.made).toEqual(['private/kitchen/index.html']);
  });

  test('a page that fails is named with its reason, and the last output stays', async () => {
    const site = siteWith('A third menu');
    site.pages[1]!.view = view({ title: 'Kitchen', fails: true });
    await expect(build(site)).rejects.toThrow('the page /kitchen/ could not be made: a page that fails');
    expect(await readFile(join(out, 'public/proposals/one/index.html'), 'utf8')).toContain('Another menu');
  });

  test('a page that nobody wrote is named', async () => {
    const site = siteWith('A third menu');
    site.pages[1]!.route = '/nowhere/';
    await expect(build(site)).rejects.toThrow('the page /nowhere/ could not be made');
  });

  test('a document that asks for another host is refused, and names what it asked for', async () => {
    const image = 'https://elsewhere.example/spy.png';
    await expect(build(siteWith('Another menu', { image }))).rejects.toThrow(
      'private/kitchen/sheet.pdf asks for https://elsewhere.example/spy.png',
    );
  });

  test('a document that asks for a picture which the site has not is refused, and names it', async () => {
    const image = '/pictures/none.png';
    await expect(build(siteWith('Another menu', { image }))).rejects.toThrow(
      'private/kitchen/sheet.pdf asks for /pictures/none.png, which is not part of the site',
    );
  });

  test('a changed body shows, though nothing but the body changed', async () => {
    const bodies = await mirrorBodies(project.dir, body('Second *words*.'));
    const app = await compileApp(project.dir, bodies, silent);
    expect(app.digest).not.toBe(renderer.digest);
    const html = await (await openRenderer(app, { pdfs: true })).render(
      '/proposals/one/',
      JSON.stringify(view({ title: 'A menu', body: 'harvest-table' })),
    );
    expect(html).toContain('Second <em>words</em>.');
    expect(html).not.toContain('First');
  });

  test('a changed source file asks for a new app', async () => {
    const bodies = await mirrorBodies(project.dir, body('Second *words*.'));
    const before = await digestOfInputs(project.dir, bodies);
    const file = join(project.dir, 'src', 'schema.ts');
    await writeFile(file, 'export const schema = 1;\n');
    expect(await digestOfInputs(project.dir, bodies)).not.toBe(before);
    await rm(file);
    expect(await digestOfInputs(project.dir, bodies)).toBe(before);
  });

  test('the app is kept while nothing changed', async () => {
    const said: string[] = [];
    const bodies = await mirrorBodies(project.dir, body('Second *words*.'));
    await compileApp(project.dir, bodies, (line) => said.push(line));
    expect(said).toEqual([]);
  });
});
