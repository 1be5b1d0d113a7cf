import type { Browser, Page } from 'playwright';
import { NOW } from './client-kitchen.ts';

/** One window at the kitchen's noon, in which page after page is opened as on a device that has kept nothing. */
export interface OneWindow {
  readonly page: Page;
  /** What the page that is open has complained of. */
  readonly complaints: string[];
  open(url: string, viewport?: { width: number; height: number }): Promise<Page>;
  close(): Promise<void>;
}

/** A phone's, unless another size is given. */
const PHONE = { width: 390, height: 844 };

/**
 * A window for tests that only look at pages or fill them in: opening a page in it takes a third of what it takes in a
 * browser of its own (`openClient`), whose processes begin anew. Nothing typed, kept or set for one is there for the next,
 * nor after a reload.
 */
export async function oneWindow(browser: Browser, pages: 'client' | 'kitchen'): Promise<OneWindow> {
  const context = await browser.newContext({ viewport: PHONE });
  // A page keeps what was typed when it is left, so that it goes when the next one begins.
  await context.addInitScript(() => {
    if (location.protocol !== 'about:') localStorage.clear();
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  await page.clock.setFixedTime(NOW);
  return {
    page,
    complaints,
    async open(url, viewport = PHONE) {
      // Else an address that differs behind its # alone would be no new page.
      await page.goto('about:blank');
      complaints.length = 0;
      await page.emulateMedia({ colorScheme: 'light' });
      await page.setViewportSize(viewport);
      await page.goto(url);
      // The script of a client's page says when it has begun; what a kitchen's has to do is done while it loads.
      if (pages === 'client') await page.waitForSelector('html[data-ready]', { state: 'attached' });
      return page;
    },
    close: () => context.close(),
  };
}
