import { digestOf } from '../files/digest.ts';
import type { ProposalPage } from '../views/client/proposal-page.ts';
import type { SitePage } from '../views/site.ts';
import type { Output } from './output.ts';
import type { FinishedPage, Renderer } from './renderer.ts';
import { severalAtOnce } from './several-at-once.ts';

/** Pages asked of the thread and not yet placed: enough that it has work while this one plans an event, few enough to hold. */
const PAGES_AT_ONCE = 64;

/** Makes pages and places them in the output, each as soon as it is made. */
export class PagePlacer {
  /** Whether this thread has time to make views of proposals: not while it plans the kitchen's side. */
  hasTime: boolean;
  #inThread = 0;
  readonly #output: Output;
  readonly #renderer: Renderer;

  constructor(output: Output, renderer: Renderer, hasTime: boolean) {
    this.#output = output;
    this.#renderer = renderer;
    this.hasTime = hasTime;
  }

  /** Places pages. One whose cache key is the same is taken over, and its view never made. */
  place(pages: readonly SitePage[]): Promise<void> {
    return severalAtOnce(pages, PAGES_AT_ONCE, (page) => this.#placeOne(page));
  }

  async #placeOne(page: SitePage): Promise<void> {
    const { file, route, known, source } = page;
    const { digest } = this.#renderer;
    const from = known && digestOf(digest, route, known.cacheKey);
    if (this.#output.tookOver(file, from)) return;
    if (source) {
      const made = await this.#proposal(page, source);
      await this.#output.place(file, digestOf(digest, made.digest), async () => made, from);
      return;
    }
    const view = JSON.stringify(page.view);
    const key = digestOf(digest, route, view);
    await this.#output.place(file, key, () => this.#renderer.page(file, route, view), from);
  }

  /** The view is made by whichever thread has less to do. */
  async #proposal(page: SitePage, source: ProposalPage): Promise<FinishedPage> {
    const { file, route } = page;
    const isBusy = this.#inThread > PAGES_AT_ONCE / 2;
    this.#inThread += 1;
    try {
      return this.hasTime && isBusy
        ? await this.#renderer.page(file, route, JSON.stringify(page.view))
        : await this.#renderer.proposal(file, route, source);
    } finally {
      this.#inThread -= 1;
    }
  }
}
