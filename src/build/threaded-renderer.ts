import { Worker } from 'node:worker_threads';
import type { ProposalPage } from '../views/client/proposal-page.ts';
import { readClientAssets } from './client-assets.ts';
import type { CompiledApp } from './compile-app.ts';
import { digestUnder, type FinishedPage, type Renderer } from './renderer.ts';

/** What the thread is asked: a document, a page as it lies at `file`, or a proposal's page with its view to be made. */
export type PageRequest = { id: number } & Asked;
type Asked =
  | { route: string; view: string }
  | { file: string; route: string; view: string }
  | { file: string; route: string; source: ProposalPage };

/** What it answers to the request of that number. */
export type PageAnswer = { id: number } & ({ html: string } | { page: FinishedPage } | { failure: string });

/** A renderer to be closed when nothing more is asked of it. */
export interface ThreadedRenderer extends Renderer {
  close(): Promise<void>;
}

/**
 * Opens the compiled app in a thread of its own, which gets ready at once: while it makes pages, this one plans and
 * prices. Fails as `openRenderer` does, and with every page asked for if the thread itself ends.
 */
export async function openThreadedRenderer(
  app: CompiledApp,
  { pdfs }: { pdfs: boolean },
): Promise<ThreadedRenderer> {
  const assets = await readClientAssets(app.dir);
  const waiting = new Map<number, { done: (answer: PageAnswer) => void; fail: (error: Error) => void }>();
  let ended: Error | undefined;
  let asked = 0;
  const thread = new Worker(new URL('page-thread.ts', import.meta.url), {
    workerData: { app, pdfs },
    // A page is garbage as soon as it is sent; with more room for it the thread holds more memory and is no faster.
    resourceLimits: { maxYoungGenerationSizeMb: 16 },
  });
  thread.on('message', (answer: PageAnswer) => {
    waiting.get(answer.id)?.done(answer);
    waiting.delete(answer.id);
  });
  thread.on('error', end);
  thread.on('exit', () => end(new Error('the thread that makes the pages has ended')));

  function end(error: Error): void {
    ended ??= error;
    for (const { fail } of waiting.values()) fail(ended);
    waiting.clear();
  }
  async function ask(words: Asked): Promise<PageAnswer> {
    if (ended) throw ended;
    asked += 1;
    const id = asked;
    const answer = await new Promise<PageAnswer>((done, fail) => {
      waiting.set(id, { done, fail });
      thread.postMessage({ ...words, id } satisfies PageRequest);
    });
    if ('failure' in answer) throw new Error(answer.failure);
    return answer;
  }
  return {
    digest: digestUnder(app, pdfs),
    assets,
    async render(route, view) {
      return ((await ask({ route, view })) as { html: string }).html;
    },
    async page(file, route, view) {
      return ((await ask({ file, route, view })) as { page: FinishedPage }).page;
    },
    async proposal(file, route, source) {
      return ((await ask({ file, route, source })) as { page: FinishedPage }).page;
    },
    async close() {
      await thread.terminate();
    },
  };
}
