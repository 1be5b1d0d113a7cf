import { parentPort, workerData } from 'node:worker_threads';
import type { CompiledApp } from './compile-app.ts';
import { openRenderer } from './renderer.ts';
import type { PageAnswer, PageRequest } from './threaded-renderer.ts';

// The thread that makes pages: see `threaded-renderer.ts`, which starts it and asks it.
const { app, pdfs } = workerData as { app: CompiledApp; pdfs: boolean };
const port = parentPort!;
const renderer = openRenderer(app, { pdfs });
// Each request answers its failure; without this one the thread would end before the first.
renderer.catch(() => undefined);

port.on('message', async ({ id, file, route, view }: PageRequest) => {
  try {
    const { render, page } = await renderer;
    if (file === undefined) answer({ id, html: await render(route, view) });
    else {
      const { content, assets } = await page(file, route, view);
      port.postMessage({ id, page: { content, assets } } satisfies PageAnswer, [content.buffer]);
    }
  } catch (error) {
    answer({ id, failure: error instanceof Error ? error.message : String(error) });
  }
});

function answer(message: PageAnswer): void {
  port.postMessage(message);
}
