import { enableCompileCache } from 'node:module';
import { parentPort, workerData } from 'node:worker_threads';
import type { CompiledApp } from './compile-app.ts';
import type { FinishedPage } from './renderer.ts';
import type { PageAnswer, PageRequest } from './threaded-renderer.ts';

// The thread that makes pages: see `threaded-renderer.ts`, which starts it and asks it.
const { app, pdfs } = workerData as { app: CompiledApp; pdfs: boolean };
const port = parentPort!;
// A thread does not take this over from the one that started it.
enableCompileCache();
const renderer = import('./renderer.ts').then(({ openRenderer }) => openRenderer(app, { pdfs }));
// Each request answers its failure; without this one the thread would end before the first.
renderer.catch(() => undefined);

port.on('message', async ({ id, ...asked }: PageRequest) => {
  try {
    const { render, page, proposal } = await renderer;
    if ('source' in asked) answer(id, await proposal(asked.file, asked.route, asked.source));
    else if ('file' in asked) answer(id, await page(asked.file, asked.route, asked.view));
    else port.postMessage({ id, html: await render(asked.route, asked.view) } satisfies PageAnswer);
  } catch (error) {
    const failure = error instanceof Error ? error.message : String(error);
    port.postMessage({ id, failure } satisfies PageAnswer);
  }
});

function answer(id: number, page: FinishedPage): void {
  port.postMessage({ id, page } satisfies PageAnswer, [page.content.buffer]);
}
