import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { openThreadedRenderer } from '../../../src/build/threaded-renderer.ts';

/** An app of one function, compiled by nobody. */
async function appThat(does: string): Promise<string> {
  const dir = await mkdtemp(join(tmpdir(), 'salver-thread-'));
  onTestFinished(() => rm(dir, { recursive: true, force: true }));
  await mkdir(join(dir, 'server'));
  await writeFile(join(dir, 'server', 'entry.mjs'), does);
  return dir;
}

const opened = async (does: string) => {
  const renderer = await openThreadedRenderer({ dir: await appThat(does), digest: 'app' }, { pdfs: false });
  onTestFinished(() => renderer.close());
  return renderer;
};

const WELL = `export const render = async (request, { view }) => new Response(
  '<html><head></head><body><a href="/' + view.to + '">' + new URL(request.url).pathname + '</a></body></html>',
  { headers: { 'content-security-policy': "default-src 'none'" } });`;

test('a page asked for in the thread comes back finished, each to its own request', async () => {
  const renderer = await opened(WELL);
  const pages = await Promise.all(
    ['one', 'two', 'three'].map((to) =>
      renderer.page(`public/proposals/${to}/index.html`, `/proposals/${to}/`, JSON.stringify({ to })),
    ),
  );
  const texts = pages.map(({ content }) => new TextDecoder().decode(content));
  for (const [at, to] of ['one', 'two', 'three'].entries())
    expect(texts[at]).toContain(`<a href="../../${to}">/proposals/${to}/</a>`);
});

test('an app that cannot be opened fails every page with its reason', async () => {
  const renderer = await opened('throw new Error("half an app");');
  await expect(renderer.render('/', '{}')).rejects.toThrow('half an app');
  await expect(renderer.render('/', '{}')).rejects.toThrow('half an app');
});

test('a thread that ends fails what waits and what comes after, and leaves nobody waiting', async () => {
  const renderer = await opened(
    'export const render = () => { setTimeout(() => process.exit(3)); return new Promise(() => {}); };',
  );
  const waiting = [renderer.render('/one', '{}'), renderer.render('/two', '{}')];
  for (const each of waiting) await expect(each).rejects.toThrow('the thread that makes the pages has ended');
  await expect(renderer.render('/three', '{}')).rejects.toThrow('the thread that makes the pages has ended');
});
